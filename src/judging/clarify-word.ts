import type { Clue } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from '../text/analysis.js';
import { findClue } from '../text/clues.js';
import type { FoundPlace } from './clarify-place.js';
import { hardWord, type HardWord, type WordPlace } from './meaning-features.js';
import { sidesOf, type Sides } from './meaning-polarity.js';

/** A hard word of a segment, made ready to hold meanings against. */
export interface ReadyWord {
  readonly word: HardWord;
  readonly sides: Sides;
  /** What the segment tells of the word itself. */
  readonly clue: Clue | null;
}

const ready = new WeakMap<Analysis, Map<string, ReadyWord>>();

/** The word that carries a found place: its rarest content word, in lower case. */
export function carryingWord(segment: Analysis, found: FoundPlace, lexicon: Lexicon): string {
  const tokens = segment.tokens.slice(found.firstToken, found.endToken);
  const content = tokens.filter((token) => token.content);
  const rarest = (content.length > 0 ? content : tokens).reduce((best, token) =>
    lexicon.zipf(token.lower) < lexicon.zipf(best.lower) ? token : best,
  );
  return rarest.lower.replace(/'s?$/, '');
}

/** Sentences on either side of a word that make its context. */
const around = 1;

/** The hard word at a found place, kept as long as the segment's analysis is. */
export function readyWord(segment: Analysis, found: FoundPlace, lexicon: Lexicon): ReadyWord {
  const word = carryingWord(segment, found, lexicon);
  const sentence = segment.tokens[found.firstToken]?.sentence ?? 0;
  const key = `${word} ${found.start}`;
  const known = ready.get(segment)?.get(key);
  if (known) return known;
  const place: WordPlace = {
    before: segment.text.slice(0, found.start),
    after: segment.text.slice(found.end),
    around: segment.tokens
      .filter((token) => token.content && Math.abs(token.sentence - sentence) <= around)
      .map(({ lower, start }) => ({ word: lower, away: Math.abs(start - found.start) })),
  };
  const made = {
    word: hardWord(word, place, lexicon),
    sides: sidesOf(word, lexicon),
    clue: findClue(word, segment.text, found.start, lexicon),
  };
  const words = ready.get(segment) ?? new Map<string, ReadyWord>();
  ready.set(segment, words.set(key, made));
  return made;
}
