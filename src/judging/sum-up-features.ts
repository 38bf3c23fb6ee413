import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from '../text/analysis.js';
import type { Copied } from './copied.js';
import { bestSentence, inOrder, ownPairs } from './sum-up-overlap.js';
import { joiningWords, threeAt, type SumUpSource } from './sum-up-source.js';

/** A sum-up beside its source, with what both judgements need of it. */
export interface SumUpReading {
  readonly text: Analysis;
  readonly keys: readonly string[];
  readonly source: SumUpSource;
  readonly copied: Copied;
}

/** Features of a sum-up, in tutors' words; those of length are taken relative to the source so that a segment and a chapter compare. */
export const sumUpFeatureNames = [
  'length',
  'sentences',
  'sentence length',
  'words outside copied runs',
  'copied',
  'copied runs',
  'source words',
  'source words outside copied runs',
  'own coverage',
  'spread',
  'long words',
  'rarer own words',
  'own pairs',
  'order words',
  'speaks to a reader',
  'threes',
  'best sentence',
  'in order',
] as const;
export type SumUpFeature = (typeof sumUpFeatureNames)[number];

const orderWords = new Set('also another other first second third lastly finally then next last'.split(' '));
const toReader = new Set('you your yours we us our'.split(' '));
const parts = 12;
const longestWord = 14;

function mean(values: readonly number[], none: number): number {
  return values.length === 0 ? none : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Weight of the source's heaviest words that are held, as a share of all of them. */
function ownCoverage(held: ReadonlySet<string>, { heaviest }: SumUpSource): number {
  let all = 0;
  let found = 0;
  for (const [stem, weight] of heaviest) {
    all += weight;
    if (held.has(stem)) found += weight;
  }
  return all === 0 ? 0 : found / all;
}

/** Entropy of the places in the source that the sum-up draws on, over twelve equal parts. */
function spread(stems: ReadonlySet<string>, { analysis, bearing }: SumUpSource): number {
  const shares = new Array<number>(parts).fill(0);
  const size = Math.max(1, analysis.tokens.length / parts);
  for (const stem of stems) {
    const places = bearing.get(stem) ?? [];
    for (const place of places) {
      const part = Math.min(parts - 1, Math.floor(place / size));
      shares[part] = (shares[part] ?? 0) + 1 / places.length;
    }
  }
  const all = shares.reduce((sum, share) => sum + share, 0);
  return all === 0
    ? 0
    : -shares.reduce((sum, share) => sum + (share > 0 ? (share / all) * Math.log(share / all) : 0), 0);
}

function stemsWhere(
  tokens: readonly Token[],
  test: (token: Token, at: number) => boolean,
): ReadonlySet<string> {
  return new Set(
    tokens.filter((token, at) => !joiningWords.has(token.lower) && test(token, at)).map(({ stem }) => stem),
  );
}

/** Known, and rarer than about one in fifty thousand words. */
function isRarer(zipf: number): boolean {
  return zipf > 0 && zipf < 4.3;
}

function sentencesOf({ text, keys }: SumUpReading): readonly (readonly string[])[] {
  const sentences: string[][] = text.sentences.map(() => []);
  text.tokens.forEach(({ sentence }, at) => sentences[sentence]?.push(keys[at] ?? ''));
  return sentences.filter((keysOfOne) => keysOfOne.length > 0);
}

function threesShared({ text: { tokens }, source }: SumUpReading): number {
  let threes = 0;
  for (let n = 0; n + 2 < tokens.length; n++) if (source.threes.has(threeAt(tokens, n))) threes++;
  return threes / Math.max(1, tokens.length);
}

/** The features of a sum-up by name; all finite, also for an empty text. */
export function sumUpFeatures(
  reading: SumUpReading,
  lexicon: Lexicon,
): Readonly<Record<SumUpFeature, number>> {
  const { text, keys, source, copied } = reading;
  // A misspelt word stands for the source's word that it means.
  const tokens = text.tokens.map((token, at) =>
    token.content ? { ...token, stem: keys[at] ?? token.stem } : token,
  );
  const words = Math.max(1, tokens.length);
  const sentences = sentencesOf(reading);
  const count = Math.max(1, sentences.length);
  const outside = (_: Token, at: number) => copied.inRun[at] !== true;
  const inSource = ({ stem }: Token) => source.bearing.has(stem);
  const own = (token: Token) => !inSource(token) && isRarer(lexicon.zipf(token.lower));
  const content = tokens.filter((token) => token.content).map(({ stem }) => stem);
  const share = (set: ReadonlySet<string>) => tokens.filter(({ lower }) => set.has(lower)).length / words;
  const shared = stemsWhere(tokens, inSource);
  return {
    length: Math.log(words / Math.max(1, source.analysis.tokens.length)),
    sentences: Math.log(count / Math.max(1, source.sentences.length)),
    'sentence length': Math.min(40, words / count),
    'words outside copied runs': Math.log(1 + tokens.filter(outside).length),
    copied: copied.share,
    'copied runs': copied.runs.length,
    'source words': Math.log(1 + shared.size),
    'source words outside copied runs': Math.log(
      1 + stemsWhere(tokens, (token, at) => outside(token, at) && inSource(token)).size,
    ),
    'own coverage': ownCoverage(stemsWhere(tokens, outside), source),
    spread: spread(shared, source),
    'long words': mean(
      tokens
        .filter(({ lower }) => !joiningWords.has(lower))
        .map(({ lower }) => Math.min(longestWord, lower.length)),
      5,
    ),
    'rarer own words': Math.log(1 + stemsWhere(tokens, own).size),
    'own pairs': Math.log(1 + ownPairs(content, source)),
    'order words': share(orderWords),
    'speaks to a reader': share(toReader),
    threes: threesShared(reading),
    'best sentence': bestSentence(sentences, source),
    'in order': inOrder(sentences, source),
  };
}
