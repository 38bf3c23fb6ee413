// Writes data/syllables.json: words that the counting rule gets wrong, with the count of the pronouncing dictionary.
// Run by hand after an update of either package: npx tsx src/lexicon/make-syllables.ts
import { writeFileSync } from 'node:fs';
import { dictionary } from 'cmu-pronouncing-dictionary';
import { syllable } from 'syllable';
import { readFrequencies } from './frequencies.js';

/** Words rarer than this (twelve times in the subtitles) stay with the rule, to keep the file small. */
const leastZipf = Math.log10((12 * 1e9) / 49_719_560) - 1e-9;

function vowelsOf(sounds: string): number {
  return sounds.split(' ').filter((sound) => /\d$/.test(sound)).length;
}

const frequencies = readFrequencies();
const words = new Map<number, string[]>();
for (const word of frequencies.words()) {
  const sounds = dictionary[word];
  if (sounds === undefined || frequencies.zipf(word) < leastZipf || !/^[a-z]{2,}$/.test(word)) continue;
  const second = dictionary[`${word}(2)`];
  const counts = [sounds, ...(second === undefined ? [] : [second])].map(vowelsOf);
  const first = counts[0] ?? 1;
  if (!counts.includes(syllable(word))) words.set(first, [...(words.get(first) ?? []), word]);
}
const sorted = [...words]
  .sort(([a], [b]) => a - b)
  .map(([count, each]) => [count, each.sort().join(' ')] as const);
const file = {
  source:
    'CMU Pronouncing Dictionary by way of cmu-pronouncing-dictionary 3.0.0, words counted otherwise by syllable 5.0.1',
  licence: 'BSD 2-clause, Copyright (C) 1993-2015 Carnegie Mellon University',
  words: Object.fromEntries(sorted),
};
writeFileSync(new URL('data/syllables.json', import.meta.url), `${JSON.stringify(file, null, 1)}\n`);
