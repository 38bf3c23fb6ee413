import type { HardWord } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { namesOf } from './names-of.js';
import type { Analysis, Token } from './analysis.js';
import { findClueIn } from './clues.js';
import { difficultyOf } from './difficulty.js';

const mostWords = 6;
/** Difficulty from which a word is hard for readers of a grade. Ours: a setting. */
const hardFrom: readonly { readonly upTo: number; readonly difficulty: number }[] = [
  { upTo: 4, difficulty: 0.24 },
  { upTo: 6, difficulty: 0.27 },
  { upTo: 8, difficulty: 0.3 },
];

/** How hard a word is for a reader, 0..1; the segment and the offset (UTF-16) tell where it stands. */
export function hardWordDifficulty(
  word: string,
  segment: string,
  offset: number | undefined,
  lexicon: Lexicon,
): number {
  return difficultyOf(word, segment, offset, lexicon);
}

const contraction = /(?:n't|'(?:ll|re|ve|d|m))$/;
/** A word on the list of words that most fourth graders know is hard for grades 3 and 4 only from here on. */
const familiarFrom = 0.3;

/** The least difficulty at which a token counts as hard, or null where it never does. */
function floorFor(token: Token, names: ReadonlySet<string>, grade: number, lexicon: Lexicon): number | null {
  const { lower, content, name } = token;
  if (!content || lower.length < 4 || /\d/.test(lower) || contraction.test(lower)) return null;
  if (name || (/^\p{Lu}/u.test(token.text) && names.has(lower.replace(/'s?$/, '')))) return null;
  const floor = (hardFrom.find(({ upTo }) => grade <= upTo) ?? hardFrom.at(-1))?.difficulty ?? familiarFrom;
  if (!lexicon.familiar(lower)) return floor;
  return grade <= 4 && !lexicon.familiarEarly(lower) ? Math.max(floor, familiarFrom) : null;
}

/** Words of a segment that a reader of the grade may stumble on, in the order of the text (names of the whole passage left out), each base form once and with its clue. */
export function hardWords(
  segment: Analysis,
  grade: number,
  lexicon: Lexicon,
  passage: Analysis = segment,
): readonly HardWord[] {
  const names = namesOf(passage);
  const found = new Map<string, HardWord>();
  for (const token of segment.tokens) {
    const floor = floorFor(token, names, grade, lexicon);
    if (floor === null) continue;
    const base = lexicon.bases(token.lower)[0] ?? token.lower;
    if (found.has(base)) continue;
    const word = token.text.replace(/['’]s?$/, '');
    const difficulty = hardWordDifficulty(word, segment.text, token.start, lexicon);
    if (difficulty < floor) continue;
    const clue = findClueIn(word, segment, token.start, lexicon);
    found.set(base, { word, start: token.start, difficulty, clue });
  }
  return [...found.values()]
    .sort((a, b) => b.difficulty - a.difficulty)
    .slice(0, mostWords)
    .sort((a, b) => a.start - b.start);
}
