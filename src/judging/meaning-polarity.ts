import type { Lexicon } from '../lexicon/lexicon.js';
import type { Token } from '../text/analysis.js';
import { stemOf } from '../text/stem.js';
import { among } from './meaning-words.js';

/** Whether a meaning goes with a word, against it, or can't be told: `against` is never "fits". */
export type Side = 'with' | 'against' | 'unknown';

/** Words that turn round what follows. */
export const negators: ReadonlySet<string> = new Set(
  (
    "not no never none nobody nothing without cannot can't cant don't dont doesn't doesnt didn't didnt isn't isnt ain't " +
    "aren't arent wasn't wasnt weren't werent won't wont wouldn't wouldnt couldn't couldnt shouldn't shouldnt hasn't " +
    "hasnt haven't havent hadn't hadnt hardly barely lacking lack lacks stop stopped stops nor neither less opposite"
  ).split(' '),
);
/** A negation ends at a break of the sentence or one of these. */
const ends = new Set(['but', 'so', 'because', 'and', 'or', 'instead', 'just']);

/** A word of a meaning, and whether a "not" stands before it. */
export interface SidedWord {
  readonly word: string;
  readonly negated: boolean;
}

/** The content words of a meaning with the negation that each stands under; "or" and "and" keep it ("not special or hard to find"). `spelt` are the tokens as they should be written. */
export function sided(tokens: readonly Token[], spelt?: readonly string[]): readonly SidedWord[] {
  const words: SidedWord[] = [];
  let negated = false;
  let last: Token | undefined;
  for (const [at, token] of tokens.entries()) {
    if (last && token.sentence !== last.sentence) negated = false;
    if (ends.has(token.lower) && !['or', 'and'].includes(token.lower)) negated = false;
    if (negators.has(token.lower)) negated = !negated;
    else if (token.content) words.push({ word: spelt?.[at] ?? token.lower, negated });
    last = token;
  }
  return words;
}

/** Words that say the contrary of a word: its opposites, what means the same as they, and the opposites of what means the same as it. */
export interface Sides {
  readonly same: ReadonlySet<string>;
  readonly contrary: ReadonlySet<string>;
  /** Its opposites alone. */
  readonly opposites: ReadonlySet<string>;
}

const looked = 12;

/** Gathers both sides of a word. */
export function sidesOf(word: string, lexicon: Lexicon): Sides {
  const own = [...lexicon.bases(word), word];
  const synonyms = own.flatMap((base) => lexicon.synonyms(base)).slice(0, looked);
  const opposites = own.flatMap((base) => lexicon.antonyms(base));
  const contrary = new Set([
    ...opposites,
    ...opposites.slice(0, looked).flatMap((one) => lexicon.synonyms(one)),
    ...synonyms.flatMap((one) => lexicon.antonyms(one)),
  ]);
  const same = new Set([...own, ...synonyms]);
  for (const one of same) contrary.delete(one);
  return { same, contrary, opposites: new Set(opposites) };
}

/** "dirt" and "dirty", "noise" and "noisy": one stem begins the other, four letters at least. */
export function kindred(a: string, b: string): boolean {
  const [one, other] = [stemOf(a), stemOf(b)];
  const length = Math.min(one.length, other.length) - (Math.min(one.length, other.length) > 4 ? 1 : 0);
  return length >= 4 && one.slice(0, length) === other.slice(0, length);
}

function inSide(word: string, side: ReadonlySet<string>, lexicon: Lexicon): boolean {
  return among(word, side, lexicon) || [...side].some((one) => kindred(word, one));
}

/** Which side a meaning takes; one word against it is enough, since praise of the wrong meaning is the worst error. */
export function sideOf(meaning: readonly SidedWord[], sides: Sides, lexicon: Lexicon): Side {
  let supports = false;
  for (const { word, negated } of meaning) {
    const same = inSide(word, sides.same, lexicon);
    const contrary = !same && inSide(word, sides.contrary, lexicon);
    if ((same && negated) || (contrary && !negated)) return 'against';
    if (same || contrary) supports = true;
  }
  return supports ? 'with' : 'unknown';
}
