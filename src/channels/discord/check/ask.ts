import { DiscordAPIError, RequestMethod, REST } from 'discord.js';
import { restAddress } from '../connect/rest.js';
import type { DiscordOptions } from '../options.js';

/** How long one question may take, in milliseconds; three stand behind one another at most. */
const patience = 2500;

/** What Discord answered, and its clock in milliseconds, null where it doesn't say. */
export interface Heard<T> {
  readonly body: T;
  readonly at: number | null;
}

/** Asks for one thing; throws what the library throws. */
export type Ask = <T>(route: `/${string}`) => Promise<Heard<T>>;

/** Opens a line for questions that are asked once and not waited for. */
export function openAsk(options: DiscordOptions): Ask {
  const rest = new REST({
    ...restAddress(options),
    retries: 0,
    timeout: Math.min(options.patience ?? patience, patience),
    rejectOnRateLimit: () => true,
  }).setToken(options.token);
  return async <T>(route: `/${string}`) => {
    const response = await rest.queueRequest({ fullRoute: route, method: RequestMethod.Get });
    const date = Date.parse(response.headers.get('date') ?? '');
    return { body: (await response.json()) as T, at: Number.isNaN(date) ? null : date };
  };
}

/** Whether Discord itself said no, by its code or status. */
export function saidNo(why: unknown, ...codes: readonly number[]): boolean {
  return why instanceof DiscordAPIError && (codes.includes(Number(why.code)) || codes.includes(why.status));
}
