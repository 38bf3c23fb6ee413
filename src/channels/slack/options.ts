import type { TypedCommand } from '../../../shared/channel.js';
import { Fault } from '../../../shared/fault.js';
import type { SlashCommand } from '../../../shared/slash-command.js';
import type { Instant } from '../../../shared/time.js';
import type { Vault } from './install/workspaces.js';

/** What the channel writes to the log: ids, codes and counts only. */
export interface SlackLog {
  debug(about: Readonly<Record<string, unknown>>, words: string): void;
  warn(about: Readonly<Record<string, unknown>>, words: string): void;
  error(about: Readonly<Record<string, unknown>>, words: string): void;
}

/** What it takes to be installed in many workspaces. */
export interface SlackOauth {
  readonly clientId: string;
  readonly clientSecret: string;
  readonly stateSecret: string;
  /** The school's address, on which Slack sends browsers back; null where the app's page at Slack names the only one. */
  readonly base: string | null;
  /** Where the tokens of the workspaces are kept. */
  readonly vault: Vault;
}

export interface SlackOptions {
  /** The token for one workspace; null where each has its own. */
  readonly botToken: string | null;
  /** Null where there is one workspace. */
  readonly oauth: SlackOauth | null;
  /** Verifies requests that arrive over HTTP; null where a socket is used alone. */
  readonly signingSecret: string | null;
  /** Opens a socket for updates; null where they arrive over HTTP. */
  readonly appToken: string | null;
  /** Base address of the Web API, null for Slack's own. */
  readonly api: string | null;
  readonly log: SlackLog;
  readonly slashCommands: readonly SlashCommand[];
  /** Reads a typed line into a command; throws `Fault` with what was expected. */
  readonly readCommand: (line: string) => TypedCommand;
  readonly now: () => Instant;
  /** How many updates are worked on at the same time; `mostInFlight` if left out. */
  readonly mostInFlight?: number;
}

/** How many updates are worked on at the same time; a class of thirty presses far less, and each takes memory. */
export const mostInFlight = 200;

/** Throws `Fault` where updates could arrive by no way. */
export function checkOptions({ signingSecret, appToken }: SlackOptions): void {
  if (signingSecret !== null || appToken !== null) return;
  throw new Fault(
    'configuration',
    'Cannot open Slack, expected SLACK_SIGNING_SECRET (updates over HTTP) or SLACK_APP_TOKEN (over a socket), got neither',
    'Copy one of them from the app’s page at Slack, or unset SLACK_BOT_TOKEN and SLACK_CLIENT_ID.',
  );
}

/** The base address of the Web API with the slash at its end that the client wants; both "http://host" and "http://host/api" are taken for it. */
export function apiAddress(api: string | null): string {
  if (api === null) return 'https://slack.com/api/';
  const base = api.replace(/\/*$/u, '/');
  return new URL(base).pathname === '/' ? `${base}api/` : base;
}
