import { ApplicationCommandOptionType, ApplicationCommandType, InteractionContextType } from 'discord.js';
import type { CommandAction, CommandOption, SlashCommand } from '../../../shared/slash-command.js';
import { limits } from './limits.js';
import type { DiscordOptions } from './options.js';
import { short } from './render/plain.js';

interface Registered {
  readonly name: string;
  readonly description: string;
  readonly name_localizations?: Readonly<Record<string, string>>;
  readonly type: number;
  readonly options?: readonly Readonly<Record<string, unknown>>[];
}

/** Slash commands of the channel's own: coming in by a slip's code, and tying a place to a group or to staff. */
export const ownCommands: readonly Registered[] = [
  {
    name: 'join',
    description: 'Come in with the code on your slip',
    type: ApplicationCommandType.ChatInput,
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'code',
        description: 'The code on your slip',
        required: true,
        max_length: 100,
      },
    ],
  },
  {
    name: 'here',
    description: 'Use this place for a group or for the staff of the class',
    type: ApplicationCommandType.ChatInput,
    options: [
      {
        type: ApplicationCommandOptionType.Subcommand,
        name: 'group',
        description: 'The talk of a group comes here',
        options: [
          {
            type: ApplicationCommandOptionType.String,
            name: 'group',
            description: 'The group',
            required: true,
            autocomplete: true,
          },
        ],
      },
      {
        type: ApplicationCommandOptionType.Subcommand,
        name: 'staff',
        description: 'What waits for an adult, alarms and the digest come here',
      },
    ],
  },
];

/** Whether an option is asked for in a form: a long text can't be typed in one line. */
export function asksInForm(option: CommandOption): boolean {
  return option.kind === 'long text' && option.required;
}

function optionShape(option: CommandOption): Readonly<Record<string, unknown>> {
  switch (option.kind) {
    case 'line':
      return { type: ApplicationCommandOptionType.String, max_length: 200 };
    case 'long text':
      return { type: ApplicationCommandOptionType.String, max_length: 5000 };
    case 'file':
      return { type: ApplicationCommandOptionType.Attachment };
    case 'whole number':
      return { type: ApplicationCommandOptionType.Integer };
    case 'pick': {
      const type = ApplicationCommandOptionType.String;
      if (option.from !== undefined) return { type, autocomplete: true };
      const choices = (option.choices ?? []).map((word) => ({
        name: short(word, limits.choiceName),
        value: word,
      }));
      return { type, choices };
    }
    default:
      return option.kind satisfies never;
  }
}

function optionOf(option: CommandOption): Readonly<Record<string, unknown>> {
  return {
    ...optionShape(option),
    name: option.name,
    description: short(option.words, limits.commandWords),
    required: option.required && !asksInForm(option),
  };
}

/** Discord wants options that must be given first. */
function optionsOf({ options }: CommandAction): readonly Readonly<Record<string, unknown>>[] {
  const all = options.map(optionOf);
  return [...all.filter(({ required }) => required), ...all.filter(({ required }) => !required)];
}

/**
 * All slash commands as they are registered in a server, each action a subcommand. Permissions stay unset: who may do what
 * is decided by our roles when a command comes.
 */
export function registrations(
  commands: readonly SlashCommand[],
  localNames: DiscordOptions['localNames'] = {},
): readonly Registered[] {
  const local = (key: string) =>
    localNames[key] === undefined ? {} : { name_localizations: localNames[key] };
  const ours = commands.map(({ name, words, actions }) => ({
    name,
    ...local(name),
    description: short(words, limits.commandWords),
    type: ApplicationCommandType.ChatInput,
    options: actions.map((action) => ({
      type: ApplicationCommandOptionType.Subcommand,
      name: action.name,
      ...local(`${name} ${action.name}`),
      description: short(action.words, limits.commandWords),
      options: optionsOf(action),
    })),
  }));
  return [...ours, ...ownCommands].map((one) => ({ ...one, contexts: [InteractionContextType.Guild] }));
}
