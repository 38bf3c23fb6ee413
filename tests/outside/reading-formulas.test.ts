import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { analyse } from '../../src/text/analyse.js';
import { countText, readLevel } from '../../src/text/level.js';
import { formulas, type Counts } from '../../src/text/readability.js';

const lexicon = readLexicon();
const none: Counts = {
  words: 0,
  sentences: 0,
  syllables: 0,
  letters: 0,
  characters: 0,
  longWords: 0,
  complexWords: 0,
  difficult: 0,
  unfamiliar: 0,
  frequency: null,
};

/** Published worked values of the standard formulas; the ones marked "calculated" follow from the published formula by arithmetic. */
describe('the formulas give the published values on published counts', () => {
  it.each([
    [
      'flesch reading ease',
      'The cat sat on the mat (published)',
      { words: 6, sentences: 1, syllables: 6 },
      116,
      0,
    ],
    [
      'flesch-kincaid',
      'The cat sat on the mat (calculated)',
      { words: 6, sentences: 1, syllables: 6 },
      -1.45,
      2,
    ],
    [
      'flesch reading ease',
      'the platypus sentence (published)',
      { words: 13, sentences: 1, syllables: 24 },
      37.5,
      1,
    ],
    [
      'flesch-kincaid',
      'the platypus sentence (published)',
      { words: 13, sentences: 1, syllables: 24 },
      11.3,
      1,
    ],
    ['smog', 'the platypus sentence (published)', { sentences: 1, longWords: 4 }, 14.554593, 4],
    [
      'flesch reading ease',
      'one word of one syllable, the largest possible (published)',
      { words: 1, sentences: 1, syllables: 1 },
      121.22,
      2,
    ],
    [
      'flesch-kincaid',
      'one word of one syllable, the least possible (published)',
      { words: 1, sentences: 1, syllables: 1 },
      -3.4,
      2,
    ],
    [
      'coleman-liau',
      "the abstract of Coleman and Liau's paper (published)",
      { words: 119, sentences: 5, letters: 639 },
      14.5,
      1,
    ],
    [
      'gunning fog',
      '100 words, 5 sentences, 10 complex (calculated)',
      { words: 100, sentences: 5, complexWords: 10 },
      12,
      6,
    ],
  ] as const)('%s of %s', (name, _source, counts, value, digits) => {
    expect(formulas[name]({ ...none, ...counts })).toBeCloseTo(value, digits);
  });
});

describe('whole texts', () => {
  it('counts the platypus sentence as published: 13 words, 24 syllables, 4 long words', () => {
    const text = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';
    const counts = countText(analyse(text, lexicon), lexicon);
    expect(counts).toMatchObject({ words: 13, sentences: 1, syllables: 24, longWords: 4 });
    expect(readLevel(text, lexicon)).toMatchObject({ grade: null, range: null });
  });

  // Published: 271 words, 10 sentences, reading ease about 65; counters of syllables drift, so 3 points are allowed.
  it('reads the Gettysburg Address as published', () => {
    const path = new URL('../../fixtures/passages/public-domain/gettysburg-address.txt', import.meta.url);
    const level = readLevel(readFileSync(path, 'utf8'), lexicon);
    expect(level.words).toBe(271);
    expect(level.sentences).toBe(10);
    expect(Math.abs((level.ease ?? 0) - 65)).toBeLessThanOrEqual(3);
  });
});
