import type { Context } from 'hono';
import { deleteCookie, getCookie, getSignedCookie, setCookie, setSignedCookie } from 'hono/cookie';
import type { CookieOptions } from 'hono/utils/cookie';
import type { Instant } from '../../../../shared/time.js';

/** What the signed session cookie holds. `own` is true where one person alone uses the device. */
export interface SessionCookie {
  readonly id: string;
  readonly seenAt: Instant;
  readonly own: boolean;
}

export interface Jar {
  readSession(c: Context): Promise<SessionCookie | null>;
  writeSession(c: Context, session: SessionCookie): Promise<void>;
  dropSession(c: Context): void;
  /** An id of somebody who isn't signed in, so that the sign-in form has a token too; it never becomes a session. */
  visitor(c: Context): Promise<string>;
  readPage(c: Context): string | undefined;
  writePage(c: Context, value: string): void;
}

const year = 365 * 24 * 3600;

/**
 * Cookies are signed, out of reach of script, and for this host only. SameSite is Lax: with Strict a pupil who follows
 * the link on a slip, or a tutor the link in a mail, would seem signed out; every post is guarded by a token besides.
 */
export function openJar(key: string, secure: boolean): Jar {
  const prefix = secure ? ('host' as const) : undefined;
  const options: CookieOptions = {
    path: '/',
    httpOnly: true,
    sameSite: 'Lax',
    secure,
    ...(prefix ? { prefix } : {}),
  };
  const readSigned = async (c: Context, name: string): Promise<string | null> =>
    (await getSignedCookie(c, key, name, prefix)) || null;

  return {
    async readSession(c) {
      const found = /^([\w-]{1,200})\.([0-9a-z]{1,12})\.([01])$/.exec((await readSigned(c, 'session')) ?? '');
      if (!found) return null;
      return { id: found[1] ?? '', seenAt: parseInt(found[2] ?? '', 36), own: found[3] === '1' };
    },
    async writeSession(c, { id, seenAt, own }) {
      const value = `${id}.${seenAt.toString(36)}.${own ? 1 : 0}`;
      await setSignedCookie(c, 'session', value, key, own ? { ...options, maxAge: year / 3 } : options);
    },
    dropSession(c) {
      deleteCookie(c, 'session', options);
    },
    async visitor(c) {
      const before = await readSigned(c, 'visitor');
      if (before !== null && /^[\w-]{36}$/.test(before)) return before;
      const fresh = crypto.randomUUID();
      await setSignedCookie(c, 'visitor', fresh, key, options);
      return fresh;
    },
    readPage: (c) => getCookie(c, 'page', prefix),
    writePage(c, value) {
      setCookie(c, 'page', value, { ...options, maxAge: year });
    },
  };
}
