import type { KeyTerm } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';

const mostTerms = 8;
/** Weights under this share of the heaviest are noise. Ours, by eye on the open half of fixtures/sets/topics. */
const leastWeight = 0.3;
/** Part of a word's weight that doesn't hang on its being a noun, and what is left to a name. */
const withoutNoun = 0.35;
const nameShare = 0.6;
/** Zipf frequency of the commonest words; rarity is how far below it a word stays. */
const commonest = 7.5;
const passageShare = 0.15;

interface Group {
  readonly base: string;
  readonly forms: Map<string, number>;
  count: number;
  readonly name: boolean;
}

/** The base form by which tokens of one word are counted together. */
function baseOf(token: Token, lexicon: Lexicon): string {
  return token.name ? token.lower.replace(/'s?$/, '') : (lexicon.bases(token.lower)[0] ?? token.lower);
}

function groupTokens(tokens: readonly Token[], lexicon: Lexicon): ReadonlyMap<string, Group> {
  const groups = new Map<string, Group>();
  for (const token of tokens) {
    if (!token.content) continue;
    const base = baseOf(token, lexicon);
    const group = groups.get(base) ?? { base, forms: new Map<string, number>(), count: 0, name: token.name };
    const form = token.name ? token.text.replace(/['’]s?$/, '') : token.lower.replace(/'s?$/, '');
    group.forms.set(form, (group.forms.get(form) ?? 0) + 1);
    group.count++;
    groups.set(base, group);
  }
  return groups;
}

function weigh(group: Group, inPassage: number, lexicon: Lexicon): number {
  const noun = lexicon.partShares(group.base).noun;
  const rarity = Math.max(0.5, commonest - lexicon.zipf(group.base)) / commonest;
  // The tenth time a word comes adds less than the second.
  const often = Math.sqrt(group.count) + passageShare * Math.log2(1 + Math.max(0, inPassage - group.count));
  return often * rarity * (group.name ? nameShare : withoutNoun + (1 - withoutNoun) * noun);
}

/** Terms that carry a segment, heaviest first: base-form count x rarity x noun, names lowered; words that run through the whole passage count more where it is given. */
export function keyTerms(segment: Analysis, lexicon: Lexicon, passage?: Analysis): readonly KeyTerm[] {
  const groups = groupTokens(segment.tokens, lexicon);
  const all = passage ? groupTokens(passage.tokens, lexicon) : groups;
  const weighed = [...groups.values()]
    .map((group) => ({
      term: [...group.forms].reduce((a, b) => (b[1] > a[1] ? b : a))[0],
      weight: weigh(group, all.get(group.base)?.count ?? group.count, lexicon),
    }))
    .sort((a, b) => b.weight - a.weight);
  const heaviest = weighed[0]?.weight ?? 1;
  return weighed
    .map(({ term, weight }) => ({ term, weight: weight / heaviest }))
    .filter(({ weight }) => weight >= leastWeight)
    .slice(0, mostTerms);
}
