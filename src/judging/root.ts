import type { Lexicon } from '../lexicon/lexicon.js';
import { stemOf } from '../text/stem.js';

const held = new WeakMap<Lexicon, Map<string, string>>();
const mostHeld = 30_000;

/** What forms of one word are compared by: the stem, and of an irregular form the stem of its base ("forgave" as "forgive"). */
export function rootOf(lower: string, lexicon: Lexicon): string {
  const roots = held.get(lexicon) ?? new Map<string, string>();
  held.set(lexicon, roots);
  const known = roots.get(lower);
  if (known !== undefined) return known;
  const stem = stemOf(lower);
  const plain = lower.replace(/'s?$/, '');
  const others = lexicon.bases(plain).filter((base) => base !== plain);
  const regular = others.length === 0 || others.some((base) => stemOf(base) === stem);
  const root = regular ? stem : stemOf(others[0]!);
  if (roots.size >= mostHeld) roots.clear();
  roots.set(lower, root);
  return root;
}
