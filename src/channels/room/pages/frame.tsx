import { raw } from 'hono/html';
import type { JSX } from 'hono/jsx/jsx-runtime';
import { keepingForFamilies } from '../../../../shared/keeping.js';
import type { Assets } from '../assets.js';
import { classesOf, type PageLook } from '../page-look.js';
import { openContext } from '../render/context.js';
import { plain } from '../render/plain.js';
import { written } from '../render/written.js';
import type { SignedIn, Visitor } from '../visitor.js';
import { say } from '../words.js';
import { GrownUp } from './grown-up.js';
import { menuOf } from './menu.js';

export interface FrameProps {
  readonly title: string;
  readonly visitor: Visitor | null;
  readonly look: PageLook;
  readonly assets: Assets;
  readonly path: string;
  readonly back: string;
  readonly idleMinutes: number;
  /** The page's content, already written. */
  readonly content: string;
  /** The newest number of the feed that stands in it. */
  readonly seq: number | undefined;
}

function Menu({ visitor, path }: { readonly visitor: SignedIn; readonly path: string }) {
  return (
    <nav aria-label={say('pages')}>
      <ul class="menu">
        {menuOf(visitor.profile.role).map((one) => (
          <li>
            <a href={one.path} {...(one.path === path ? { 'aria-current': 'page' as const } : {})}>
              {say(one.word)}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function SignOut({ token }: { readonly token: string }) {
  return (
    <form method="post" action="/out" class="choice">
      <input type="hidden" name="_token" value={token} />
      <button type="submit" class="button">
        {say('sign out')}
      </button>
    </form>
  );
}

/** What the script needs to know of the page, in attributes, since nothing stands inline. */
function scriptData({ visitor, idleMinutes, seq }: FrameProps): Readonly<Record<string, string>> {
  const words = {
    ...(seq === undefined ? {} : { 'data-seq': String(seq) }),
    'data-read-to-me': say('read to me'),
    'data-stop-reading': say('stop reading'),
    'data-read-my-words': say('read my words'),
    'data-read-aloud': say('read it aloud'),
  };
  if (visitor?.kind !== 'in') return { ...words, 'data-out': 'yes' };
  return visitor.cookie.own
    ? { ...words, 'data-own': 'yes' }
    : { ...words, 'data-idle-minutes': String(idleMinutes) };
}

function Frame(props: FrameProps): JSX.Element {
  const { title, visitor, look, assets, path, back, content } = props;
  const inside = visitor?.kind === 'in' ? visitor : null;
  const script = assets.href('/assets/live.js');
  return (
    <html lang="en" class={classesOf(look)}>
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="robots" content="noindex" />
        <title>{`${title} - ${say('room name')}`}</title>
        <link rel="icon" type="image/svg+xml" href={assets.href('/assets/icon.svg') ?? ''} />
        <link rel="stylesheet" href={assets.href('/assets/room.css') ?? ''} />
        <link rel="stylesheet" media="print" href={assets.href('/assets/print.css') ?? ''} />
        {script === null ? null : <script type="module" src={script} />}
      </head>
      <body
        class={inside ? `role-${inside.profile.role.replace(' ', '-')}` : 'outside'}
        {...scriptData(props)}
      >
        <a class="skip" href="#page">
          {say('skip to page')}
        </a>
        <header>
          <p class="brand">
            <span class="brand-name">{say('room name')}</span>
            {inside === null ? null : (
              <span class="who">
                <bdi>{plain(inside.profile.nickname)}</bdi>, <bdi>{plain(inside.profile.className)}</bdi>
              </span>
            )}
          </p>
          {inside === null ? null : <Menu visitor={inside} path={path} />}
          {inside?.profile.role === 'pupil' ? (
            <GrownUp
              context={openContext('grown-up', {
                token: inside.token,
                back,
                kept: null,
                scribe: false,
                headings: 2,
              })}
            />
          ) : null}
        </header>
        <main id="page" tabindex={-1}>
          <h1>{title}</h1>
          {raw(content)}
        </main>
        <div id="news" class="unseen" role="status" aria-live="polite" />
        <footer>
          <p>{say('not watched')}</p>
          <p>
            <a href="/what-is-kept">{keepingForFamilies.title}</a>
          </p>
          <div class="footer-row">
            {inside?.profile.role === 'pupil' ? null : (
              <a class="button" href="/page">
                {say('how it looks')}
              </a>
            )}
            {inside === null ? null : <SignOut token={inside.token} />}
          </div>
        </footer>
      </body>
    </html>
  );
}

/** A whole page as text. */
export function frame(props: FrameProps): string {
  return `<!doctype html>${written(<Frame {...props} />)}`;
}
