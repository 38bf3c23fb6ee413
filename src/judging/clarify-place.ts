import type { Range } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from '../text/analysis.js';
import { matchWord } from '../text/similar.js';

/** Where the hard place stands in the segment. */
export interface FoundPlace extends Range {
  readonly misspelt: boolean;
  /** Tokens of the segment, end exclusive. */
  readonly firstToken: number;
  readonly endToken: number;
}

function place(tokens: readonly Token[], first: number, end: number, misspelt: boolean): FoundPlace | null {
  const from = tokens[first];
  const to = tokens[end - 1];
  return from && to ? { start: from.start, end: to.end, misspelt, firstToken: first, endToken: end } : null;
}

/** How far a token lies from an offset, 0 within it. */
function away({ start, end }: Range, offset: number | undefined): number {
  if (offset === undefined) return 0;
  return offset < start ? start - offset : offset >= end ? offset - end + 1 : 0;
}

/** Candidates nearest to the offset first, in their order where there is none. */
function nearestFirst(tokens: readonly Token[], offset: number | undefined): readonly Token[] {
  return offset === undefined ? tokens : [...tokens].sort((a, b) => away(a, offset) - away(b, offset));
}

function oneWord(
  word: string,
  segment: Analysis,
  offset: number | undefined,
  lexicon: Lexicon,
): FoundPlace | null {
  const { tokens } = segment;
  // A tap on a place says what is meant, however the word is spelt beside it.
  const tapped = offset === undefined ? [] : tokens.filter((token) => away(token, offset) === 0);
  const match =
    (tapped.length > 0 ? matchWord(word, tapped, lexicon) : null) ??
    matchWord(word, nearestFirst(tokens, offset), lexicon);
  if (!match) return null;
  const at = tokens.indexOf(match.token);
  return place(tokens, at, at + 1, match.misspelt);
}

/** A phrase: the window of as many words that matches best, at least two thirds of its words. */
function phrase(
  words: readonly Token[],
  segment: Analysis,
  offset: number | undefined,
  lexicon: Lexicon,
): FoundPlace | null {
  const { tokens } = segment;
  let best: { readonly at: number; readonly hits: number; readonly misspelt: boolean } | null = null;
  for (let at = 0; at + words.length <= tokens.length; at++) {
    let hits = 0;
    let misspelt = false;
    words.forEach((word, n) => {
      const token = tokens[at + n];
      if (!token) return;
      if (token.lower === word.lower) hits++;
      else if (token.lower[0] === word.lower[0] || token.content) {
        const match = matchWord(word.lower, [token], lexicon);
        if (match) hits++;
        misspelt ||= match === null || match.misspelt;
      } else misspelt = true;
    });
    const nearer =
      best !== null &&
      hits === best.hits &&
      away(tokens[at] ?? { start: 0, end: 0 }, offset) <
        away(tokens[best.at] ?? { start: 0, end: 0 }, offset);
    if (hits * 3 >= words.length * 2 && (best === null || hits > best.hits || nearer)) {
      best = { at, hits, misspelt };
    }
  }
  return best === null ? null : place(tokens, best.at, best.at + words.length, best.misspelt);
}

/** Finds the word or phrase that a pupil names, misspelt or not, nearest to the offset where one is given; null where the segment has nothing like it. */
export function findPlace(
  named: Analysis,
  segment: Analysis,
  offset: number | undefined,
  lexicon: Lexicon,
): FoundPlace | null {
  const words = named.tokens;
  const only = words[0];
  if (words.length === 0 || !only) {
    const at = offset === undefined ? -1 : segment.tokens.findIndex((token) => away(token, offset) === 0);
    return at < 0 ? null : place(segment.tokens, at, at + 1, false);
  }
  return words.length === 1
    ? oneWord(only.lower, segment, offset, lexicon)
    : phrase(words, segment, offset, lexicon);
}
