import { createHmac, timingSafeEqual } from 'node:crypto';

/** The token that every form of one session (or one visitor) carries. */
export function formToken(key: string, session: string): string {
  return createHmac('sha256', key).update(`form token:${session}`).digest('base64url');
}

/** Compares in constant time. */
export function isFormToken(key: string, session: string, given: string | undefined): boolean {
  const expected = Buffer.from(formToken(key, session));
  const got = Buffer.from(given ?? '');
  return got.length === expected.length && timingSafeEqual(got, expected);
}

/**
 * Whether a post comes from a page of our own, as far as the browser says. `Sec-Fetch-Site` decides where it is sent;
 * else `Origin` must be our host. An `Origin: null` (our own pages send it, since they send no referrer) and browsers that
 * send neither are left to the form's token.
 */
export function isFromOwnPage(headers: Headers, host: string | undefined): boolean {
  const site = headers.get('sec-fetch-site');
  if (site !== null) return site === 'same-origin';
  const origin = headers.get('origin');
  if (origin === null || origin === 'null') return true;
  return URL.canParse(origin) && new URL(origin).host === host;
}
