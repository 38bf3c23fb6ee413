import type { Analysis } from './analysis.js';

const known = new WeakMap<Analysis, ReadonlySet<string>>();

/** Names of a text in lower case, without the possessive ending; found once a text, since every part of a passage asks for those of the whole. */
export function namesOf(text: Analysis): ReadonlySet<string> {
  const before = known.get(text);
  if (before) return before;
  const names = new Set(text.tokens.filter(({ name }) => name).map(({ lower }) => lower.replace(/'s?$/, '')));
  known.set(text, names);
  return names;
}
