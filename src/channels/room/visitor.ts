import type { Context } from 'hono';
import type { House, Profile } from '../../../shared/channel.js';
import { formToken } from './http/form-token.js';
import type { Jar, SessionCookie } from './http/cookies.js';
import type { RoomOptions } from './options.js';

/** Somebody who came in. */
export interface SignedIn {
  readonly kind: 'in';
  readonly cookie: SessionCookie;
  readonly profile: Profile;
  /** What the token of their forms is bound to. */
  readonly bound: string;
  readonly token: string;
}

/** Somebody who did not, or not any more. */
export interface Outside {
  readonly kind: 'out';
  readonly idle: boolean;
  readonly bound: string;
  readonly token: string;
}

export type Visitor = SignedIn | Outside;

const renewAfter = 60_000;

/** The header by which the page's script says that it only looks for news; this doesn't count as being here. */
export const newsHeader = 'x-room-news';

/** Finds who is there by the session cookie; on a shared device a session ends after idle minutes. */
export function visitorFinder(
  house: House,
  jar: Jar,
  options: RoomOptions,
  ended: (session: string) => void,
): (c: Context) => Promise<Visitor> {
  const idleTime = (options.idleMinutes ?? 30) * 60_000;

  const outside = async (c: Context, idle: boolean): Promise<Outside> => {
    const bound = await jar.visitor(c);
    return { kind: 'out', idle, bound, token: formToken(options.key, bound) };
  };

  return async (c) => {
    const cookie = await jar.readSession(c);
    if (cookie === null) return outside(c, false);
    const now = house.now();
    if (!cookie.own && now - cookie.seenAt > idleTime) {
      await house.signOut(cookie.id);
      ended(cookie.id);
      jar.dropSession(c);
      return outside(c, true);
    }
    const who = await house.session(cookie.id);
    const profile = who === null ? null : await house.profile(who);
    if (profile === null) {
      jar.dropSession(c);
      return outside(c, false);
    }
    const present = c.req.header(newsHeader) === undefined && c.req.path !== '/live';
    if (present && now - cookie.seenAt > renewAfter) {
      await jar.writeSession(c, { ...cookie, seenAt: now });
    }
    return { kind: 'in', cookie, profile, bound: cookie.id, token: formToken(options.key, cookie.id) };
  };
}
