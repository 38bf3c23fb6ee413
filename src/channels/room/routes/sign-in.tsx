import type { Hono } from 'hono';
import { guesserFrom } from '../http/guesser.js';
import { isFormToken } from '../http/form-token.js';
import { readForm } from '../http/read-form.js';
import { openContext } from '../render/context.js';
import { LinkForm } from '../pages/sign-in.js';
import { say } from '../words.js';
import { askForMore, secondOf } from './second-key.js';
import type { RouteTools } from './tools.js';

/** What a slip's secret can look like; anything else is no door. */
export const secretShape = /^[\w-]{6,100}$/;

/** Coming in by code or link, and going out. */
export function addSignIn(app: Hono, tools: RouteTools): void {
  const { house, jar, show, options } = tools;

  app.get('/in', (c) => c.redirect('/', 303));

  app.get('/in/:secret', async (c) => {
    const secret = c.req.param('secret');
    const visitor = await tools.findVisitor(c);
    if (!secretShape.test(secret)) return show.notice(c, visitor, 'not here title', 'not here', 404);
    const context = openContext('in', {
      token: visitor.token,
      back: '/',
      kept: null,
      scribe: false,
      headings: 2,
    });
    const form = <LinkForm context={context} secret={secret} />;
    return show.plainPage(c, null, say('link title'), form, 200);
  });

  app.post('/in', async (c) => {
    const visitor = await tools.findVisitor(c);
    const form = await readForm(c);
    const code = form.fields['code'] ?? '';
    const kept = { kind: 'move', name: 'in', fields: { code } } as const;
    const again = (words: readonly string[], status: 403 | 422): Response =>
      show.signIn(c, visitor, null, { words, kept, status });
    if (!isFormToken(options.key, visitor.bound, form.own['_token']))
      return again([say('page too old')], 403);
    if (code.trim() === '') return again([say('fill in code')], 422);
    const from = guesserFrom(c, options);
    const second = secondOf(form);
    const opened = await house.signIn(code.slice(0, 200), from, second ?? undefined);
    if ('refused' in opened) return again([opened.refused], 422);
    if ('asks' in opened) {
      const asked = second === null ? { ...opened, why: say('pictures three') } : opened;
      return askForMore(c, tools, { visitor, asked, code, own: form.fields['own'] === 'yes' });
    }
    // Whatever session was there before ends: a session's id is never carried over a sign-in.
    if (visitor.kind === 'in') {
      await house.signOut(visitor.cookie.id);
      tools.ended(visitor.cookie.id);
    }
    await jar.writeSession(c, {
      id: opened.session,
      seenAt: house.now(),
      own: form.fields['own'] === 'yes',
    });
    return c.redirect('/', 303);
  });

  app.post('/out', async (c) => {
    const visitor = await tools.findVisitor(c);
    const form = await readForm(c);
    if (visitor.kind === 'out') return c.redirect('/', 303);
    if (!isFormToken(options.key, visitor.bound, form.own['_token'])) {
      return show.notice(c, visitor, 'trouble title', 'page too old', 403);
    }
    await house.signOut(visitor.cookie.id);
    tools.ended(visitor.cookie.id);
    jar.dropSession(c);
    c.header('Clear-Site-Data', '"cache", "storage"');
    return c.redirect('/?out=yes', 303);
  });
}
