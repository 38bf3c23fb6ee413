import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Action, Audience, Block } from '../../../shared/messages.js';

export type FormBlock = Extract<Block, { type: 'form' }>;

/** The look whose answer something stands in, so that it can be taken again. */
export interface LookRef {
  readonly name: string;
  readonly args: Readonly<Record<string, string>>;
}

/** What pressing a button of ours means; it travels in the button's value, so that nothing has to be remembered. */
export type Press =
  | { readonly press: 'act'; readonly action: Action }
  /** Shows a page of a look's answer, counted from 0. */
  | { readonly press: 'page'; readonly look: LookRef; readonly page: number }
  /** Opens a form of a look's answer, counted from 0. */
  | { readonly press: 'fill'; readonly look: LookRef; readonly form: number }
  /** Opens a form that travels along. */
  | { readonly press: 'fill here'; readonly form: FormBlock }
  /** Ties the place to an audience; `sure` once the age is confirmed. */
  | { readonly press: 'bind'; readonly audience: Audience; readonly name: string; readonly sure: boolean };

/** What a form's submission means; it travels in the view's private metadata. `send` is null where a view has no form. */
export interface ViewMemo {
  readonly send:
    | { readonly by: 'form'; readonly action: Action }
    | {
        readonly by: 'command';
        readonly name: string;
        readonly action: string;
        readonly options: Readonly<Record<string, string>>;
      }
    | null;
}

/** Packs a value as text of at most `most` characters, squeezed where it must be; null where even that doesn't fit. */
export function pack(value: unknown, most: number): string | null {
  const text = JSON.stringify(value);
  if (text.length <= most) return text;
  const squeezed = `~${deflateRawSync(text).toString('base64url')}`;
  return squeezed.length <= most ? squeezed : null;
}

/** Reads what `pack` wrote; null for anything else. */
export function unpack(text: string | undefined): unknown {
  if (text === undefined || text === '') return null;
  try {
    const most = 256 * 1024;
    const json = text.startsWith('~')
      ? inflateRawSync(Buffer.from(text.slice(1), 'base64url'), { maxOutputLength: most }).toString('utf8')
      : text;
    return JSON.parse(json) as unknown;
  } catch {
    return null;
  }
}

/** A press as a button's value. */
export function packPress(press: Press, most: number): string | null {
  switch (press.press) {
    case 'act':
      return pack([press.action.kind === 'move' ? 'm' : 'l', press.action.name, press.action.args], most);
    case 'page':
      return pack(['p', press.look.name, press.look.args, press.page], most);
    case 'fill':
      return pack(['f', press.look.name, press.look.args, press.form], most);
    case 'fill here':
      return pack(['d', press.form], most);
    case 'bind':
      return pack(['b', press.audience, press.name, press.sure], most);
    default:
      return press satisfies never;
  }
}

function lookRef(name: unknown, args: unknown): LookRef | null {
  return typeof name === 'string' && typeof args === 'object' && args !== null
    ? { name, args: args as LookRef['args'] }
    : null;
}

/** Reads a button's value; null for what isn't ours. */
export function unpackPress(text: string | undefined): Press | null {
  const value = unpack(text);
  if (!Array.isArray(value)) return null;
  const [letter, a, b, c] = value as readonly unknown[];
  const named = lookRef(a, b);
  switch (letter) {
    case 'm':
    case 'l':
      return named && { press: 'act', action: { kind: letter === 'm' ? 'move' : 'look', ...named } };
    case 'p':
      return named && typeof c === 'number' ? { press: 'page', look: named, page: c } : null;
    case 'f':
      return named && typeof c === 'number' ? { press: 'fill', look: named, form: c } : null;
    case 'd':
      return typeof a === 'object' && a !== null ? { press: 'fill here', form: a as FormBlock } : null;
    case 'b':
      return typeof a === 'object' && a !== null && typeof b === 'string'
        ? { press: 'bind', audience: a as Audience, name: b, sure: c === true }
        : null;
    default:
      return null;
  }
}

/** A view's memo as private metadata; null where it doesn't fit. */
export function packMemo(memo: ViewMemo, most: number): string | null {
  return pack(memo, most);
}

/** Reads a view's memo; an empty one for what isn't ours. */
export function unpackMemo(text: string | undefined): ViewMemo {
  const value = unpack(text);
  return typeof value === 'object' && value !== null && 'send' in value
    ? (value as ViewMemo)
    : { send: null };
}
