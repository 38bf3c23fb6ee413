import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { edits } from './edits.js';
import { soundKeys } from './sounds.js';
import { isStopWord } from './stop-words.js';
import { stemOf } from './stem.js';

/** The token that a word means; `misspelt` where it isn't written so, `edits` letters apart. */
export interface WordMatch {
  readonly token: Token;
  readonly misspelt: boolean;
  readonly edits: number;
}

/** Share of a word's letters that may differ, and the more that may where both sound alike (tuned on the open half of fixtures/sets/spellings). */
const shareApart = 0.34;
const shareApartAlike = 0.55;
const shortest = 3;

function soundsAlike(a: string, b: string): boolean {
  const keys = soundKeys(a);
  return soundKeys(b).some((key) => keys.includes(key));
}

/** Costs of reading a word as another, or null where they are too far apart. */
function apart(word: string, other: string): number | null {
  if (word.length < shortest || other.length < shortest) return null;
  const count = edits(word, other);
  const share = count / Math.max(word.length, other.length);
  if (share > shareApartAlike) return null;
  const alike = soundsAlike(word, other);
  if (share > (alike ? shareApartAlike : shareApart)) return null;
  return count + (alike ? 0 : 1) + (word[0] === other[0] ? 0 : 0.5);
}

function plainOf(word: string): string {
  return word
    .trim()
    .toLowerCase()
    .replace(/[’‘`´]/g, "'")
    .replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
}

/** Finds the token that a pupil's word means: as written, then with the same base or stem, then the nearest in spelling and sound; null where none is near. */
export function matchWord(word: string, candidates: readonly Token[], lexicon: Lexicon): WordMatch | null {
  const plain = plainOf(word);
  if (plain === '') return null;
  const written = candidates.find(({ lower }) => lower === plain || lower.replace(/'s?$/, '') === plain);
  if (written) return { token: written, misspelt: false, edits: 0 };
  const bases = new Set(lexicon.bases(plain));
  const stem = stemOf(plain);
  const sameBase = candidates.find(
    ({ lower, stem: other }) => other === stem || lexicon.bases(lower).some((base) => bases.has(base)),
  );
  if (sameBase) return { token: sameBase, misspelt: false, edits: 0 };
  // A word that is known and means something else is no misspelling of a near one ("house" for "mouse").
  const known = lexicon.zipf(plain) > 2.5;
  let best: { readonly match: WordMatch; readonly cost: number } | null = null;
  for (const token of candidates) {
    const cost = apart(plain, token.lower);
    if (cost === null || (known && cost > 1)) continue;
    const weighed = cost + (token.content ? 0 : 1);
    if (best && best.cost <= weighed) continue;
    best = { match: { token, misspelt: true, edits: edits(plain, token.lower) }, cost: weighed };
  }
  return best?.match ?? null;
}

/** Content stems of a pupil's post, with the tokens they stand at, misspelt words read as words of `against` or as common words. */
export function mendedStems(
  analysis: Analysis,
  against: Analysis,
  lexicon: Lexicon,
): ReadonlyMap<string, readonly number[]> {
  const stems = new Map<string, number[]>();
  const add = (stem: string, n: number) => {
    const at = stems.get(stem);
    if (at) at.push(n);
    else stems.set(stem, [n]);
  };
  for (const [n, token] of analysis.tokens.entries()) {
    if (!/\p{L}/u.test(token.lower)) continue;
    if (against.stems.has(token.stem) || lexicon.knows(token.lower) || token.name) {
      if (token.content) add(token.stem, n);
      continue;
    }
    const meant = meantWord(token, against, lexicon);
    if (!isStopWord(meant)) add(stemOf(meant), n);
  }
  return stems;
}

/** What a word that no list knows most likely means, in lower case: one of the passage's words, a common word, or itself. */
export function meantWord(token: Token, against: Analysis, lexicon: Lexicon): string {
  const match = matchWord(token.lower, against.tokens, lexicon);
  if (match) return match.token.lower;
  return lexicon.spellings(token.lower)[0] ?? token.lower;
}
