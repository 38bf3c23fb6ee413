import { App, type BlockAction, type ViewSubmitAction } from '@slack/bolt';
import type { Desk } from './desk/desk.js';
import { codeOf } from './desk/desk.js';
import { errors } from './desk/errors.js';
import { onCommand } from './desk/on-command.js';
import { onBusyPress, onPress } from './desk/on-press.js';
import { onSubmit } from './desk/on-submit.js';
import { privateWords } from './desk/answers.js';
import type { Bounded } from '../../../shared/in-flight.js';
import type { Workspaces } from './install/workspaces.js';
import type { SlackOptions } from './options.js';
import type { GuestReceiver } from './receiver.js';
import type { Socket } from './socket.js';
import { clientOptions, quietLogger } from './web.js';
import { say } from './words.js';

/** What hearing updates needs, whichever way they come. */
export interface Ears {
  readonly options: SlackOptions;
  readonly workspaces: Workspaces;
  readonly deskOf: (tenant: string) => Promise<Desk>;
  readonly bounded: Bounded;
}

type Body = {
  readonly team?: { readonly id: string } | null;
  readonly user: { readonly team_id?: string };
  readonly enterprise?: { readonly id: string } | null;
};

function tenantOf({ team, user, enterprise }: Body): string {
  return team?.id ?? user.team_id ?? enterprise?.id ?? '';
}

function hearPeople(app: App, { deskOf, bounded }: Ears): void {
  app.command(/.*/u, ({ command, ack, respond }) =>
    bounded(
      async () => onCommand(await deskOf(command.team_id), { command, ack, respond }),
      () => ack({ ...privateWords(say('busy')) }),
    ),
  );
  app.action<BlockAction>({ type: 'block_actions' }, async ({ body, action, ack, respond }) => {
    // Picking in an open form is no press; what was picked comes with the form.
    if (action.type !== 'button') return ack();
    const pressed = { body, action, ack, respond };
    await bounded(
      async () => onPress(await deskOf(tenantOf(body)), pressed),
      async () => onBusyPress(await deskOf(tenantOf(body)), pressed),
    );
  });
  app.view<ViewSubmitAction>({ type: 'view_submission', callback_id: /.*/u }, ({ body, view, ack }) =>
    bounded(
      async () => onSubmit(await deskOf(tenantOf(body)), { body, view, ack }),
      () => Promise.resolve(ack(errors(view, say('busy')))),
    ),
  );
}

/** A workspace that took the app away, or revoked its token, is let go; it may have installed it anew since. */
function hearLeaving(app: App, { workspaces, options: { log } }: Ears): void {
  const leave = async (body: { readonly team_id: string; readonly event_time: number }): Promise<void> => {
    await workspaces.forget(body.team_id, body.event_time * 1000 + 999);
    log.warn({ tenant: body.team_id }, 'a Slack workspace took the app away');
  };
  app.event('app_uninstalled', ({ body }) => leave(body));
  app.event('tokens_revoked', async ({ body, event }) => {
    if ((event.tokens.bot ?? []).length > 0) await leave(body);
  });
}

/** Opens the library's app over a receiver, and hears people and workspaces through it. */
export function hear(through: GuestReceiver | Socket['receiver'], ears: Ears): void {
  const { options, workspaces } = ears;
  const app = new App({
    receiver: through,
    authorize: async ({ teamId, enterpriseId }) => {
      const token = await workspaces.tokenOf(teamId ?? enterpriseId ?? '');
      if (token === null) throw new Error('no token for this workspace');
      return { botToken: token };
    },
    clientOptions: clientOptions(options),
    logger: quietLogger(options.log),
    convoStore: false,
    ignoreSelf: false,
  });
  app.error((why) => {
    options.log.error({ code: codeOf(why) }, 'an update of Slack failed');
    // Rejecting leaves the update without an acknowledgement, so that Slack shows that nothing was done.
    return Promise.reject(why);
  });
  hearPeople(app, ears);
  hearLeaving(app, ears);
}
