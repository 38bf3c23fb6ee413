import type { TypedCommand } from '../../../shared/channel.js';
import type { SlashCommand } from '../../../shared/slash-command.js';
import type { StreamLimits } from './streams.js';

/** A drawing of a second key, by its name; shared with nothing but the door. */
export interface KeyPicture {
  readonly name: string;
  readonly svg: string;
}

/** What the room writes to the log: ids, codes and counts only. */
export interface RoomLog {
  debug(about: Readonly<Record<string, unknown>>, words: string): void;
  warn(about: Readonly<Record<string, unknown>>, words: string): void;
  error(about: Readonly<Record<string, unknown>>, words: string): void;
}

export interface RoomOptions {
  readonly host: string;
  /** 0 takes a free one. */
  readonly port: number;
  /** Signs cookies and form tokens; at least 32 characters. */
  readonly key: string;
  /** True where people come by https. */
  readonly secureCookies: boolean;
  /** True where a proxy of the school stands in front and appends to X-Forwarded-For. */
  readonly trustProxy: boolean;
  readonly log: RoomLog;
  /** The slash commands that the command page offers as forms. */
  readonly slashCommands: readonly SlashCommand[];
  /** Reads a typed line into a command; throws `Fault` with what was expected. */
  readonly readCommand: (line: string) => TypedCommand;
  /** The drawings of which a pupil picks three. */
  readonly pictures: readonly KeyPicture[];
  /** Minutes without a press after which a session ends on a device that several people use; 30 if left out. */
  readonly idleMinutes?: number;
  /** Limits of live pages; `streamLimits` if left out. */
  readonly live?: StreamLimits;
  /** How long a client may take, in milliseconds; `serverLimits` if left out. */
  readonly patience?: { readonly headers: number; readonly request: number; readonly looks: number };
  /** Requests of other channels that arrive at the same port, read or sent, by their exact path; they verify themselves. */
  readonly guests?: Readonly<Record<string, (request: Request) => Promise<Response>>>;
}
