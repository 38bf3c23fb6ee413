import { DiscordAPIError, HTTPError, RateLimitError } from 'discord.js';
import type { Delivered } from '../../../../shared/channel.js';

/** Codes of Discord that matter here (its API documentation, "JSON error codes"). */
export const codes = {
  unknownChannel: 10003,
  unknownMessage: 10008,
  unknownInteraction: 10062,
  alreadyAnswered: 40060,
  noAccess: 50001,
  noPermission: 50013,
  archived: 50083,
  wrongPlace: 50024,
  hasThread: 160004,
  manyThreads: 160006,
} as const;

/** What staff are told when only a person can mend it. */
const words: Readonly<Record<number, string>> = {
  [codes.unknownChannel]:
    'Cannot write on Discord, expected the channel to be there; it was deleted. Use /here in another one.',
  [codes.noAccess]:
    'Cannot write on Discord, expected to see the channel; the bot was taken out or lost “View Channel”. Invite it again or give that back, then use /here.',
  [codes.noPermission]:
    'Cannot write on Discord, expected “Send Messages” in the channel; it was withdrawn. Give it back, then use /here.',
  [codes.archived]:
    'Cannot write on Discord, expected an open thread; it is archived. Open it again, then use /here.',
};

const newToken =
  'Cannot write on Discord, expected a token that Discord takes; it was revoked. Set a new DISCORD_TOKEN and start again.';

/** Whether Discord said no by one of some codes. */
export function saysCode(why: unknown, ...some: readonly number[]): boolean {
  return why instanceof DiscordAPIError && some.includes(Number(why.code));
}

/** Whether Discord says that a message isn't there any more. */
export function isGone(why: unknown): boolean {
  return saysCode(why, codes.unknownMessage);
}

/** Whether nobody can tell if a request was carried out: the line broke, or Discord itself failed. */
export function isUncertain(why: unknown): boolean {
  if (why instanceof RateLimitError || why instanceof DiscordAPIError) return false;
  return !isTokenGone(why);
}

function isTokenGone(why: unknown): boolean {
  // The library forgets a token that was refused once, and then says that it has none.
  return why instanceof Error && /token to be set/u.test(why.message);
}

/** A code for the log, without anything that was sent. */
export function failureCode(why: unknown): string {
  if (why instanceof DiscordAPIError) return `${why.status}/${why.code}`;
  if (why instanceof HTTPError) return String(why.status);
  if (why instanceof RateLimitError) return '429';
  if (why instanceof Error && ['AbortError', 'TimeoutError'].includes(why.name)) return 'no answer';
  const code = why instanceof Error ? ((why as NodeJS.ErrnoException).code ?? why.name) : 'unknown';
  return String(code);
}

const least = 1000;
const most = 900_000;

/**
 * What became of a delivery that failed. `tries` counts failures in a row in this place: each doubles the wait, from two
 * seconds to a minute. A rate limit is waited out as long as Discord says, five seconds where it says nothing.
 */
export function afterFailure(why: unknown, now: number, tries: number): Delivered {
  if (why instanceof RateLimitError) {
    const said = Number.isFinite(why.retryAfter) && why.retryAfter > 0 ? why.retryAfter : 5000;
    return { again: now + Math.min(Math.max(said, least), most), why: 'Discord asked to slow down' };
  }
  if (isTokenGone(why)) return { stuck: newToken };
  if (why instanceof DiscordAPIError) {
    if (why.status === 401) return { stuck: newToken };
    const known = words[Number(why.code)];
    return {
      stuck:
        known ??
        `Cannot write on Discord, expected the message to be taken, got ${failureCode(why)}. Ask who runs Turnstone.`,
    };
  }
  return { again: now + Math.min(1000 * 2 ** Math.min(tries, 6), 60_000), why: failureCode(why) };
}
