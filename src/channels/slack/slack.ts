import { App, type BlockAction, type ViewSubmitAction } from '@slack/bolt';
import type { Channel, House } from '../../../shared/channel.js';
import { openSending } from './deliver.js';
import type { Desk } from './desk/desk.js';
import { codeOf } from './desk/desk.js';
import { onCommand } from './desk/on-command.js';
import { onPress } from './desk/on-press.js';
import { onSubmit } from './desk/on-submit.js';
import { checkOptions, type SlackOptions } from './options.js';
import { guestReceiver, type GuestReceiver } from './receiver.js';
import { slackPath } from './slack-path.js';
import { openSocket, type Socket } from './socket.js';
import { openVerifier } from './verify.js';
import { clientOptions, openClient, quietLogger } from './web.js';

type Handler = (request: Request) => Promise<Response>;

function listen(app: App, desk: Desk): void {
  app.command(/.*/u, onCommandOf(desk));
  app.action<BlockAction>({ type: 'block_actions' }, async ({ body, action, ack, respond }) => {
    // Picking in an open form is no press; what was picked comes with the form.
    if (action.type !== 'button') return ack();
    await onPress(desk, { body, action, ack, respond });
  });
  app.view<ViewSubmitAction>({ type: 'view_submission', callback_id: /.*/u }, async ({ body, view, ack }) => {
    await onSubmit(desk, { body, view, ack });
  });
}

function onCommandOf(desk: Desk): Parameters<App['command']>[1] {
  return ({ command, ack, respond }) => onCommand(desk, { command, ack, respond });
}

/**
 * The practice on Slack: commands, buttons and forms come in, answers go back privately as their acknowledgement, and what
 * is told goes to the channels that are bound. Updates arrive at `slackPath` of the server that is there already, or over
 * a socket where there is an app token. Nothing has to be reached for it to be ready.
 */
export function slackChannel(
  options: SlackOptions,
): Channel & { readonly guests?: Readonly<Record<string, Handler>> } {
  checkOptions(options);
  const client = openClient(options);
  const sending = openSending(client, options.log, options.now);
  const receiver: GuestReceiver | null =
    options.signingSecret === null
      ? null
      : guestReceiver(openVerifier(options.signingSecret, options.now), options.log);
  const socket: Socket | null = options.appToken === null ? null : openSocket(options.appToken, options);

  const open = (through: GuestReceiver | Socket['receiver'], desk: Desk): void => {
    const app = new App({
      receiver: through,
      authorize: () => Promise.resolve({ botToken: options.botToken }),
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
    listen(app, desk);
  };

  return {
    name: 'slack',
    ...(receiver ? { guests: { [slackPath]: (request: Request) => receiver.handle(request) } } : {}),
    start(house: House) {
      const desk: Desk = { house, client, options };
      if (receiver) open(receiver, desk);
      if (socket) {
        open(socket.receiver, desk);
        socket.start();
      }
      return Promise.resolve();
    },
    deliver: (delivery) => sending.deliver(delivery),
    stands: (delivery) => sending.stands(delivery),
    async stop() {
      await socket?.stop();
    },
  };
}
