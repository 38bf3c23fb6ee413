import type { WebClient } from '@slack/web-api';
import type { House, Reply, Who } from '../../../../shared/channel.js';
import type { LookRef, Press } from '../press-code.js';
import type { Message } from '../../../../shared/messages.js';
import type { SlackOptions } from '../options.js';
import { say } from '../words.js';
import { look } from './look-message.js';

/** What the handlers of updates work with. */
export interface Desk {
  readonly house: House;
  /** The workspace's own, and its token. */
  readonly client: WebClient;
  readonly token: string;
  readonly options: SlackOptions;
}

/** Somebody of Slack, as an update names them. */
export interface Slacker {
  readonly tenant: string;
  readonly user: string;
}

/** An answer with the look that it answers, null where it answers a move or a command. */
export interface Shown {
  readonly reply: Reply;
  readonly look: LookRef | null;
  /** Buttons of the channel's own, which are no moves of the class. */
  readonly presses?: readonly { readonly label: string; readonly press: Press }[];
}

/** The tenant of a body: the workspace, else the person's own, else the organisation. */
export function slackerOf(body: {
  readonly team?: { readonly id: string } | null;
  readonly enterprise?: { readonly id: string } | null;
  readonly user: { readonly id: string; readonly team_id?: string };
}): Slacker {
  const tenant = body.team?.id ?? body.user.team_id ?? body.enterprise?.id ?? '';
  return { tenant, user: body.user.id };
}

/** Who somebody of Slack is with us, null for a stranger. */
export function whoIs({ house }: Desk, { tenant, user }: Slacker): Promise<Who | null> {
  return house.identify('slack', tenant, user);
}

const minute = 60_000;
/** How long a look waits for the note that its reader is here. */
const visitPatience = 500;
/** Looks by which a pupil comes to their page. */
const ownPages: readonly string[] = ['turn', 'for-you'];

/** Notes that a pupil is here, at most once a minute; the look that follows doesn't wait long for it. */
async function visit({ house, options }: Desk, who: Who): Promise<void> {
  const id = `slack:visit:${who.person}:${Math.floor(options.now() / minute)}`;
  const noted = house.move({ id, who, move: 'visit', fields: {} }).then(
    () => undefined,
    () => options.log.warn({ person: who.person }, 'a visit was not noted'),
  );
  let timer: NodeJS.Timeout | undefined;
  const enough = new Promise<void>((settle) => (timer = setTimeout(settle, visitPatience)));
  await Promise.race([noted, enough]);
  clearTimeout(timer);
}

/** Takes a look for somebody; a pupil who comes to their own page is noted as here. */
export async function takeLook(desk: Desk, who: Who, look: LookRef): Promise<Shown> {
  if (ownPages.includes(look.name)) await visit(desk, who);
  return { reply: await desk.house.look(who, look.name, look.args), look };
}

/** A pupil's reply that offers nothing to press gets a way back to their page, so that nobody stands before a closed door. */
export async function withWayOn({ house }: Desk, who: Who, shown: Shown): Promise<Shown> {
  const { done, messages } = shown.reply;
  const offers = messages.some(({ blocks }) =>
    blocks.some(({ type }) => type === 'choices' || type === 'form'),
  );
  if (!done || offers || (await house.profile(who))?.role !== 'pupil') return shown;
  const way = look(say('my page'), 'turn');
  const audience = { to: 'person', person: who.person } as const;
  const kept: Message = {
    audience,
    summary: say('kept'),
    blocks: [{ type: 'prose', prose: [{ text: say('kept') }] }],
  };
  const told = messages.length > 0 ? messages : [kept];
  const last = told.at(-1) ?? kept;
  const blocks =
    last.blocks.length > 0 ? last.blocks : [{ type: 'prose', prose: [{ text: last.summary }] } as const];
  return {
    ...shown,
    reply: { done, messages: [...told.slice(0, -1), { ...last, blocks: [...blocks, ...way] }] },
  };
}

/** What went wrong, for the log: never its words. */
export function codeOf(why: unknown): string {
  return why instanceof Error ? why.name : 'unknown';
}

/** Runs a call to Slack whose failure changes nothing; true where it worked. */
export async function tried(desk: Desk, what: string, call: () => Promise<unknown>): Promise<boolean> {
  try {
    await call();
    return true;
  } catch (why) {
    const data = (why as { data?: { error?: string } }).data;
    desk.options.log.warn({ code: data?.error ?? codeOf(why), what }, 'a call to Slack failed');
    return false;
  }
}
