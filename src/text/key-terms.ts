import type { KeyTerm } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { namesOf } from './names-of.js';

const mostTerms = 8;
/** Weights under this share of the heaviest are noise. Ours, by eye on the open half of fixtures/sets/topics. */
const leastWeight = 0.3;
/** Part of a word's weight that doesn't hang on its being a noun, and what is left to a name. */
const withoutNoun = 0.35;
const nameShare = 0.35;
/** Zipf frequency of the commonest words; rarity is how far below it a word stays. */
const commonest = 7.5;
/** A word that no list knows is taken for as rare as this, no rarer. */
const rarest = 2.5;
const passageShare = 0.15;

interface Group {
  readonly base: string;
  readonly forms: Map<string, number>;
  count: number;
  readonly name: boolean;
}

/** The base form by which tokens of one word are counted together. */
function baseOf(token: Token, name: boolean, lexicon: Lexicon): string {
  return name ? token.lower.replace(/'s?$/, '') : (lexicon.bases(token.lower)[0] ?? token.lower);
}

function groupTokens(
  tokens: readonly Token[],
  names: ReadonlySet<string>,
  lexicon: Lexicon,
): ReadonlyMap<string, Group> {
  const groups = new Map<string, Group>();
  for (const token of tokens) {
    if (!token.content) continue;
    const name = token.name || (/^\p{Lu}/u.test(token.text) && names.has(token.lower.replace(/'s?$/, '')));
    const base = baseOf(token, name, lexicon);
    const group = groups.get(base) ?? { base, forms: new Map<string, number>(), count: 0, name };
    const form = name ? token.text.replace(/['’]s?$/, '') : token.lower.replace(/'s?$/, '');
    group.forms.set(form, (group.forms.get(form) ?? 0) + 1);
    group.count++;
    groups.set(base, group);
  }
  return groups;
}

/** Groups of whole passages, since every part asks for those of its own. */
const wholes = new WeakMap<Analysis, ReadonlyMap<string, Group>>();

function groupsOfWhole(passage: Analysis, lexicon: Lexicon): ReadonlyMap<string, Group> {
  const groups = wholes.get(passage) ?? groupTokens(passage.tokens, namesOf(passage), lexicon);
  wholes.set(passage, groups);
  return groups;
}

function weigh(group: Group, inPassage: number, lexicon: Lexicon): number {
  const noun = lexicon.partShares(group.base).noun;
  const rarity = Math.max(0.5, commonest - Math.max(rarest, lexicon.zipf(group.base))) / commonest;
  // The tenth time a word comes adds less than the second.
  const often = Math.sqrt(group.count) + passageShare * Math.log2(1 + Math.max(0, inPassage - group.count));
  return often * rarity * (group.name ? nameShare : withoutNoun + (1 - withoutNoun) * noun);
}

/** Terms that carry a segment, heaviest first: base-form count x rarity x noun, names lowered; words that run through the whole passage count more where it is given. */
export function keyTerms(segment: Analysis, lexicon: Lexicon, passage?: Analysis): readonly KeyTerm[] {
  const names = namesOf(passage ?? segment);
  const groups = groupTokens(segment.tokens, names, lexicon);
  const all = passage ? groupsOfWhole(passage, lexicon) : groups;
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
