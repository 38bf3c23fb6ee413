import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context } from 'hono';
import type { RoomOptions } from '../options.js';
import { guesserOf } from './address.js';

/** Whose guesses a request's are. */
export function guesserFrom(c: Context, { trustProxy }: Pick<RoomOptions, 'trustProxy'>): string {
  return guesserOf(getConnInfo(c).remote.address, c.req.header('x-forwarded-for'), trustProxy);
}
