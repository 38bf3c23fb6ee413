import type { Action } from '../../../shared/messages.js';
import { limits } from './limits.js';

/**
 * What a button carries within 100 characters.
 *
 * - `act`: a move or a look, whole.
 * - `open`: the form that a look shows. The look is asked again when it is pressed, and the form is found by the hash of
 *   its action; `page` counts the parts of a form that is longer than what one modal holds.
 * - `long`: a move or look that is too long to carry; found by its hash in the answer of the look that showed it.
 * - `page`: a further part of a long answer that is kept for a while.
 * - `bind`: ties this place to a group, once the age was confirmed.
 * - `join`: opens the form for a slip's code.
 *
 * `origin` null, or too long to be carried, means that only what is remembered can help.
 */
export type Pressed =
  | { readonly does: 'act'; readonly action: Action }
  | { readonly does: 'open'; readonly hash: string; readonly page: number; readonly origin: Action | null }
  | { readonly does: 'long'; readonly hash: string; readonly origin: Action | null }
  | { readonly does: 'page'; readonly key: string; readonly page: number }
  | { readonly does: 'bind'; readonly group: string }
  | { readonly does: 'join' };

const marks: readonly (readonly [mark: string, sign: string])[] = [
  ['%', '%0'],
  ['|', '%1'],
  ['=', '%2'],
  ['^', '%3'],
];

function guard(text: string): string {
  return marks.reduce((so, [mark, sign]) => so.replaceAll(mark, sign), text);
}

function unguard(text: string): string {
  return marks.toReversed().reduce((so, [mark, sign]) => so.replaceAll(sign, mark), text);
}

/** An action as text for an id. */
export function writeAction({ kind, name, args }: Action): string {
  const pairs = Object.entries(args).map(([key, value]) => `${guard(key)}=${guard(value)}`);
  return [kind === 'move' ? 'm' : 'l', guard(name), ...pairs].join('|');
}

/** Reads the parts of an action from an id; null where they are none. */
export function readAction([kind, name, ...pairs]: readonly string[]): Action | null {
  if ((kind !== 'm' && kind !== 'l') || name === undefined || name === '') return null;
  const args = pairs.map((pair) => {
    const at = pair.indexOf('=');
    return [unguard(pair.slice(0, at)), unguard(pair.slice(at + 1))] as const;
  });
  return { kind: kind === 'm' ? 'move' : 'look', name: unguard(name), args: Object.fromEntries(args) };
}

/** A short stand-in for an action, the same at every start (FNV-1a over 2 x 32 bits). */
export function hashOf(action: Action): string {
  const text = writeAction({
    ...action,
    args: Object.fromEntries(Object.entries(action.args).toSorted(([a], [b]) => (a < b ? -1 : 1))),
  });
  const run = (seed: number): string => {
    let hash = seed;
    for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
    return (hash >>> 0).toString(36);
  };
  return run(0x811c9dc5) + run(0x050c5d1f);
}

/** Reads a button's id back; null for what is none of ours. What follows "^" only tells buttons and messages apart. */
export function readPressed(id: string): Pressed | null {
  const [head = '', ...rest] = (id.split('^')[0] ?? '').split('|');
  const [first = '', second = ''] = rest;
  switch (head) {
    case 'm':
    case 'l': {
      const action = readAction([head, ...rest]);
      return action && { does: 'act', action };
    }
    case 'o':
      return { does: 'open', hash: first, page: Number(second) || 0, origin: readAction(rest.slice(2)) };
    case 'h':
      return { does: 'long', hash: first, origin: readAction(rest.slice(1)) };
    case 'p':
      return { does: 'page', key: first, page: Number(second) || 0 };
    case 'b':
      return { does: 'bind', group: first };
    case 'j':
      return { does: 'join' };
    default:
      return null;
  }
}

/** Writes a button's id, always within the limit; a `mark` after "^" tells buttons or messages apart. */
export function writePressed(pressed: Pressed, mark = ''): string {
  const tail = mark === '' ? '' : `^${mark}`;
  // Room for a number that keeps two equal buttons of a message apart.
  const room = limits.customId - tail.length - 4;
  const withOrigin = (start: string, origin: Action | null): string => {
    const whole = origin === null ? start : `${start}|${writeAction(origin)}`;
    return (whole.length <= room ? whole : start) + tail;
  };
  switch (pressed.does) {
    case 'act': {
      const whole = writeAction(pressed.action);
      return whole.length <= room ? whole + tail : withOrigin(`h|${hashOf(pressed.action)}`, null);
    }
    case 'open':
      return withOrigin(`o|${pressed.hash}|${pressed.page}`, pressed.origin);
    case 'long':
      return withOrigin(`h|${pressed.hash}`, pressed.origin);
    case 'page':
      return `p|${pressed.key}|${pressed.page}${tail}`;
    case 'bind':
      return `b|${pressed.group}${tail}`;
    case 'join':
      return `j${tail}`;
    default:
      return pressed satisfies never;
  }
}

/** The id of a button for an action that was shown by a look. */
export function writeAct(action: Action, origin: Action | null, mark = ''): string {
  const whole = writePressed({ does: 'act', action }, mark);
  return whole.startsWith('h|') ? writePressed({ does: 'long', hash: hashOf(action), origin }, mark) : whole;
}

/** The part of an id after "^". */
export function markOf(id: string): string {
  return id.split('^')[1] ?? '';
}
