/** What the readability formulas count of a text. */
export interface Counts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  readonly letters: number;
  /** Letters and digits. */
  readonly characters: number;
  /** Words of three or more syllables. */
  readonly longWords: number;
  /** Long words without names, hyphenated words, and those long by an ending -es, -ed, -ing alone. */
  readonly complexWords: number;
  /** Words not on Dale and Chall's list. */
  readonly difficult: number;
  /** Different words not on Spache's list. */
  readonly unfamiliar: number;
  /** Mean Zipf frequency of the different content words that are no names; null where there is none. */
  readonly frequency: number | null;
}

/**
 * How sentence length and word frequency become a grade: the natural logarithm of the words a sentence less the mean Zipf
 * frequency, each counting once, so that nothing is fitted; the two spread alike on news texts. The line to grades is laid
 * so that the 32 passages of the project's sets get the mean and the spread that Flesch-Kincaid gives them.
 */
const linked = { at: -1.949, grade: 4.17, slope: 4.9 };
/** Where a text has no content word, its words count as the commonest. */
const commonest = 7;

/** Published formulas, by name, over counts with at least one word and sentence. */
export const formulas = {
  /** Flesch: higher is easier, 121.22 at most. */
  'flesch reading ease': (c: Counts) =>
    206.835 - (1.015 * c.words) / c.sentences - (84.6 * c.syllables) / c.words,
  'flesch-kincaid': (c: Counts) => (0.39 * c.words) / c.sentences + (11.8 * c.syllables) / c.words - 15.59,
  'gunning fog': (c: Counts) => 0.4 * (c.words / c.sentences + (100 * c.complexWords) / c.words),
  smog: (c: Counts) => 1.043 * Math.sqrt((30 * c.longWords) / c.sentences) + 3.1291,
  'coleman-liau': (c: Counts) =>
    0.0588 * ((100 * c.letters) / c.words) - 0.296 * ((100 * c.sentences) / c.words) - 15.8,
  ari: (c: Counts) => (4.71 * c.characters) / c.words + (0.5 * c.words) / c.sentences - 21.43,
  /** 1948 constants; a score, no grade: `daleChallGrade` reads it. */
  'dale-chall': (c: Counts) => {
    const share = (100 * c.difficult) / c.words;
    return 0.1579 * share + (0.0496 * c.words) / c.sentences + (share > 5 ? 3.6365 : 0);
  },
  /** 1995: a cloze score, higher is easier. */
  'new dale-chall': (c: Counts) => 64 - (0.95 * 100 * c.difficult) / c.words - (0.69 * c.words) / c.sentences,
  /** Ours: sentence length with word frequency. */
  'sentence length and word frequency': (c: Counts) =>
    linked.grade + linked.slope * (Math.log(c.words / c.sentences) - (c.frequency ?? commonest) - linked.at),
  spache: (c: Counts) => (0.121 * c.words) / c.sentences + (0.082 * 100 * c.unfamiliar) / c.words + 0.659,
} as const;
export type Formula = keyof typeof formulas;

/** A Dale-Chall score as a grade: 4.9 and under is grade 4 and under, each further point two grades (from memory of the published table). */
export function daleChallGrade(score: number): number {
  return score < 5 ? 4 : 5 + 2 * (score - 5);
}
