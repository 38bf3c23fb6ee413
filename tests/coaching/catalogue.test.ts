import { expect, test } from 'vitest';
import { fill, type Entry } from '../../src/coaching/catalogue.js';
import { registers } from '../../shared/strategies.js';
import { loadCatalogues } from './catalogues.js';
import { isKnown, sentencesIn, wordsIn } from './reading-words.js';

/** At most 40 words, sentences of 12 words at most, a grade or two easier than the pupil reads: common practice, no source. */
const most = { words: 40, sentence: 12 };

/** What is never said to a pupil (the rule of this project). */
const never = /\b(?:copied|copy|copying|wrong|literal|inferential|levels?|segments?|weak|fail(?:ed)?)\b/iu;

/** How many words a slot may hold at its longest; one where it isn't named. A pupil's own quoted post is no sentence of ours. */
const slotWords: Readonly<Record<string, number>> = {};

const longWord = 'Responsibilities';

function slotsOf(words: string): Record<string, string> {
  return Object.fromEntries(
    [...words.matchAll(/\{(\w+)\}/gu)].map(([, slot = '']) => [
      slot,
      Array.from({ length: slotWords[slot] ?? 1 }, () => longWord).join(' '),
    ]),
  );
}

const raw = (entry: Entry) =>
  entry.for === 'staff'
    ? [entry.words]
    : [entry['8-10'], ...(entry['11-14'] === undefined ? [] : [entry['11-14']])];

const catalogues = await loadCatalogues();
const pupil = catalogues.flatMap(({ name, entries }) =>
  Object.entries(entries)
    .filter(([, entry]) => entry.for === 'pupil')
    .map(([key, entry]) => ({ row: `${name}: ${key}`, entry })),
);

test('there are catalogues with sentences for pupils', () => {
  expect(pupil.length).toBeGreaterThan(100);
});

test.each(pupil)('$row is short and simple, its slots filled by the longest words', ({ entry }) => {
  for (const register of registers) {
    const said = fill(entry, slotsOf(raw(entry).join(' ')), register);
    expect(wordsIn(said).length, said).toBeLessThanOrEqual(most.words);
    for (const sentence of sentencesIn(said)) {
      expect(wordsIn(sentence).length, sentence).toBeLessThanOrEqual(most.sentence);
    }
    expect(said).not.toMatch(never);
    const unknown = wordsIn(said).filter((word) => word !== longWord && !isKnown(word));
    expect(unknown, said).toEqual([]);
  }
});

test('the reader knows everyday words by their base form and no others', () => {
  for (const word of ['foxes', 'hurried', 'biggest', 'don’t', 'grown-up', 'sum-up', 'making', 'question']) {
    expect(isKnown(word), word).toBe(true);
  }
  for (const word of ['inference', 'segment', 'evidence', 'demonstrate', 'relevant']) {
    expect(isKnown(word), word).toBe(false);
  }
});

test('every entry says where its words come from', () => {
  for (const { entries } of catalogues) {
    for (const entry of Object.values(entries)) {
      expect(['trade', 'open standard', 'plain words', 'ours']).toContain(entry.from);
    }
  }
});
