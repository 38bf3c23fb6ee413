import type { AckFn, RespondArguments, RespondFn, SlashCommand as SlackCommand } from '@slack/bolt';
import { Fault } from '../../../../shared/fault.js';
import type { TypedCommand, Who } from '../../../../shared/channel.js';
import { findOwn, plainName, type OwnCommand } from '../own-commands.js';
import { unescaped } from '../plain.js';
import { say } from '../words.js';
import { privateAnswer, privateWords, refused, respondWith, type Private } from './answers.js';
import { commandForm } from './command-form.js';
import { codeOf, takeLook, tried, whoIs, type Desk, type Shown, type Slacker } from './desk.js';
import { here } from './here.js';
import { inTime } from './in-time.js';
import { join } from './join.js';

type Ack = AckFn<string | RespondArguments>;

/** The line as the app reads it: Slack's escapes undone, and its curled quotation marks straight where they hold a value. */
function lineOf(command: SlackCommand): string {
  const text = unescaped(command.text ?? '').replace(/:\s*[“”]([^“”]*)[“”]/gu, ':"$1"');
  return `/${plainName(command.command)} ${text}`;
}

async function own(desk: Desk, which: OwnCommand, slacker: Slacker, command: SlackCommand): Promise<Shown> {
  const text = unescaped(command.text ?? '').trim();
  if (which === 'join') return join(desk, slacker, text);
  const who = await whoIs(desk, slacker);
  if (!who) return refused(say('stranger'));
  switch (which) {
    case 'turn':
      return takeLook(desk, who, { name: 'turn', args: {} });
    case 'here':
      return here(desk, who, { ...slacker, room: command.channel_id }, text);
    default:
      return which satisfies never;
  }
}

async function typed(desk: Desk, who: Who, command: SlackCommand, read: TypedCommand): Promise<Shown> {
  const reply = await desk.house.command(who, `slack:c:${command.trigger_id}`, read);
  const does = desk.options.slashCommands
    .find(({ name }) => name === read.name)
    ?.actions.find(({ name }) => name === read.action)?.does;
  // An answer that takes several pages is gone on with by its look, where that needs nothing that was typed.
  const look =
    does && 'look' in does && Object.keys(read.options).length === 0
      ? { name: does.look, args: { ...does.fixed } }
      : null;
  return { reply, look };
}

/** Opens the form of a command that lacks what it needs; false where nothing is lacking. */
async function opened(
  desk: Desk,
  who: Who,
  command: SlackCommand,
  read: TypedCommand,
): Promise<boolean | Private> {
  const view = await commandForm(desk, who, read);
  if (view === null) return false;
  const worked = await tried(desk, 'views.open', () =>
    desk.client.views.open({ trigger_id: command.trigger_id, view }),
  );
  return worked ? true : privateWords(say('form too late'));
}

async function answer(desk: Desk, command: SlackCommand): Promise<Private | null> {
  const slacker = { tenant: command.team_id, user: command.user_id };
  const which = findOwn(command.command);
  if (which !== null) return privateAnswer(await own(desk, which, slacker, command));
  const who = await whoIs(desk, slacker);
  if (!who) return privateWords(say('stranger'));
  try {
    const read = desk.options.readCommand(lineOf(command));
    const form = await opened(desk, who, command, read);
    if (form === true) return null;
    if (form !== false) return form;
    return privateAnswer(await typed(desk, who, command, read));
  } catch (why) {
    if (why instanceof Fault) return privateWords(`${why.message}. ${why.remedy}`);
    throw why;
  }
}

/** Answers a slash command: the answer is the acknowledgement itself; where it takes long, "working" is said first. */
export async function onCommand(
  desk: Desk,
  {
    command,
    ack,
    respond,
  }: { readonly command: SlackCommand; readonly ack: Ack; readonly respond: RespondFn },
): Promise<void> {
  const work = answer(desk, command).catch((why: unknown) => {
    desk.options.log.error({ code: codeOf(why), command: plainName(command.command) }, 'a command failed');
    return privateWords(say('not kept'));
  });
  const { value, late } = await inTime(work, () => ack({ ...privateWords(say('working')) }));
  if (!late) return value === null ? ack() : ack({ ...value });
  if (value !== null) await respondWith(desk, respond, value, true);
}
