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
/**
 * The formula that gives the grade. On stretches of 170 words cut from articles at three levels its r with the level is .59,
 * Flesch-Kincaid's .49, with nothing fitted on them; three versions come in order in .984, not .968.
 */
const graded: Formula = 'sentence length and word frequency';

function isComplex(token: Token, syllables: number, lexicon: Lexicon): boolean {
  if (syllables < 3 || token.name || token.lower.includes('-')) return false;
  if (syllables > 3 || !/(?:es|ed|ing)$/.test(token.lower)) return true;
  return lexicon.bases(token.lower).every((base) => lexicon.syllables(base) >= 3);
}

/** What a word counts that no list knows, and how much rarer a form is taken to be than its base. */
const unlisted = { zipf: 1.5, form: 0.5 };

function frequencyOf(word: string, lexicon: Lexicon): number {
  const own = lexicon.zipf(word);
  if (own > 0) return own;
  return Math.max(unlisted.zipf, ...lexicon.bases(word).map((base) => lexicon.zipf(base) - unlisted.form));
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
  const frequencies = new Map<string, number>();
  for (const token of tokens) {
    const count = Math.max(1, lexicon.syllables(token.lower));
    syllables += count;
    letters += token.lower.match(/\p{L}/gu)?.length ?? 0;
    characters += token.lower.match(/[\p{L}\p{N}]/gu)?.length ?? 0;
    if (count >= 3) longWords++;
    if (isComplex(token, count, lexicon)) complexWords++;
    const known = token.name || !/\p{L}/u.test(token.lower);
    if (!known && token.content) frequencies.set(token.stem, frequencyOf(token.lower, lexicon));
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
    frequency:
      frequencies.size === 0
        ? null
        : [...frequencies.values()].reduce((sum, zipf) => sum + zipf, 0) / frequencies.size,
  };
}

function rangeOf(values: Readonly<Record<Formula, number>>, counts: Counts): readonly [number, number] {
  const grade = values[graded];
  const grades = [grade, values['flesch-kincaid'], values['gunning fog'], values['coleman-liau'], values.ari];
  if (counts.sentences >= leastSentencesForSmog) grades.push(values.smog);
  if (grade <= boundary) grades.push(values.spache);
  else grades.push(daleChallGrade(values['dale-chall']));
  return [Math.max(0, Math.min(...grades)), Math.max(0, Math.max(...grades))];
}

/** Reads how hard a text is: grade by sentence length and word frequency, range over the formulas that apply, both null under 100 words; formulas null without words. */
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
    grade: enough ? Math.max(0, values[graded]) : null,
    range: enough ? rangeOf(values, counts) : null,
    ease: Math.min(100, Math.max(0, values['flesch reading ease'])),
    formulas: values,
    words,
    sentences,
  };
}
