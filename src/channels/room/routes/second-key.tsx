import type { Context, Hono } from 'hono';
import type { Asked } from '../../../../shared/channel.js';
import { guesserFrom } from '../http/guesser.js';
import { isFormToken } from '../http/form-token.js';
import { readForm, type PostedForm } from '../http/read-form.js';
import { notYours } from '../pages/look.js';
import { MyPictures, pictureFields, SecondKeyForm, secondKeyTitle } from '../pages/second-key.js';
import { Answer, Trouble } from '../pages/shown.js';
import { openContext, type RenderContext } from '../render/context.js';
import { wordsOf } from '../show.js';
import type { Visitor } from '../visitor.js';
import { say } from '../words.js';
import { secretShape } from './sign-in.js';
import type { RouteTools } from './tools.js';

interface More {
  readonly visitor: Visitor;
  readonly asked: Asked;
  readonly code: string;
  readonly own: boolean;
}

function contextAt(visitor: Visitor, back: string): RenderContext {
  return openContext('key', { token: visitor.token, back, kept: null, scribe: false, headings: 2 });
}

function picked(form: PostedForm): string | null {
  const names = pictureFields.map((field) => form.fields[field] ?? '');
  return names.includes('') ? null : names.join(' ');
}

/** What a form of the door answers to what was asked: undefined where nothing was, null where a picture is missing. */
export function secondOf(form: PostedForm): string | null | undefined {
  if (form.fields['asked'] === 'pictures') return picked(form);
  return form.fields['asked'] === 'passphrase' ? (form.fields['passphrase'] ?? '') : undefined;
}

/** The page that asks for the second key. */
export function askForMore(c: Context, tools: RouteTools, { visitor, asked, code, own }: More): Response {
  const { assets, options, show } = tools;
  const content = (
    <>
      {asked.why === null ? null : <Trouble words={[asked.why]} hasForm={true} title="door shut" />}
      <SecondKeyForm
        asked={asked}
        code={code}
        own={own}
        context={contextAt(visitor, '/')}
        drawn={{ pictures: options.pictures, assets }}
      />
    </>
  );
  return show.plainPage(c, null, say(secondKeyTitle(asked)), content, asked.why === null ? 200 : 422);
}

/** "Tell a grown-up" from the door, and a pupil's own page for their pictures. */
export function addSecondKey(app: Hono, tools: RouteTools): void {
  const { house, options, assets, show, tickets } = tools;

  app.post('/in/grown-up', async (c) => {
    const visitor = await tools.findVisitor(c);
    const form = await readForm(c);
    const code = form.fields['code'] ?? '';
    const kept = { kind: 'move', name: 'tell-grown-up', fields: form.fields } as const;
    if (!isFormToken(options.key, visitor.bound, form.own['_token']))
      return show.signIn(c, visitor, null, { words: [say('page too old')], kept, status: 403 });
    const given = form.own['_update'] ?? '';
    const id = /^[0-9a-f-]{36}$/.test(given) ? given : crypto.randomUUID();
    const told = await house.tellGrownUp(
      code.slice(0, 200),
      guesserFrom(c, options),
      id,
      form.fields['text'] ?? '',
    );
    if ('refused' in told) return show.signIn(c, visitor, null, { words: [told.refused], kept, status: 422 });
    if (!told.done) {
      return show.signIn(c, visitor, null, { words: told.messages.flatMap(wordsOf), kept, status: 422 });
    }
    const content = (
      <>
        <Answer reply={told} context={contextAt(visitor, '/')} />
        <p>
          <a class="button" href={secretShape.test(code) ? `/in/${encodeURIComponent(code)}` : '/'}>
            {say('go on')}
          </a>
        </p>
      </>
    );
    return show.plainPage(c, null, say('grown-up'), content, 200);
  });

  app.get('/pictures', async (c, next) => {
    const visitor = await tools.findVisitor(c);
    if (visitor.kind === 'out') return next();
    if (visitor.profile.role !== 'pupil') {
      const { title, content } = notYours();
      return show.plainPage(c, visitor, title, content, 403);
    }
    const said = c.req.query('said');
    const answer = said === undefined ? null : tickets.find(visitor.cookie.id, said);
    const has = await house.hasSecondKey(visitor.profile);
    const context = contextAt(visitor, '/pictures');
    const content = (
      <>
        {answer === null ? null : <Answer reply={answer} context={context} />}
        <MyPictures has={has} context={context} drawn={{ pictures: options.pictures, assets }} />
      </>
    );
    return show.plainPage(c, visitor, say('pictures mine'), content, 200);
  });

  app.post('/pictures', async (c) => {
    const visitor = await tools.findVisitor(c);
    const form = await readForm(c);
    if (visitor.kind === 'out') {
      const note = visitor.idle ? 'idle out' : 'come in first';
      return show.signIn(c, visitor, note, { words: [], kept: null, status: 403 });
    }
    if (!isFormToken(options.key, visitor.bound, form.own['_token']))
      return show.notice(c, visitor, 'trouble title', 'page too old', 403);
    if (visitor.profile.role !== 'pupil') return show.notice(c, visitor, 'not yours title', 'not yours', 403);
    const names = picked(form);
    const reply = names === null ? null : await house.choosePictures(visitor.profile, names);
    if (!reply?.done) return show.notice(c, visitor, 'door shut', 'pictures three', 422);
    return c.redirect(`/pictures?said=${tickets.keep(visitor.cookie.id, reply)}`, 303);
  });
}
