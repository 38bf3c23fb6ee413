import type { SlashCommand } from '../../../shared/slash-command.js';

/** What the channel writes to the log: ids, codes and counts only. */
export interface DiscordLog {
  debug(about: Readonly<Record<string, unknown>>, words: string): void;
  info(about: Readonly<Record<string, unknown>>, words: string): void;
  warn(about: Readonly<Record<string, unknown>>, words: string): void;
  error(about: Readonly<Record<string, unknown>>, words: string): void;
}

export interface DiscordOptions {
  readonly token: string;
  /** Asked of Discord where it is left out. */
  readonly applicationId: string | null;
  /** Set where interactions come over HTTP instead of the gateway; 64 hexadecimal digits. */
  readonly publicKey: string | null;
  /** Base address of Discord's interface; Discord's own where null. */
  readonly api: string | null;
  readonly log: DiscordLog;
  readonly slashCommands: readonly SlashCommand[];
  /** How long a request to Discord may take, in milliseconds; ten seconds if left out. */
  readonly patience?: number;
  /** How many interactions are answered at the same time; `mostInFlight` if left out. */
  readonly mostInFlight?: number;
  /** What slash commands are called in other languages: locale to name, by command or "command action". */
  readonly localNames?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** Where Discord's interface and files are, unless an address is given. */
export const discordOwn = {
  api: 'https://discord.com/api',
  files: ['cdn.discordapp.com', 'media.discordapp.net'],
} as const;
