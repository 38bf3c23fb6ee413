import type { SlashCommand } from '../../../shared/slash-command.js';
import { ownCommands, registeredName } from './own-commands.js';
import { slackPath } from './slack-path.js';

/** A permission of the app with why it is asked for; `least` marks those without which nothing works. */
export interface Scope {
  readonly name: string;
  readonly why: string;
  readonly least: boolean;
}

/** Every permission that the app asks for. */
export const scopes: readonly Scope[] = [
  { name: 'commands', why: 'slash commands, and the buttons and forms that answer them', least: true },
  {
    name: 'chat:write',
    why: 'posts, changes and withdraws the bot’s own messages where it was invited',
    least: true,
  },
  {
    name: 'channels:history',
    why: 'finds the bot’s own message again after a crash in a public channel; without it staff are asked to look. Other people’s messages are neither kept nor read for anything else',
    least: false,
  },
  { name: 'groups:history', why: 'the same in a private channel', least: false },
  {
    name: 'files:read',
    why: 'reads a .txt or .md file that a tutor picks in the form of /passages add-file, and no other',
    least: false,
  },
];

function commandOf(
  name: string,
  words: string,
  hint: string,
  address: string | null,
): Readonly<Record<string, unknown>> {
  return {
    command: `/${registeredName(name)}`,
    description: words,
    ...(hint === '' ? {} : { usage_hint: hint }),
    should_escape: false,
    ...(address === null ? {} : { url: address }),
  };
}

/** The app's manifest for Slack. `base` is the address of the school's server; null where a socket is used. */
export function manifestOf(
  slashCommands: readonly SlashCommand[],
  base: string | null,
): Readonly<Record<string, unknown>> {
  const address = base === null ? null : `${base.replace(/\/+$/u, '')}${slackPath}`;
  const commands = [
    ...slashCommands.map(({ name, words, actions }) =>
      commandOf(name, words, actions.map((action) => action.name).join(' | '), address),
    ),
    ...ownCommands.map(({ name, words, hint }) => commandOf(name, words, hint, address)),
  ];
  return {
    display_information: {
      name: 'Turnstone',
      description: 'Practice of reading strategies between sessions with a tutor',
    },
    features: {
      bot_user: { display_name: 'Turnstone', always_online: true },
      slash_commands: commands,
    },
    oauth_config: { scopes: { bot: scopes.map(({ name }) => name) } },
    settings: {
      interactivity: { is_enabled: true, ...(address === null ? {} : { request_url: address }) },
      org_deploy_enabled: false,
      socket_mode_enabled: address === null,
      token_rotation_enabled: false,
    },
  };
}
