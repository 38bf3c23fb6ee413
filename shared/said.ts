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

/** Words that no person of the class wrote: a question that an adult kept or that the bot drew from the text. */
export interface Seed {
  readonly kind: 'seed';
  readonly text: string;
}

/** The words, or null where they are gone (expired or erased). */
export function wordsOf(what: Said | Seed): string | null {
  return 'text' in what ? what.text : null;
}
