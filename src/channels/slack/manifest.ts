import type { SlashCommand } from '../../../shared/slash-command.js';
import { redirectPath } from './install/paths.js';
import { ownCommands, registeredName } from './own-commands.js';
import { slackPath } from './slack-path.js';

/** A permission of the app with why it is asked for, and what is lost without it; `least` marks those without which nothing works. */
export interface Scope {
  readonly name: string;
  readonly why: string;
  readonly without: string;
  readonly least: boolean;
}

/** Every permission that the app asks for. */
export const scopes: readonly Scope[] = [
  {
    name: 'commands',
    why: 'slash commands, and the buttons and forms that answer them',
    without: 'nobody can do anything',
    least: true,
  },
  {
    name: 'chat:write',
    why: 'posts, changes and withdraws the bot’s own messages where it was invited',
    without: 'nothing reaches a channel',
    least: true,
  },
  {
    name: 'channels:history',
    why: 'finds the bot’s own message again after a crash in a public channel; other people’s messages are neither kept nor used',
    without: 'after a crash the channel stops and asks staff whether a message arrived',
    least: false,
  },
  {
    name: 'groups:history',
    why: 'the same in a private channel',
    without: 'after a crash the private channel stops and asks staff whether a message arrived',
    least: false,
  },
  {
    name: 'channels:read',
    why: 'lets doctor see whether the bot is in a public channel, and who may post there past it',
    without: 'doctor can’t tell, and you look at the channel’s settings yourself',
    least: false,
  },
  {
    name: 'groups:read',
    why: 'the same for a private channel',
    without: 'doctor can’t tell, and you look at the private channel’s settings yourself',
    least: false,
  },
  {
    name: 'files:read',
    why: 'reads a .txt or .md file that a tutor picks in the form of /passages add-file, and no other',
    without: 'texts are pasted instead',
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

/** How the app is reached: at the address of the school's server, or over a socket; and whether many workspaces install it, which needs that address too. */
export interface Reached {
  readonly base: string | null;
  readonly socket: boolean;
  readonly many: boolean;
}

/** Events by which a workspace says that it took the app away. */
const leaving = ['app_uninstalled', 'tokens_revoked'] as const;

/** The app's manifest for Slack. */
export function manifestOf(
  slashCommands: readonly SlashCommand[],
  { base, socket, many }: Reached,
): Readonly<Record<string, unknown>> {
  const own = base?.replace(/\/+$/u, '') ?? null;
  const address = socket || own === null ? null : `${own}${slackPath}`;
  const events = { ...(address === null ? {} : { request_url: address }), bot_events: leaving };
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
    oauth_config: {
      ...(many && own !== null ? { redirect_urls: [`${own}${redirectPath}`] } : {}),
      scopes: { bot: scopes.map(({ name }) => name) },
    },
    settings: {
      ...(many ? { event_subscriptions: events } : {}),
      interactivity: { is_enabled: true, ...(address === null ? {} : { request_url: address }) },
      org_deploy_enabled: false,
      socket_mode_enabled: address === null,
      token_rotation_enabled: false,
    },
  };
}
