import type { Lexicon } from '../lexicon/lexicon.js';

/** How hard a word is for a reader, 0..1, from its frequency and length. */
export function difficultyOf(
  word: string,
  _segment: string,
  _offset: number | undefined,
  lexicon: Lexicon,
): number {
  const lower = word.toLowerCase().replace(/[’‘]/g, "'");
  const zipf = Math.max(lexicon.zipf(lower), ...lexicon.bases(lower).map((base) => lexicon.zipf(base) - 0.3));
  const raw = 0.42 - 0.055 * zipf + 0.012 * lower.length - (lexicon.familiar(lower) ? 0.06 : 0);
  return Math.min(1, Math.max(0, raw));
}
