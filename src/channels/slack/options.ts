import type { TypedCommand } from '../../../shared/channel.js';
import { Fault } from '../../../shared/fault.js';
import type { SlashCommand } from '../../../shared/slash-command.js';
import type { Instant } from '../../../shared/time.js';

/** What the channel writes to the log: ids, codes and counts only. */
export interface SlackLog {
  debug(about: Readonly<Record<string, unknown>>, words: string): void;
  warn(about: Readonly<Record<string, unknown>>, words: string): void;
  error(about: Readonly<Record<string, unknown>>, words: string): void;
}

export interface SlackOptions {
  readonly botToken: string;
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
}

/** Throws `Fault` where updates could arrive by no way. */
export function checkOptions({ signingSecret, appToken }: SlackOptions): void {
  if (signingSecret !== null || appToken !== null) return;
  throw new Fault(
    'configuration',
    'Cannot open Slack, expected SLACK_SIGNING_SECRET (updates over HTTP) or SLACK_APP_TOKEN (over a socket), got neither',
    'Copy one of them from the app’s page at Slack, or unset SLACK_BOT_TOKEN.',
  );
}

/** The base address of the Web API with the slash at its end that the client wants. */
export function apiAddress(api: string | null): string {
  return api === null ? 'https://slack.com/api/' : api.replace(/\/*$/u, '/');
}
