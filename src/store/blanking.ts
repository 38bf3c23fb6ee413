import { stringsIn } from './find-texts.js';

/** What stands where an erased person's nickname stood. */
export const nobodysName = 'somebody';

/** Fields of messages that hold words for people; all others hold ids and kinds, and stay. */
const wordFields = new Set([
  'summary',
  'text',
  'by',
  'label',
  'title',
  'words',
  'prompt',
  'hint',
  'alternative',
  'source',
  'submit',
]);

const specials = /[\\^$.*+?()[\]{}|/-]/gu;

/** Puts "somebody" for every whole word that is one of the nicknames, in the same case; longer nicknames first. */
export function withoutNames(text: string, nicknames: readonly string[]): string {
  if (!nicknames.some((name) => text.includes(name))) return text;
  const names = [...nicknames]
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(specials, String.raw`\$&`));
  return text.replace(
    new RegExp(`(?<![\\p{L}\\p{N}])(?:${names.join('|')})(?![\\p{L}\\p{N}])`, 'gu'),
    nobodysName,
  );
}

/** A message, a telling or a reply with the nicknames taken out of all words that are for people. */
export function unnamed<T>(value: T, nicknames: readonly string[]): T {
  const walk = (inner: unknown, field: string): unknown => {
    if (typeof inner === 'string') return wordFields.has(field) ? withoutNames(inner, nicknames) : inner;
    if (Array.isArray(inner)) return inner.map((one: unknown) => walk(one, field));
    if (typeof inner !== 'object' || inner === null) return inner;
    // What is filled in beforehand is words; the value of something to pick is an id.
    const filledIn = 'kind' in inner && (inner.kind === 'line' || inner.kind === 'text');
    return Object.fromEntries(
      Object.entries(inner).map(([name, one]) => [
        name,
        // What a button carries along are ids.
        name === 'args' ? one : walk(one, name === 'value' && filledIn ? 'text' : name),
      ]),
    );
  };
  return walk(value, '') as T;
}

/** Whether a message, a telling or a reply repeats a text, or quotes somebody by one of the nicknames. */
export function repeats(
  value: unknown,
  isText: (string: string) => boolean,
  nicknames: readonly string[],
): boolean {
  const quotes = (inner: unknown): boolean => {
    if (typeof inner !== 'object' || inner === null) return false;
    if ('type' in inner && inner.type === 'quotation' && 'by' in inner) {
      if (nicknames.includes(inner.by as string)) return true;
    }
    return Object.values(inner).some(quotes);
  };
  if (nicknames.length > 0 && quotes(value)) return true;
  for (const string of stringsIn(value)) if (isText(string)) return true;
  return false;
}

/** Reads stored JSON; a text that isn't JSON is words as it stands. */
export function readLoosely(stored: string): unknown {
  try {
    return JSON.parse(stored) as unknown;
  } catch {
    return stored;
  }
}

/** A stored reply without any words: only whether the move was done. */
export function blankReply(stored: string): string {
  const reply = readLoosely(stored);
  const done = typeof reply === 'object' && reply !== null && 'done' in reply && reply.done === true;
  return JSON.stringify({ done, messages: [] });
}
