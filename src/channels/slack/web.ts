import { webApi, type Logger } from '@slack/bolt';
import type { WebClient, WebClientOptions } from '@slack/web-api';
import type { Instant } from '../../../shared/time.js';
import { apiAddress, type SlackLog, type SlackOptions } from './options.js';

/** How long one call may take, in milliseconds. */
const callTimeout = 10_000;
/** Waits, in milliseconds: without a word from Slack how long, and after a failure of the network or of Slack. */
const waits = { unsaid: 30_000, trouble: 5000 } as const;

/** A logger for the libraries that keeps all of their words to itself, since these may hold what somebody wrote, or a token. */
export function quietLogger(log: SlackLog): Logger {
  const level = 'error' as ReturnType<Logger['getLevel']>;
  return {
    debug: () => undefined,
    info: () => undefined,
    warn: () => log.debug({}, 'the Slack library warns'),
    error: () => log.debug({}, 'the Slack library reports a failure'),
    setLevel: () => undefined,
    getLevel: () => level,
    setName: () => undefined,
  };
}

/** Options of a client that neither waits nor repeats by itself: a slow place must not hold up the others, and a post must not be made twice. */
export function clientOptions(options: SlackOptions): WebClientOptions {
  return {
    slackApiUrl: apiAddress(options.api),
    logger: quietLogger(options.log),
    rejectRateLimitedCalls: true,
    retryConfig: { retries: 0 },
    timeout: callTimeout,
    maxRequestConcurrency: 50,
  };
}

/** Opens the client of the bot in a workspace. */
export function openClient(token: string, options: SlackOptions): WebClient {
  return new webApi.WebClient(token, clientOptions(options));
}

/** Why a call failed: Slack said no by a code, wants us to wait, or nobody knows whether it was done. */
export type Trouble =
  | { readonly kind: 'refused'; readonly code: string }
  | { readonly kind: 'slow down'; readonly until: Instant }
  | { readonly kind: 'not reached'; readonly until: Instant; readonly code: string }
  | { readonly kind: 'in doubt'; readonly until: Instant; readonly code: string };

const neverConnected = new Set([
  'ECONNREFUSED',
  'ENOTFOUND',
  'EAI_AGAIN',
  'ENETUNREACH',
  'EHOSTUNREACH',
  'UND_ERR_CONNECT_TIMEOUT',
]);

function networkCode(why: unknown): string {
  for (let each = why, depth = 0; depth < 5 && typeof each === 'object' && each !== null; depth += 1) {
    const { code, original, cause } = each as { code?: unknown; original?: unknown; cause?: unknown };
    const inner = original ?? cause;
    if (typeof code === 'string' && !code.startsWith('slack_webapi')) return code;
    if (inner === undefined) return (each as { name?: string }).name ?? 'unknown';
    each = inner;
  }
  return 'unknown';
}

/** Codes by which Slack itself says that it is in trouble or wants less. */
const passing = new Set([
  'internal_error',
  'fatal_error',
  'service_unavailable',
  'request_timeout',
  'team_added_to_org',
]);

/** Reads what a failed call threw. */
export function troubleOf(why: unknown, now: Instant): Trouble {
  if (why instanceof webApi.WebAPIRateLimitedError) {
    return { kind: 'slow down', until: now + Math.max(1, why.retryAfter) * 1000 };
  }
  if (why instanceof webApi.WebAPIPlatformError) {
    const code = why.data.error;
    if (code === 'ratelimited' || code === 'rate_limited')
      return { kind: 'slow down', until: now + waits.unsaid };
    if (passing.has(code)) return { kind: 'in doubt', until: now + waits.trouble, code };
    return { kind: 'refused', code };
  }
  if (why instanceof webApi.WebAPIHTTPError) {
    return { kind: 'in doubt', until: now + waits.trouble, code: String(why.statusCode) };
  }
  if (why instanceof Error && why.message.startsWith('Retry header')) {
    return { kind: 'slow down', until: now + waits.unsaid };
  }
  const code = networkCode(why);
  return { kind: neverConnected.has(code) ? 'not reached' : 'in doubt', until: now + waits.trouble, code };
}
