import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from '../text/analysis.js';
import { cosine, vectorOf, type Vector } from './meaning-vectors.js';
import { keysAgainst, sourceOf } from './sum-up-source.js';

/** A content word of a prediction held against a part of the text. */
export interface HeldWord {
  readonly token: Token;
  readonly key: string;
  /** How much the word tells, more for rare ones. */
  readonly weight: number;
  /** 1 where it stands there, .8 a synonym, less by how near the nearest word is. */
  readonly there: number;
}

const synonymShare = 0.8;
const commonest = 7.5;
/** Cosine from which on nearness counts, and what it counts at most. */
const near = { from: 0.3, most: 0.7 };

const vectors = new WeakMap<Analysis, readonly Vector[]>();

function vectorsOf(analysis: Analysis, lexicon: Lexicon): readonly Vector[] {
  const known = vectors.get(analysis);
  if (known) return known;
  const words = new Set(
    analysis.tokens.filter(({ content, name }) => content && !name).map(({ lower }) => lower),
  );
  const made = [...words].flatMap((word) => vectorOf(word, lexicon) ?? []);
  vectors.set(analysis, made);
  return made;
}

const nearest = new WeakMap<Analysis, Map<string, number>>();

/** How near a word comes to the nearest word of a text, as a cosine; remembered by text. */
function nearestTo(word: string, analysis: Analysis, lexicon: Lexicon): number {
  const held = nearest.get(analysis) ?? new Map<string, number>();
  nearest.set(analysis, held);
  const known = held.get(word);
  if (known !== undefined) return known;
  const vector = vectorOf(word, lexicon);
  let best = 0;
  if (vector) for (const other of vectorsOf(analysis, lexicon)) best = Math.max(best, cosine(vector, other));
  held.set(word, best);
  return best;
}

/** Holds the content words of a prediction against a part of the text, misspelt ones read as its words. */
export function heldAgainst(text: Analysis, part: Analysis, lexicon: Lexicon): readonly HeldWord[] {
  const source = sourceOf(part, lexicon);
  const keys = keysAgainst(text, source, lexicon);
  return text.tokens.flatMap((token, at): readonly HeldWord[] => {
    const key = keys[at] ?? '';
    if (!token.content || (token.name && !source.holders.has(key))) return [];
    const zipf = lexicon.zipf(token.lower);
    const weight = Math.max(0.5, commonest - (zipf === 0 ? commonest - 1 : zipf));
    if (source.holders.has(key)) return [{ token, key, weight, there: 1 }];
    if (source.synonyms.has(key)) return [{ token, key, weight, there: synonymShare }];
    const cos = nearestTo(token.lower, part, lexicon);
    const there = Math.max(0, Math.min(near.most, ((cos - near.from) / (1 - near.from)) * near.most * 2));
    return [{ token, key, weight, there }];
  });
}

/** Weighted mean of how far words are there, 0..1; `none` without words. */
export function shareThere(words: readonly HeldWord[], none = 0): number {
  const all = words.reduce((sum, { weight }) => sum + weight, 0);
  return all === 0 ? none : words.reduce((sum, { weight, there }) => sum + weight * there, 0) / all;
}
