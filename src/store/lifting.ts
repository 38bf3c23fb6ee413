import type { ClassEvent } from '../../shared/events.js';
import type { PersonId } from '../../shared/ids.js';

/** Words found in an event: the n-th said or sealed text of it. */
export interface Lifted {
  readonly kind: 'said' | 'sealed';
  readonly n: number;
  readonly by: PersonId;
  readonly text: string;
}

/** What became of a said text: its words, or why they are gone. */
export type Found = { readonly text: string } | { readonly gone: 'expired' | 'erased' };

function isWords(
  value: unknown,
): value is { readonly kind: 'said' | 'sealed'; readonly by: PersonId; readonly text: string } {
  return (
    typeof value === 'object' &&
    value !== null &&
    'kind' in value &&
    (value.kind === 'said' || value.kind === 'sealed') &&
    'text' in value &&
    typeof value.text === 'string'
  );
}

/**
 * An event as JSON with every said text replaced by `{kind, by, n}` and every sealed one by `{kind, by, ref}`, wherever
 * they stand, and the texts beside it. Texts that are gone already stay as they are.
 */
export function lift(
  event: ClassEvent,
  refOf: (n: number) => string,
): { readonly body: string; readonly words: readonly Lifted[] } {
  const words: Lifted[] = [];
  const body = JSON.stringify(event, (_, value: unknown): unknown => {
    if (!isWords(value)) return value;
    const { kind, by, text } = value;
    const n = words.length;
    words.push({ kind, n, by, text });
    return kind === 'said' ? { kind, by, n } : { kind, by, ref: refOf(n) };
  });
  return { body, words };
}

/** Reads a stored event and puts back what was said; a text that isn't found is erased. Sealed words stay a reference. */
export function putBack(body: string, find: (n: number) => Found | undefined): unknown {
  // Inside a text the quotes are escaped, so that this can only be a reference.
  if (!body.includes('"kind":"said"')) return JSON.parse(body);
  return JSON.parse(body, (_, value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (!('kind' in value) || value.kind !== 'said' || !('n' in value) || !('by' in value)) return value;
    return { kind: 'said', by: value.by, ...(find(Number(value.n)) ?? { gone: 'erased' }) };
  });
}
