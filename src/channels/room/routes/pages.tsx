import type { Hono } from 'hono';
import { streamSSE } from 'hono/streaming';
import { keepingForFamilies } from '../../../../shared/keeping.js';
import { isFormToken } from '../http/form-token.js';
import { readForm } from '../http/read-form.js';
import { pageLookOf, readPageLook, writePageLook } from '../page-look.js';
import { HowItLooks } from '../pages/how-it-looks.js';
import { WhatIsKept } from '../pages/what-is-kept.js';
import { ownPath } from '../paths.js';
import { openContext } from '../render/context.js';
import { standsAlone } from '../show.js';
import { newsHeader, type SignedIn } from '../visitor.js';
import { say } from '../words.js';
import type { RouteTools } from './tools.js';

/** Pages that are only looked at, the live stream, and how the pages look. */
export function addPages(app: Hono, tools: RouteTools): void {
  const { house, jar, show, tickets, streams, options } = tools;

  app.get('/live', async (c) => {
    const visitor = await tools.findVisitor(c);
    // No content tells the browser to stop asking.
    if (visitor.kind === 'out') return c.body(null, 204);
    c.header('X-Accel-Buffering', 'no');
    return streamSSE(c, (stream) => streams.serve(stream, visitor.cookie.id, visitor.profile));
  });

  /** Says that somebody is still here, while they type for long. */
  app.get('/here', async (c) => {
    await tools.findVisitor(c);
    return c.body(null, 204);
  });

  app.get('/what-is-kept', async (c) =>
    show.plainPage(c, await tools.findVisitor(c), keepingForFamilies.title, <WhatIsKept />, 200),
  );

  app.get('/page', async (c) => {
    const visitor = await tools.findVisitor(c);
    const context = openContext('page-look', {
      token: visitor.token,
      back: '/page',
      kept: null,
      scribe: false,
      headings: 2,
    });
    const form = (
      <>
        <HowItLooks look={readPageLook(jar.readPage(c))} context={context} />
        {visitor.kind === 'in' && visitor.profile.role === 'pupil' ? (
          <p>
            <a class="button" href="/pictures">
              {say('pictures mine')}
            </a>
          </p>
        ) : null}
      </>
    );
    return show.plainPage(c, visitor, say('how it looks'), form, 200);
  });

  app.post('/page', async (c) => {
    const visitor = await tools.findVisitor(c);
    const form = await readForm(c);
    if (!isFormToken(options.key, visitor.bound, form.own['_token'])) {
      return show.notice(c, visitor, 'trouble title', 'page too old', 403);
    }
    jar.writePage(c, writePageLook(pageLookOf(form.fields)));
    return c.redirect('/page', 303);
  });

  const visit = async (visitor: SignedIn): Promise<void> => {
    await house.move({
      id: `room:${visitor.profile.person}:${crypto.randomUUID()}`,
      who: visitor.profile,
      move: 'visit',
      fields: {},
    });
  };

  app.get('*', async (c) => {
    const visitor = await tools.findVisitor(c);
    const url = new URL(c.req.url);
    if (visitor.kind === 'out') {
      const note = visitor.idle ? 'idle out' : url.searchParams.get('out') === 'yes' ? 'signed out' : null;
      if (url.pathname === '/') return show.signIn(c, visitor, note);
      // Whether a page is there is told to nobody outside.
      return show.signIn(c, visitor, note ?? 'come in first', { words: [], kept: null, status: 403 });
    }
    const said = url.searchParams.get('said');
    const back = ownPath(`${url.pathname}${url.search}`);
    const answer = said === null ? null : tickets.find(visitor.cookie.id, said);
    if (answer !== null && standsAlone(visitor, answer)) return show.answer(c, visitor, back, answer);
    const looked = c.req.header(newsHeader) !== undefined || c.req.header('sec-purpose') !== undefined;
    if (url.pathname === '/' && !looked) await visit(visitor);
    return (
      (await show.page(c, visitor, back, answer, null)) ??
      show.notice(c, visitor, 'not here title', 'not here', 404)
    );
  });
}
