import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doings, registers, relationships, type Doing } from '../../shared/strategies.js';
import { helpFor, questionStems, type HelpStep } from '../../src/coaching/help.js';
import { helpWords } from '../../src/coaching/help-words.js';
import { sharesRun, withGaps } from '../../src/coaching/runs.js';

const segment =
  'Beavers cut down trees with their teeth. They drag the branches to the stream. Beavers build a dam, and a quiet pond grows behind it.';
const gist = 'Beavers build dams out of branches so that a quiet pond grows.';

test('help comes in four steps, each with words of its own', () => {
  for (const doing of doings) {
    const said = ([1, 2, 3, 4] as const).map(
      (step) => helpFor(doing, step, { segment, gist, register: '8-10' }).words,
    );
    expect(new Set(said).size, doing).toBe(4);
  }
});

describe('the first three steps never give the answer away', () => {
  const early = fc.constantFrom<HelpStep[]>(1, 2, 3);
  const anyDoing = fc.constantFrom<Doing[]>(...doings);
  /** Gists of ordinary words, and gists made of the catalogue's own sentences, which are the hardest to keep clear of. */
  const ownSentences = Object.values(helpWords).map((entry) => entry['8-10']);
  const anyGist = fc.oneof(
    fc
      .array(fc.constantFrom(...gist.split(' ')), { minLength: 4, maxLength: 12 })
      .map((words) => words.join(' ')),
    fc.constantFrom(...ownSentences),
    fc
      .tuple(fc.constantFrom(...ownSentences), fc.constantFrom(...ownSentences))
      .map((pair) => pair.join(' ')),
  );
  test('no four words in a row of a gist or of an answer not yet posted', () => {
    fc.assert(
      fc.property(
        anyDoing,
        early,
        anyGist,
        anyGist,
        fc.constantFrom(...registers),
        (doing, step, one, two, register) => {
          const { words } = helpFor(doing, step, { segment, gist: one, answer: two, register });
          expect(words).not.toBe('');
          expect(sharesRun(words, one, 4)).toBe(false);
          expect(sharesRun(words, two, 4)).toBe(false);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('the shared turn', () => {
  test('of a sum-up is half of the adult’s sentence, the rest with gaps', () => {
    const { words, choices } = helpFor('sum-up', 4, { segment, gist, register: '8-10' });
    expect(words).toBe(
      'We start, you fill it in: “Beavers build dams out of branches so that a ____ ____ ____.”',
    );
    expect(choices).toBeUndefined();
  });
  test('of a sum-up without a gist offers three things that the text speaks of most', () => {
    const { choices } = helpFor('sum-up', 4, { segment, gist: null, register: '8-10' });
    expect(choices).toHaveLength(3);
    expect(choices?.[0]).toBe('Beavers');
  });
  test.each(doings.filter((doing) => doing !== 'sum-up'))('of %s offers three choices', (doing) => {
    const { choices } = helpFor(doing, 4, { segment, gist, register: '8-10' });
    expect(choices).toHaveLength(3);
    expect(new Set(choices).size).toBe(3);
  });
});

test('every question-answer relationship has three stems', () => {
  for (const relationship of relationships) {
    const stems = questionStems(relationship, '8-10');
    expect(new Set(stems).size).toBe(3);
    for (const stem of stems) expect(stem).toMatch(/….*\?$/u);
  }
});

test('a sentence of fewer than six words is too short to share', () => {
  expect(withGaps('Beavers build dams.')).toBeNull();
});
