import type { PartShares } from './lexicon.js';
import { parts, type WordNet } from './word-net.js';

/** A sense that the tagged texts never show still counts a little. */
const perSense = 0.25;

/** Shares of the parts of speech among a base form's uses. "fish": mostly noun. */
export function partSharesOf(base: string, net: WordNet): PartShares {
  const tagged = net.tagged(base);
  const weights = { noun: 0, verb: 0, adj: 0, adv: 0 };
  let sum = 0;
  for (const part of parts) {
    weights[part] = tagged[part] + perSense * net.senses(base, part).length;
    sum += weights[part];
  }
  if (sum === 0) return weights;
  for (const part of parts) weights[part] /= sum;
  return weights;
}
