import PorterStemmer from 'natural/lib/natural/stemmers/porter_stemmer.js';

const mostHeld = 30_000;
const held = new Map<string, string>();

/** Porter's stem of a word in lower case; a possessive ending goes first. "foxes'": fox. */
export function stemOf(lower: string): string {
  const known = held.get(lower);
  if (known !== undefined) return known;
  const stem = PorterStemmer.stem(lower.replace(/'s?$/, ''));
  if (held.size >= mostHeld) held.clear();
  held.set(lower, stem);
  return stem;
}
