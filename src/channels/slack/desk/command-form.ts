import type { ModalView } from '@slack/types';
import type { TypedCommand, Who } from '../../../../shared/channel.js';
import type { Field } from '../../../../shared/messages.js';
import type { CommandOption } from '../../../../shared/slash-command.js';
import { limits } from '../limits.js';
import type { FormBlock } from '../press-code.js';
import { formView } from '../render/view.js';
import { say } from '../words.js';
import type { Desk } from './desk.js';

/** How much a field of a form takes, in characters. */
const sizes = { line: 200, 'long text': limits.input, 'whole number': 6 } as const;

async function fieldOf({ house }: Desk, who: Who, option: CommandOption): Promise<Field> {
  const { name, words: label, required } = option;
  switch (option.kind) {
    case 'line':
    case 'whole number':
      return { kind: 'line', name, label, required, max: sizes[option.kind] };
    case 'long text':
      return { kind: 'text', name, label, required, max: sizes['long text'] };
    case 'file':
      return { kind: 'file', name, label, required };
    case 'pick': {
      const found = option.from
        ? await house.suggest(who, option.from, '')
        : (option.choices ?? []).map((value) => ({ value, label: value }));
      // Stops are typed as they are counted, from 1, so the label is what a command takes.
      const options = option.from === 'stops' ? found.map((one) => ({ ...one, value: one.label })) : found;
      const several = name === 'posts' ? { many: true as const } : {};
      return { kind: 'pick', name, label, options, required, ...several };
    }
    default:
      return option.kind satisfies never;
  }
}

/** The form of a command that was typed without what it needs, or null where nothing is lacking. */
export async function commandForm(desk: Desk, who: Who, typed: TypedCommand): Promise<ModalView | null> {
  const command = desk.options.slashCommands.find(({ name }) => name === typed.name);
  const action = command?.actions.find(({ name }) => name === typed.action);
  if (!action) return null;
  const lacking = action.options.filter(({ name, required }) => required && !typed.options[name]?.trim());
  if (lacking.length === 0) return null;
  const profile = await desk.house.profile(who);
  if (!profile || !action.who.includes(profile.role)) return null;
  const open = action.options.filter(({ name }) => !typed.options[name]?.trim());
  const form: FormBlock = {
    type: 'form',
    title: action.words,
    action: { kind: 'look', name: 'help', args: {} },
    fields: await Promise.all(open.map((option) => fieldOf(desk, who, option))),
    submit: say('send'),
    main: true,
  };
  const options: Record<string, string> = {};
  for (const [name, value] of Object.entries(typed.options)) if (value?.trim()) options[name] = value;
  return formView(form, { send: { by: 'command', name: typed.name, action: typed.action, options } });
}
