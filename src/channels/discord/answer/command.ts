import type { TypedCommand, Who } from '../../../../shared/channel.js';
import type { Action, Field } from '../../../../shared/messages.js';
import type { CommandAction } from '../../../../shared/slash-command.js';
import { fetchText } from '../read/fetch-text.js';
import type { From, Given } from '../read/interaction.js';
import { asksInForm } from '../register.js';
import { modalOf, type Form } from '../render/modal.js';
import { writeCommandModal } from '../submitted-id.js';
import { say } from '../words.js';
import { showReply, updateId } from './act.js';
import type { Answer, Desk } from './desk.js';
import { shown, told } from './show.js';

function actionOf(
  desk: Desk,
  { name, action }: Pick<TypedCommand, 'name' | 'action'>,
): CommandAction | undefined {
  return desk.options.slashCommands
    .find((one) => one.name === name)
    ?.actions.find((one) => one.name === action);
}

/** Carries a slash command out and shows what it says. */
export async function runCommand(
  desk: Desk,
  from: From,
  who: Who,
  command: TypedCommand,
  id: string,
): Promise<Answer> {
  const reply = await desk.house.command(who, id, command);
  const does = actionOf(desk, command)?.does;
  if (!reply.done || does === undefined || !('look' in does)) return showReply(desk, from, who, reply);
  const given = Object.entries(command.options).flatMap(([name, value]) =>
    value ? [[name, value] as const] : [],
  );
  const origin: Action = {
    kind: 'look',
    name: does.look,
    args: { ...does.fixed, ...Object.fromEntries(given) },
  };
  return shown(desk, from, reply.messages, origin);
}

/** A form for the long texts of a command, which can't be typed in one line. */
function formFor(command: TypedCommand, action: CommandAction): Form {
  const fields = action.options.filter(
    (option) => asksInForm(option) && (command.options[option.name] ?? '') === '',
  );
  return {
    type: 'form',
    title: action.words,
    action: { kind: 'look', name: command.name, args: {} },
    submit: action.words,
    fields: fields.map(({ name, words }): Field => ({
      kind: 'text',
      name,
      label: words,
      required: true,
      max: 4000,
    })),
  };
}

/** Answers a slash command: files are fetched, long texts that are missing are asked for. */
export async function command(
  desk: Desk,
  from: From,
  who: Who,
  asked: { readonly name: string; readonly action: string; readonly given: Given },
): Promise<Answer> {
  const options: Record<string, string> = { ...asked.given.texts };
  for (const [name, file] of Object.entries(asked.given.files)) {
    options[name] = await fetchText(file, desk.options.api);
  }
  const typed: TypedCommand = { name: asked.name, action: asked.action, options };
  const action = actionOf(desk, typed);
  const form = action === undefined ? null : formFor(typed, action);
  if (form === null || form.fields.length === 0) return runCommand(desk, from, who, typed, updateId(from));
  const opening = BigInt(from.id).toString(36);
  desk.commands.keep(`${from.user}|${opening}`, typed);
  const modal = modalOf({ form, origin: null, opening, page: 0, kept: {} });
  return {
    modal: { ...modal, custom_id: writeCommandModal(opening, typed.name, typed.action) },
    instead: told(say('trouble')),
  };
}
