import type { Context, Hono } from 'hono';
import type { Reply } from '../../../../shared/channel.js';
import { Fault } from '../../../../shared/fault.js';
import { isLookName, lookShapes, mayLook } from '../../../../shared/looks.js';
import { isMoveName, mayMove, moveShapes } from '../../../../shared/moves.js';
import type { Shape } from '../../../../shared/shape.js';
import { isFormToken } from '../http/form-token.js';
import { readForm, type PostedForm } from '../http/read-form.js';
import { backOf } from '../pages/page.js';
import { ownPath } from '../paths.js';
import type { Kept } from '../render/context.js';
import { wordsOf, type Again } from '../show.js';
import type { SignedIn } from '../visitor.js';
import { say } from '../words.js';
import { commandOf } from './command-of.js';
import type { RouteTools } from './tools.js';

/** Fields that a shape knows; nothing else is passed on. */
function known(shape: Shape, fields: Readonly<Record<string, string>>): Record<string, string> {
  const names = new Set(Object.keys(shape).map((name) => name.replace(/\?$/u, '')));
  return Object.fromEntries(Object.entries(fields).filter(([name]) => names.has(name)));
}

function missing(shape: Shape, fields: Readonly<Record<string, string>>): boolean {
  return Object.keys(shape).some((name) => !name.endsWith('?') && (fields[name] ?? '').trim() === '');
}

/** The update id of a form, for one person only, so that nobody is answered with another's reply. */
function updateId(visitor: SignedIn, form: PostedForm): string {
  const given = form.own['_update'] ?? '';
  const id = /^[0-9a-f-]{36}$/.test(given) ? given : crypto.randomUUID();
  return `room:${visitor.profile.person}:${id}`;
}

/** Where to go after something was done: a pupil's step is done with its form, all else goes back to its page. */
function afterwards(form: PostedForm): URL {
  const back = ownPath(form.own['_back']);
  return back.pathname.startsWith('/step/') ? ownPath('/') : back;
}

/** Posts of moves, of looks that are asked for by a form, and of commands. */
export function addActs(app: Hono, tools: RouteTools): void {
  const { house, options, show, tickets } = tools;

  /** Shows the page again with what went wrong on top and everything that was typed. */
  const again = async (c: Context, visitor: SignedIn, form: PostedForm, why: Again): Promise<Response> => {
    const back = ownPath(form.own['_back']);
    return (await show.page(c, visitor, back, null, why).catch(() => null)) ?? show.stuck(c, visitor, why);
  };

  const act = async (
    c: Context,
    keptAs: (form: PostedForm) => Kept,
    does: (visitor: SignedIn, form: PostedForm) => Promise<Reply | Again>,
  ): Promise<Response> => {
    const visitor = await tools.findVisitor(c);
    const form = await readForm(c);
    const kept = keptAs(form);
    if (visitor.kind === 'out') {
      const note = visitor.idle ? 'idle out' : 'come in first';
      return show.signIn(c, visitor, note, { words: [], kept, status: 403 });
    }
    if (!isFormToken(options.key, visitor.bound, form.own['_token'])) {
      return again(c, visitor, form, { words: [say('page too old')], kept, status: 403 });
    }
    let reply: Reply | Again;
    try {
      reply = await does(visitor, form);
    } catch (why) {
      const words = why instanceof Fault ? [why.message, why.remedy] : [say('trouble')];
      if (!(why instanceof Fault)) {
        options.log.error({ code: why instanceof Error ? why.name : 'unknown' }, 'a post was not taken');
      }
      return again(c, visitor, form, { words, kept, status: why instanceof Fault ? 422 : 500 });
    }
    if ('words' in reply) return again(c, visitor, form, reply);
    if (!reply.done) {
      return again(c, visitor, form, { words: reply.messages.flatMap(wordsOf), kept, status: 422 });
    }
    const to = afterwards(form);
    to.searchParams.set('said', tickets.keep(visitor.cookie.id, reply));
    return c.redirect(backOf(to), 303);
  };

  app.post('/move/:name', async (c) => {
    const name = c.req.param('name');
    if (!isMoveName(name))
      return show.notice(c, await tools.findVisitor(c), 'not here title', 'not here', 404);
    const shape = moveShapes[name];
    return act(
      c,
      ({ fields }) => ({ kind: 'move', name, fields }),
      async (visitor, form) => {
        const kept = { kind: 'move', name, fields: form.fields } as const;
        if (!mayMove[name].includes(visitor.profile.role))
          return { words: [say('not yours')], kept, status: 403 };
        const fields = known(shape, form.fields);
        if (missing(shape, fields)) return { words: [say('fill in first')], kept, status: 422 };
        return house.move({
          id: updateId(visitor, form),
          who: visitor.profile,
          move: name,
          fields,
          given: form.own['_given'] === 'scribed' ? 'scribed' : 'typed',
        });
      },
    );
  });

  app.post('/look/:name', async (c) => {
    const name = c.req.param('name');
    if (!isLookName(name))
      return show.notice(c, await tools.findVisitor(c), 'not here title', 'not here', 404);
    return act(
      c,
      ({ fields }) => ({ kind: 'look', name, fields }),
      async (visitor, form) => {
        const kept = { kind: 'look', name, fields: form.fields } as const;
        if (!mayLook[name].includes(visitor.profile.role))
          return { words: [say('not yours')], kept, status: 403 };
        return house.look(visitor.profile, name, known(lookShapes[name], form.fields));
      },
    );
  });

  app.post('/command', (c) =>
    act(
      c,
      (form) => ({
        kind: 'command',
        name:
          form.own['_command'] === undefined
            ? 'typed'
            : `${form.own['_command']} ${form.own['_action'] ?? ''}`,
        fields: form.fields,
      }),
      async (visitor, form) =>
        house.command(visitor.profile, updateId(visitor, form), commandOf(form, options.readCommand)),
    ),
  );
}
