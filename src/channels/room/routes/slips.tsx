import type { Hono } from 'hono';
import { notYours } from '../pages/look.js';
import { actionFor } from '../pages/commands.js';
import { SlipForms } from '../pages/slips.js';
import { Answer } from '../pages/shown.js';
import { openContext } from '../render/context.js';
import { say } from '../words.js';
import type { RouteTools } from './tools.js';

/** The page from which slips for a whole group are made and printed. */
export function addSlips(app: Hono, tools: RouteTools): void {
  const { house, options, show, tickets } = tools;

  app.get('/slips', async (c, next) => {
    const visitor = await tools.findVisitor(c);
    if (visitor.kind === 'out') return next();
    if (actionFor(options.slashCommands, visitor.profile.role, 'roster', 'sheet') === null) {
      const { title, content } = notYours();
      return show.plainPage(c, visitor, title, content, 403);
    }
    const said = c.req.query('said');
    const answer = said === undefined ? null : tickets.find(visitor.cookie.id, said);
    const groups = await house.suggest(visitor.profile, 'groups', '');
    const context = openContext('slips', {
      token: visitor.token,
      back: '/slips',
      kept: null,
      scribe: false,
      headings: 2,
    });
    const content = (
      <>
        {answer === null ? null : (
          <>
            <p class="no-print" data-print={say('print')} />
            <Answer reply={answer} context={context} />
          </>
        )}
        <SlipForms groups={groups} context={context} />
      </>
    );
    return show.plainPage(c, visitor, say('slips'), content, 200);
  });
}
