import type { LevelReading } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { analyse } from './analyse.js';
import { isHeading } from './headings.js';
import { daleChallGrade, formulas, type Counts, type Formula } from './readability.js';

/** Under this many words no grade is given (from memory of common cautions). */
const leastWords = 100;
/** SMOG was made for 30 sentences or more; Spache serves to grade 4, Dale-Chall from there (from memory). */
const leastSentencesForSmog = 30;
const boundary = 4;

function isComplex(token: Token, syllables: number, lexicon: Lexicon): boolean {
  if (syllables < 3 || token.name || token.lower.includes('-')) return false;
  if (syllables > 3 || !/(?:es|ed|ing)$/.test(token.lower)) return true;
  return lexicon.bases(token.lower).every((base) => lexicon.syllables(base) >= 3);
}

/** Counts a text for the formulas; headings are left out, since they are no sentences. */
export function countText(analysis: Analysis, lexicon: Lexicon): Counts {
  const headings = new Set(
    analysis.sentences.flatMap((range, n) => (isHeading(analysis.text, range) ? [n] : [])),
  );
  const tokens = analysis.tokens.filter(({ sentence }) => !headings.has(sentence));
  let syllables = 0;
  let letters = 0;
  let characters = 0;
  let longWords = 0;
  let complexWords = 0;
  let difficult = 0;
  const unfamiliar = new Set<string>();
  for (const token of tokens) {
    const count = Math.max(1, lexicon.syllables(token.lower));
    syllables += count;
    letters += token.lower.match(/\p{L}/gu)?.length ?? 0;
    characters += token.lower.match(/[\p{L}\p{N}]/gu)?.length ?? 0;
    if (count >= 3) longWords++;
    if (isComplex(token, count, lexicon)) complexWords++;
    const known = token.name || !/\p{L}/u.test(token.lower);
    if (!known && !lexicon.familiar(token.lower)) difficult++;
    if (!known && !lexicon.familiarEarly(token.lower))
      unfamiliar.add(lexicon.bases(token.lower)[0] ?? token.lower);
  }
  const sentences = analysis.sentences.length - headings.size;
  return {
    words: tokens.length,
    sentences,
    syllables,
    letters,
    characters,
    longWords,
    complexWords,
    difficult,
    unfamiliar: unfamiliar.size,
  };
}

function rangeOf(values: Readonly<Record<Formula, number>>, counts: Counts): readonly [number, number] {
  const grade = values['flesch-kincaid'];
  const grades = [grade, values['gunning fog'], values['coleman-liau'], values.ari];
  if (counts.sentences >= leastSentencesForSmog) grades.push(values.smog);
  if (grade <= boundary) grades.push(values.spache);
  else grades.push(daleChallGrade(values['dale-chall']));
  return [Math.max(0, Math.min(...grades)), Math.max(0, Math.max(...grades))];
}

/** Reads how hard a text is: grade by Flesch-Kincaid, range over the formulas that apply, both null under 100 words; formulas null without words. */
export function readLevel(text: string, lexicon: Lexicon): LevelReading {
  const counts = countText(analyse(text, lexicon), lexicon);
  const { words, sentences } = counts;
  const names = Object.keys(formulas) as Formula[];
  if (words === 0 || sentences === 0) {
    const none = Object.fromEntries(names.map((name) => [name, null]));
    return { grade: null, range: null, ease: null, formulas: none, words, sentences };
  }
  const values = Object.fromEntries(names.map((name) => [name, formulas[name](counts)])) as Record<
    Formula,
    number
  >;
  const enough = words >= leastWords;
  return {
    grade: enough ? Math.max(0, values['flesch-kincaid']) : null,
    range: enough ? rangeOf(values, counts) : null,
    ease: Math.min(100, Math.max(0, values['flesch reading ease'])),
    formulas: values,
    words,
    sentences,
  };
}
