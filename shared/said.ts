import type { PersonId } from './ids.js';

/** What a person wrote. The store lifts the text into a table of its own and puts it back on read, or says how it went. */
export type Said =
  | { readonly kind: 'said'; readonly by: PersonId; readonly text: string }
  | { readonly kind: 'said'; readonly by: PersonId; readonly gone: 'expired' | 'erased' };

/** Words of an alarm: written once to the sealed table; a read event holds the reference only. */
export type Sealed =
  | { readonly kind: 'sealed'; readonly by: PersonId; readonly text: string }
  | { readonly kind: 'sealed'; readonly by: PersonId; readonly ref: string };

/** Wraps a text as said by a person. */
export function said(by: PersonId, text: string): Said {
  return { kind: 'said', by, text };
}

/** The words, or null where they are gone. */
export function wordsOf(what: Said): string | null {
  return 'text' in what ? what.text : null;
}
