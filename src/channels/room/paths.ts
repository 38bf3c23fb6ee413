import { isLookName, type LookName } from '../../../shared/looks.js';

/** The page of each look; null where a look has too much to say for an address and is asked for by a form. */
export const lookPaths: Readonly<Record<LookName, string | null>> = {
  turn: '/',
  step: '/step',
  'for-you': '/for-you',
  'where-are-we': '/where',
  passages: '/passages',
  preview: '/preview',
  'preview-text': null,
  waiting: '/waiting',
  alarms: '/alarms',
  'alarm-words': '/alarm-words',
  digest: '/digest',
  words: '/words',
  roster: '/roster',
  settings: '/settings',
  'morning-list': '/morning-list',
  'at-the-table': '/at-the-table',
  post: '/post',
  help: '/help',
};

/** The address of a look with its arguments, or null where it is asked for by a form. `step` has its doing in the path. */
export function pathOfLook(name: string, args: Readonly<Record<string, string>>): string | null {
  if (!isLookName(name)) return null;
  const path = lookPaths[name];
  if (path === null) return null;
  const { do: doing, ...others } = args;
  const rest = name === 'step' ? others : args;
  const query = new URLSearchParams(rest).toString();
  return `${name === 'step' ? `${path}/${encodeURIComponent((doing ?? '').toWellFormed())}` : path}${query === '' ? '' : `?${query}`}`;
}

const looksByPath = new Map<string, LookName>();
for (const [name, path] of Object.entries(lookPaths)) {
  if (path !== null && isLookName(name)) looksByPath.set(path, name);
}

/** The look and its fields behind an address of ours, or null. The turn is not among them: it is part of the first page. */
export function lookAtPath(
  url: URL,
): { readonly look: LookName; readonly fields: Record<string, string> } | null {
  const fields: Record<string, string> = {};
  for (const [name, value] of url.searchParams)
    if (/^[a-z]{1,20}$/.test(name) && name !== 'said') fields[name] = value;
  const step = /^\/step\/([a-z-]{1,20})$/.exec(url.pathname);
  if (step) return { look: 'step', fields: { ...fields, do: step[1] ?? '' } };
  const look = looksByPath.get(url.pathname);
  return look === undefined || look === 'turn' || look === 'step' ? null : { look, fields };
}

/** A place to go back to, taken from a form: an address of our own without the reply's mark, or the first page. */
export function ownPath(given: string | undefined): URL {
  const base = 'http://room.invalid';
  if (given === undefined || !given.startsWith('/') || !URL.canParse(given, base)) return new URL('/', base);
  const url = new URL(given, base);
  url.searchParams.delete('said');
  url.hash = '';
  return url.origin === base && url.pathname.length <= 200 && url.search.length <= 1000
    ? url
    : new URL('/', base);
}
