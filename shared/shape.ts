import { Fault } from './fault.js';
import type { AlarmId, GroupId, PassageId, PersonId, PostId } from './ids.js';
import type { Range } from './text.js';

/**
 * Shapes of moves and looks as data: flat named fields, so that a form, a button's id, a slash command's options and
 * a line of a file all read into the same move. A name that ends in "?" may be left out.
 *
 * line: one line, 1..200 characters. text: 1..5000. page: 1..262144. number: whole, -1..100000. place: "start-end".
 * flag: yes or no. ids: post ids parted by commas. An array: one of its words.
 */
export type FieldShape =
  | 'line'
  | 'text'
  | 'page'
  | 'number'
  | 'place'
  | 'flag'
  | 'posts'
  | 'person'
  | 'group'
  | 'passage'
  | 'post'
  | 'alarm'
  | readonly string[];
export type Shape = Readonly<Record<string, FieldShape>>;

interface Values {
  line: string;
  text: string;
  page: string;
  number: number;
  place: Range;
  flag: boolean;
  posts: readonly PostId[];
  person: PersonId;
  group: GroupId;
  passage: PassageId;
  post: PostId;
  alarm: AlarmId;
}
type ValueOf<F> = F extends keyof Values ? Values[F] : F extends readonly (infer Word)[] ? Word : never;

/** The value that a shape describes. */
export type Shaped<S extends Shape> = {
  readonly [K in keyof S as K extends `${string}?` ? never : K]: ValueOf<S[K]>;
} & {
  readonly [K in keyof S as K extends `${infer Name}?` ? Name : never]?: ValueOf<S[K]>;
};

/** A union of `{type} & value` over a table of shapes. */
export type UnionOf<T extends Readonly<Record<string, Shape>>> = {
  [K in keyof T & string]: { readonly type: K } & Shaped<T[K]>;
}[keyof T & string];

const limits = { line: 200, text: 5000, page: 262_144 } as const;

/** NUL and lone surrogates cleaned, line ends made LF, ends trimmed: done once, when anything typed is read. */
export function cleanText(raw: string): string {
  return raw.toWellFormed().replaceAll('\u0000', '').replaceAll('\r\n', '\n').replaceAll('\r', '\n').trim();
}

function readText(shape: 'line' | 'text' | 'page', name: string, raw: string): string {
  const clean = cleanText(raw);
  if (clean.length > limits[shape]) {
    throw new Fault(
      'too long',
      `Cannot take ${name}, expected at most ${limits[shape]} characters, got ${clean.length}`,
      'Make it shorter and send it again.',
    );
  }
  return shape === 'line' ? clean.replace(/\s+/gu, ' ') : clean;
}

function unfit(name: string, expected: string, remedy: string): Fault {
  return new Fault('bad input', `Cannot take ${name}, expected ${expected}`, remedy);
}

function readField(name: string, shape: FieldShape, raw: string): unknown {
  if (Array.isArray(shape)) {
    const words = shape as readonly string[];
    if (words.includes(raw)) return raw;
    throw unfit(name, `one of ${words.join(', ')}`, 'Pick one of them.');
  }
  switch (shape as Exclude<FieldShape, readonly string[]>) {
    case 'line':
    case 'text':
    case 'page':
      return readText(shape as 'line' | 'text' | 'page', name, raw);
    case 'number': {
      if (!/^-?\d{1,6}$/.test(raw.trim())) throw unfit(name, 'a whole number', 'Write digits only.');
      return Number(raw);
    }
    case 'place': {
      const found = /^(\d{1,6})-(\d{1,6})$/.exec(raw);
      if (!found || Number(found[1]) >= Number(found[2])) {
        throw unfit(name, 'a place as start-end', 'Tap it in the text again.');
      }
      return { start: Number(found[1]), end: Number(found[2]) };
    }
    case 'flag':
      if (raw === 'yes' || raw === 'no') return raw === 'yes';
      throw unfit(name, 'yes or no', 'Pick one of them.');
    case 'posts':
      return raw
        .split(',')
        .filter((part) => part !== '')
        .map((part) => readId(name, part));
    case 'person':
    case 'group':
    case 'passage':
    case 'post':
    case 'alarm':
      return readId(name, raw);
  }
}

function readId(name: string, raw: string): string {
  // A name that every object has would be found in every table.
  if (/^[a-z0-9-]{1,60}$/.test(raw) && !(raw in {})) return raw;
  throw unfit(name, 'the id of something that is there', 'Go back to the page and pick it again.');
}

/** Reads flat strings by a shape; an empty optional field counts as left out. Throws `Fault`. */
export function readShape<S extends Shape>(
  shape: S,
  raw: Readonly<Record<string, string | undefined>>,
): Shaped<S> {
  const value: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(shape)) {
    const optional = key.endsWith('?');
    const name = optional ? key.slice(0, -1) : key;
    const text = raw[name];
    if (text === undefined || text.trim() === '') {
      if (optional) continue;
      throw unfit(name, 'something', 'Fill it in and send it again.');
    }
    value[name] = readField(name, field, text);
  }
  return value as Shaped<S>;
}
