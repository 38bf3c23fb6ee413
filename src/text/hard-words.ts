import type { HardWord } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { findClue } from './clues.js';
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

function mayBeHard(token: Token, lexicon: Lexicon, grade: number): boolean {
  if (!token.content || token.name || token.lower.length < 4 || /\d/.test(token.lower)) return false;
  return !(grade <= 4
    ? lexicon.familiar(token.lower) && lexicon.zipf(token.lower) > 3.5
    : lexicon.familiar(token.lower));
}

/** Words of a segment that a reader of the grade may stumble on, in the order of the text, each base form once and with its clue. */
export function hardWords(segment: Analysis, grade: number, lexicon: Lexicon): readonly HardWord[] {
  const floor = (hardFrom.find(({ upTo }) => grade <= upTo) ?? hardFrom.at(-1))?.difficulty ?? 0.3;
  const found = new Map<string, HardWord>();
  for (const token of segment.tokens) {
    if (!mayBeHard(token, lexicon, grade)) continue;
    const base = lexicon.bases(token.lower)[0] ?? token.lower;
    if (found.has(base)) continue;
    const difficulty = hardWordDifficulty(token.text, segment.text, token.start, lexicon);
    if (difficulty < floor) continue;
    const clue = findClue(token.text, segment.text, token.start, lexicon);
    found.set(base, { word: token.text, start: token.start, difficulty, clue });
  }
  return [...found.values()]
    .sort((a, b) => b.difficulty - a.difficulty)
    .slice(0, mostWords)
    .sort((a, b) => a.start - b.start);
}
