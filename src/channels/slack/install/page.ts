import { say, type SlackWord } from '../words.js';

const cookieName = 'slack-install';

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** A page of the installation: a heading, a sentence, and a way on where there is one. */
export function installPage(
  words: SlackWord,
  status: number,
  more: {
    readonly href?: string;
    readonly cookie?: string;
    readonly slots?: Readonly<Record<string, string>>;
  } = {},
): Response {
  const title = escaped(say('install title'));
  const way =
    more.href === undefined ? '' : `<p><a href="${escaped(more.href)}">${escaped(say('install go'))}</a></p>`;
  const body = `<!doctype html><html lang="en"><meta charset="utf-8"><title>${title}</title><meta name="viewport" content="width=device-width"><main><h1>${title}</h1><p>${escaped(say(words, more.slots))}</p>${way}</main></html>`;
  return new Response(body, {
    status,
    headers: {
      'content-type': 'text/html; charset=utf-8',
      'cache-control': 'no-store',
      'referrer-policy': 'no-referrer',
      ...(more.cookie === undefined ? {} : { 'set-cookie': more.cookie }),
    },
  });
}

/** The cookie that ties an installation to a browser; an empty proof lets it go. */
export function installCookie(proof: string, path: string, secure: boolean): string {
  const age = proof === '' ? 0 : 600;
  return `${cookieName}=${proof}; Path=${path}; Max-Age=${age}; HttpOnly; SameSite=Lax${secure ? '; Secure' : ''}`;
}

/** The proof in a browser's cookies, empty where there is none. */
export function proofIn(cookies: string | null): string {
  const found = (cookies ?? '').split(/;\s*/u).find((one) => one.startsWith(`${cookieName}=`));
  return found?.slice(cookieName.length + 1) ?? '';
}
