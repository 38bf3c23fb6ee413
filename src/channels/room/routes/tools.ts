import type { Context } from 'hono';
import type { House } from '../../../../shared/channel.js';
import type { Assets } from '../assets.js';
import type { Jar } from '../http/cookies.js';
import type { RoomOptions } from '../options.js';
import type { Show } from '../show.js';
import type { Streams } from '../streams.js';
import type { Tickets } from '../tickets.js';
import type { Visitor } from '../visitor.js';

/** What the routes share. */
export interface RouteTools {
  readonly house: House;
  readonly options: RoomOptions;
  readonly assets: Assets;
  readonly jar: Jar;
  readonly show: Show;
  readonly tickets: Tickets;
  readonly streams: Streams;
  readonly findVisitor: (c: Context) => Promise<Visitor>;
  /** Ends what is open of a session: its live pages and its answers on their way. */
  readonly ended: (session: string) => void;
}
