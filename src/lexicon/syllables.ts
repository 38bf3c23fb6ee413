import { syllable } from 'syllable';
import exceptions from './data/syllables.json' with { type: 'json' };

const counted = new Map<string, number>();
for (const [count, words] of Object.entries(exceptions.words)) {
  for (const word of words.split(' ')) counted.set(word, Number(count));
}

/** Syllables of a word, at least 1 where it holds a letter; counted by rule, with exceptions taken from a pronouncing dictionary. */
export function countSyllables(word: string): number {
  if (!/\p{L}/u.test(word)) return 0;
  const known = counted.get(word) ?? counted.get(word.replace(/'s$|'$/, ''));
  if (known !== undefined) return known;
  let sum = 0;
  for (const piece of word.split('-')) sum += counted.get(piece) ?? syllable(piece);
  return Math.max(1, sum);
}
