import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from '../text/analysis.js';
import type { SumUpReading } from './sum-up-features.js';
import { rougeL, rougeN } from './sum-up-rouge.js';
import { keysAgainst, sourceOf } from './sum-up-source.js';

/** How much a word tells about the topic: rare words more; a word that no list knows little, since it may be a slip. */
function telling(lower: string, lexicon: Lexicon): number {
  const zipf = lexicon.zipf(lower);
  return Math.sqrt(zipf === 0 ? (lexicon.knows(lower) ? 3 : 1) : Math.max(0.5, 7 - zipf));
}

/** What a synonym of a source's word counts beside the word itself, and a name beside another word: names run through a whole story and tell little of its part (tuned on questions with answers of the stories for training, own part against another of the same story). */
const share = { synonym: 0.3, name: 0.5 };

/** Share of the text's content words that stand in the source (a synonym counts in part, rare words count more), 0..1; 0 for a text without content words. */
export function onTopic({ text, keys, source }: SumUpReading, lexicon: Lexicon): number {
  let all = 0;
  let found = 0;
  const seen = new Set<string>();
  text.tokens.forEach(({ content, lower, name }, at) => {
    const key = keys[at] ?? '';
    if (!content || seen.has(key)) return;
    seen.add(key);
    const weight = telling(lower, lexicon) * (name ? share.name : 1);
    all += weight;
    if (source.holders.has(key)) found += weight;
    else if (source.synonyms.has(key)) found += weight * share.synonym;
  });
  return all === 0 ? 0 : found / all;
}

/** Different content words that the source holds too, or whose synonyms it holds. */
export function sharedWords({ text, keys, source }: SumUpReading): number {
  const shared = new Set<string>();
  text.tokens.forEach(({ content }, at) => {
    const key = keys[at] ?? '';
    if (content && (source.holders.has(key) || source.synonyms.has(key))) shared.add(key);
  });
  return shared.size;
}

/** Weight of the key terms that the text holds as a share of all, 0..1; terms are stems with weights. */
export function coverage(keys: ReadonlySet<string>, terms: ReadonlyMap<string, number>): number {
  let all = 0;
  let found = 0;
  for (const [stem, weight] of terms) {
    all += weight;
    if (keys.has(stem)) found += weight;
  }
  return all === 0 ? 0 : found / all;
}

/** How far the words of a gist are met: content words of the gist or their synonyms in the text, and the longest common sequence of content words, both with recall in front; 0..1. */
export function gistOverlap(text: Analysis, gist: Analysis, lexicon: Lexicon): number {
  const source = sourceOf(gist, lexicon);
  const keys = keysAgainst(text, source, lexicon);
  const mine = text.tokens.flatMap(({ content }, at) => (content ? [keys[at] ?? ''] : []));
  const theirs = gist.tokens.flatMap(({ content, stem }) => (content ? [stem] : []));
  const own = mine.filter((key) => !source.holders.has(key) && source.synonyms.has(key)).length;
  if (theirs.length === 0) return 0;
  const recall = Math.min(1, rougeN(mine, theirs, 1) + own / theirs.length);
  return (2 * recall + rougeL(mine, theirs, 2)) / 3;
}
