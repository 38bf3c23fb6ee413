import type { Lexicon } from '../lexicon/lexicon.js';

/** A common beginning of words: its meaning and its share of prefixed words in per cent (White, Sowell & Yanagihara 1989). */
export interface Prefix {
  readonly forms: readonly string[];
  readonly meaning: string;
  readonly share: number;
  /** Many words begin so by chance; the meaning must show that the rest is part of the word. */
  readonly unsure: boolean;
}

export const prefixes: readonly Prefix[] = [
  { forms: ['un'], meaning: 'not', share: 26, unsure: false },
  { forms: ['re'], meaning: 'again', share: 14, unsure: true },
  { forms: ['in', 'im', 'il', 'ir'], meaning: 'not', share: 11, unsure: true },
  { forms: ['dis'], meaning: 'not', share: 7, unsure: true },
  { forms: ['en', 'em'], meaning: 'make', share: 4, unsure: true },
  { forms: ['non'], meaning: 'not', share: 4, unsure: false },
  { forms: ['in', 'im'], meaning: 'in', share: 3, unsure: true },
  { forms: ['over'], meaning: 'too much', share: 3, unsure: false },
  { forms: ['mis'], meaning: 'wrongly', share: 3, unsure: true },
  { forms: ['sub'], meaning: 'under', share: 3, unsure: true },
  { forms: ['pre'], meaning: 'before', share: 3, unsure: true },
  { forms: ['inter'], meaning: 'between', share: 3, unsure: true },
  { forms: ['fore'], meaning: 'before', share: 3, unsure: false },
  { forms: ['de'], meaning: 'away', share: 2, unsure: true },
  { forms: ['trans'], meaning: 'across', share: 2, unsure: true },
  { forms: ['super'], meaning: 'more than', share: 1, unsure: false },
  { forms: ['semi'], meaning: 'half', share: 1, unsure: false },
  { forms: ['anti'], meaning: 'against', share: 1, unsure: false },
  { forms: ['mid'], meaning: 'middle', share: 1, unsure: false },
  { forms: ['under'], meaning: 'below', share: 1, unsure: false },
];

/** A word cut behind its prefix. */
export interface PrefixedWord {
  readonly prefix: string;
  readonly meaning: string;
  readonly rest: string;
}

const shortestRest = 3;
const leastZipf = 2.5;

/** Whether WordNet's meaning of the word speaks of the rest: "unhappy" has it as its opposite, "rewrite" in its gloss. */
function speaksOf(word: string, rest: string, lexicon: Lexicon): boolean {
  const bases = new Set([rest, ...lexicon.bases(rest)]);
  const own = [...lexicon.antonyms(word), ...lexicon.glossWords(word), ...lexicon.synonyms(word)];
  return own.some((each) => bases.has(each) || lexicon.bases(each).some((base) => bases.has(base)));
}

/** Cuts a word, in lower case, behind a prefix that is one; null for "uncle", "reach", "invent", "missile". */
export function prefixedWord(word: string, lexicon: Lexicon): PrefixedWord | null {
  for (const { forms, meaning, unsure } of prefixes) {
    for (const prefix of forms) {
      const rest = word.slice(prefix.length).replace(/^-/, '');
      if (!word.startsWith(prefix) || rest.length < shortestRest) continue;
      const isWord =
        lexicon.senses(rest) > 0 &&
        Math.max(...lexicon.bases(rest).map((base) => lexicon.zipf(base))) >= leastZipf;
      // "union" is no "not ion": short rests stand in many words by chance.
      const doubtful = unsure || rest.length < 4;
      if (isWord && (!doubtful || speaksOf(lexicon.bases(word)[0] ?? word, rest, lexicon))) {
        return { prefix, meaning, rest };
      }
    }
  }
  return null;
}
