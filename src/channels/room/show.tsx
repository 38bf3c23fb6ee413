import type { Context } from 'hono';
import type { JSX } from 'hono/jsx/jsx-runtime';
import type { Reply } from '../../../shared/channel.js';
import type { Message } from '../../../shared/messages.js';
import type { Assets } from './assets.js';
import type { Jar } from './http/cookies.js';
import { readPageLook } from './page-look.js';
import { findPage } from './pages/find-page.js';
import { frame } from './pages/frame.js';
import { backOf, type PageTools } from './pages/page.js';
import { CodeForm } from './pages/sign-in.js';
import { Answer, asksMore, Leftover, Trouble } from './pages/shown.js';
import { openContext, type Kept } from './render/context.js';
import { written } from './render/written.js';
import type { SignedIn, Visitor } from './visitor.js';
import { say, type RoomWord } from './words.js';

type Status = 200 | 400 | 403 | 404 | 405 | 408 | 413 | 422 | 500;

/** Why a page is shown again: what went wrong, and what was typed. */
export interface Again {
  readonly words: readonly string[];
  readonly kept: Kept | null;
  readonly status: Status;
}

/** Writes whole pages. */
export interface Show {
  /** A page with nothing but its content. */
  plainPage(
    c: Context,
    visitor: Visitor | null,
    title: string,
    content: JSX.Element,
    status: Status,
  ): Response;
  /** A short page that says what is the matter. */
  notice(c: Context, visitor: Visitor | null, title: RoomWord, words: RoomWord, status: Status): Response;
  signIn(c: Context, visitor: Visitor, note: RoomWord | null, again?: Again): Response;
  /** The page behind an address, with the answer to what was just done or with what went wrong; null where there is no such page. */
  page(
    c: Context,
    visitor: SignedIn,
    url: URL,
    answer: Reply | null,
    again: Again | null,
  ): Promise<Response | null>;
  /** What went wrong and what was typed, where there is no page to go back to. */
  stuck(c: Context, visitor: SignedIn, again: Again): Response;
  /** An answer on a page of its own. */
  answer(c: Context, visitor: SignedIn, back: URL, reply: Reply): Response;
}

/** What people read of a message where there is no place for its blocks. */
export function wordsOf(message: Message): readonly string[] {
  const prose = message.blocks.flatMap((block) =>
    block.type === 'prose' ? [block.prose.map(({ text }) => text).join('')] : [],
  );
  return prose.length > 0 ? prose : [message.summary];
}

/** Words that were typed, longest field first; ids and picks are no words. */
function typedWords(kept: Kept | null): readonly string[] {
  if (kept === null) return [];
  return ['text', 'note', 'meaning', 'line', 'word', 'nickname', 'title', 'value', 'name']
    .map((name) => kept.fields[name] ?? '')
    .filter((text) => text.trim() !== '');
}

function BackHome() {
  return (
    <p>
      <a class="button" href="/">
        {say('back to my page')}
      </a>
    </p>
  );
}

/** Opens the writer of pages over what they are made from. */
export function openShow(tools: PageTools, assets: Assets, jar: Jar): Show {
  const write = (
    c: Context,
    visitor: Visitor | null,
    title: string,
    content: string,
    status: Status,
    back: string,
    seq?: number,
  ): Response => {
    const page = frame({
      title,
      visitor,
      look: readPageLook(jar.readPage(c)),
      assets,
      path: new URL(c.req.url).pathname,
      back,
      idleMinutes: tools.options.idleMinutes ?? 30,
      content,
      seq,
    });
    c.header('Cache-Control', 'no-store');
    return c.html(page, status);
  };

  const contextOf = (visitor: Visitor, back: string) =>
    openContext('answer', { token: visitor.token, back, kept: null, scribe: false, headings: 2 });

  const show: Show = {
    plainPage(c, visitor, title, content, status) {
      return write(c, visitor, title, written(content), status, '/');
    },
    notice(c, visitor, title, words, status) {
      const content = (
        <>
          <p>{say(words)}</p>
          <BackHome />
        </>
      );
      return write(c, visitor, say(title), written(content), status, '/');
    },
    signIn(c, visitor, note, again) {
      const context = openContext('in', {
        token: visitor.token,
        back: '/',
        kept: null,
        scribe: false,
        headings: 2,
      });
      const texts = again?.kept?.name === 'in' ? [] : typedWords(again?.kept ?? null);
      const content = (
        <>
          {again && again.words.length > 0 ? (
            <Trouble
              words={again.words}
              hasForm={texts.length === 0}
              title={again.kept?.name === 'in' ? 'door shut' : 'look at this'}
            />
          ) : null}
          <CodeForm
            context={context}
            note={note}
            code={again?.kept?.name === 'in' ? (again.kept.fields['code'] ?? '') : ''}
          />
          {texts.length > 0 ? <Leftover texts={texts} /> : null}
        </>
      );
      return write(c, visitor, say('come in title'), written(content), again?.status ?? 200, '/');
    },
    async page(c, visitor, url, answer, again) {
      let found = false;
      const kept = again?.kept ?? null;
      const page = await findPage({ tools, visitor, url, kept, answer, found: () => (found = true) });
      if (page === null) return null;
      if (page.instead !== undefined) return c.redirect(page.instead, 303);
      const content = written(<>{page.content}</>);
      const texts = found ? [] : typedWords(kept);
      const above = written(
        <>
          {again ? <Trouble words={again.words} hasForm={found || texts.length > 0} /> : null}
          {texts.length > 0 ? <Leftover texts={texts} /> : null}
          {answer ? <Answer reply={answer} context={contextOf(visitor, backOf(url))} /> : null}
        </>,
      );
      return write(
        c,
        visitor,
        page.title,
        above + content,
        again?.status ?? page.status ?? 200,
        backOf(url),
        page.seq,
      );
    },
    stuck(c, visitor, { words, kept, status }) {
      const texts = typedWords(kept);
      const content = (
        <>
          <Trouble words={words} hasForm={texts.length > 0} />
          {texts.length > 0 ? <Leftover texts={texts} /> : null}
          <BackHome />
        </>
      );
      return write(c, visitor, say('trouble title'), written(content), status, '/');
    },
    answer(c, visitor, back, reply) {
      const title = visitor.profile.role === 'pupil' ? say('step title') : say('answer');
      const content = (
        <>
          <Answer reply={reply} context={contextOf(visitor, backOf(back))} />
          <p>
            <a class="button" href={backOf(back)}>
              {say('back to my page')}
            </a>
          </p>
        </>
      );
      return write(c, visitor, title, written(content), 200, backOf(back));
    },
  };
  return show;
}

/** Whether a pupil sees an answer on a page of its own: it asks for something more, so nothing else is beside it. */
export function standsAlone(visitor: SignedIn, reply: Reply): boolean {
  return visitor.profile.role === 'pupil' && asksMore(reply);
}
