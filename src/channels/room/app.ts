import { Hono, type Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { FeedItem, House, Who } from '../../../shared/channel.js';
import { Fault } from '../../../shared/fault.js';
import type { Assets } from './assets.js';
import { openJar } from './http/cookies.js';
import { isFromOwnPage } from './http/form-token.js';
import { guardHeaders } from './http/headers.js';
import type { RoomOptions } from './options.js';
import { addActs } from './routes/acts.js';
import { addPages } from './routes/pages.js';
import { addSecondKey } from './routes/second-key.js';
import { addSignIn } from './routes/sign-in.js';
import { addSlips } from './routes/slips.js';
import { openShow } from './show.js';
import type { Streams } from './streams.js';
import { openTickets } from './tickets.js';
import { visitorFinder } from './visitor.js';
import type { RoomWord } from './words.js';

/** The most that one request may carry, in bytes. */
export const bodyBytes = 300 * 1024;

/** Builds the room's routes over a house; everything that isn't named here is answered with "nothing here". */
export function buildApp(
  house: House,
  options: RoomOptions,
  assets: Assets,
  newest: (who: Who) => Promise<readonly FeedItem[]>,
  streams: Streams,
): Hono {
  const app = new Hono();
  const jar = openJar(options.key, options.secureCookies);
  const tickets = openTickets(() => house.now());
  const ended = (session: string): void => {
    streams.endSession(session);
    tickets.forget(session);
  };
  const findVisitor = visitorFinder(house, jar, options, ended);
  const show = openShow({ house, options, newest }, assets, jar);
  /** A page of trouble in the frame of whoever is there, so that a pupil finds "Tell a grown-up" on it too. */
  const notice = async (c: Context, title: RoomWord, words: RoomWord, status: 403 | 404 | 413 | 422 | 500) =>
    show.notice(c, await findVisitor(c).catch(() => null), title, words, status);

  app.use(async (c, next) => {
    for (const [name, value] of Object.entries(guardHeaders)) c.header(name, value);
    await next();
  });
  app.use(
    bodyLimit({
      maxSize: bodyBytes,
      onError: (c) => {
        c.header('Connection', 'close');
        return notice(c, 'too big title', 'too big', 413);
      },
    }),
  );
  for (const [path, guest] of Object.entries(options.guests ?? {}))
    app.on(['GET', 'POST'], path, (c) => guest(c.req.raw));

  app.use(async (c, next) => {
    const { method } = c.req;
    if (method !== 'GET' && method !== 'HEAD' && method !== 'POST') {
      c.header('Allow', 'GET, HEAD, POST');
      return c.body(null, 405);
    }
    const host = (options.trustProxy ? c.req.header('x-forwarded-host') : undefined) ?? c.req.header('host');
    if (method === 'POST' && !isFromOwnPage(c.req.raw.headers, host)) {
      return notice(c, 'trouble title', 'page too old', 403);
    }
    return next();
  });

  app.get('/assets/:file', (c) => {
    const asset = assets.get(c.req.path);
    if (!asset) return c.body(null, 404);
    const fixed = assets.href(c.req.path) === `${c.req.path}${new URL(c.req.url).search}`;
    c.header('Cache-Control', fixed ? 'public, max-age=31536000, immutable' : 'no-cache');
    c.header('Content-Type', asset.type);
    return c.body(asset.body);
  });
  app.get('/favicon.ico', (c) => c.redirect('/assets/icon.svg', 302));

  const routes = { house, options, assets, jar, show, tickets, streams, findVisitor, ended };
  addSignIn(app, routes);
  addSecondKey(app, routes);
  addSlips(app, routes);
  addActs(app, routes);
  addPages(app, routes);

  app.notFound((c) => notice(c, 'not here title', 'not here', 404));
  app.onError((why, c) => {
    if (why instanceof Fault) return notice(c, 'trouble title', 'not text', 422);
    // Names and places only: a message may hold what somebody wrote.
    const place = why.stack?.split('\n').find((line) => line.trim().startsWith('at ')) ?? '';
    options.log.error({ code: why.name, place: place.trim() }, 'a request failed');
    return notice(c, 'trouble title', 'trouble', 500);
  });
  return app;
}
