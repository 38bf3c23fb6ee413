import type { Lexicon } from '../lexicon/lexicon.js';
import type { Token } from '../text/analysis.js';
import { matchWord } from '../text/similar.js';
import { stemOf } from '../text/stem.js';
import { sided, type SidedWord } from './meaning-polarity.js';

/** Words so common that sharing one proves nothing of a meaning. */
const tooCommon = 6;
const shareMet = 0.5;

function meansSame(a: string, b: string, lexicon: Lexicon): boolean {
  if (stemOf(a) === stemOf(b)) return true;
  const bases = new Set(lexicon.bases(a));
  return (
    lexicon.bases(b).some((base) => bases.has(base)) ||
    lexicon.synonyms(a).includes(b) ||
    lexicon.bases(b).some((base) => lexicon.synonyms(a).includes(base))
  );
}

function opposed(a: string, b: string, lexicon: Lexicon): boolean {
  return (
    lexicon.bases(b).some((base) => lexicon.antonyms(a).includes(base)) || lexicon.antonyms(a).includes(b)
  );
}

function matches(one: SidedWord, other: SidedWord, lexicon: Lexicon): boolean {
  return one.negated === other.negated
    ? meansSame(one.word, other.word, lexicon)
    : opposed(one.word, other.word, lexicon);
}

function contradicts(one: SidedWord, other: SidedWord, lexicon: Lexicon): boolean {
  return one.negated === other.negated
    ? opposed(one.word, other.word, lexicon)
    : meansSame(one.word, other.word, lexicon);
}

/** A word as it should be written: one of the given words where it comes near, else the likeliest. */
function meant(token: Token, given: readonly Token[], lexicon: Lexicon): string {
  if (!token.content || lexicon.knows(token.lower)) return token.lower;
  return (
    matchWord(token.lower, given, lexicon)?.token.lower ?? lexicon.spellings(token.lower)[0] ?? token.lower
  );
}

/** Whether a pupil's meaning says what a given one says: half of the words of the shorter one met, one of them not a very common word, and nothing turned round. */
export function sameMeaning(meaning: readonly Token[], given: readonly Token[], lexicon: Lexicon): boolean {
  const mine = sided(
    meaning,
    meaning.map((token) => meant(token, given, lexicon)),
  );
  const theirs = sided(given);
  if (mine.length === 0 || theirs.length === 0) return false;
  if (mine.some((one) => theirs.some((other) => contradicts(one, other, lexicon)))) return false;
  if (mine.some(({ negated }) => negated) !== theirs.some(({ negated }) => negated)) {
    // "not deep" for "shallow" is said with a "not" on one side only; it needs a pair of opposites.
    return mine.some((one) =>
      theirs.some((other) => one.negated !== other.negated && opposed(one.word, other.word, lexicon)),
    );
  }
  const met = mine.filter((one) => theirs.some((other) => matches(one, other, lexicon)));
  const telling = met.some(({ word }) => lexicon.zipf(word) < tooCommon);
  return telling && met.length >= shareMet * Math.min(mine.length, theirs.length);
}
