import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from '../text/analysis.js';
import type { Copied } from './copied.js';
import { bestSentence, inOrder, ownPairs } from './sum-up-overlap.js';
import { threeAt, type SumUpSource } from './sum-up-source.js';

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
  'own coverage',
  'source words outside copied runs',
  'source words',
  'spread',
  'content words',
  'long words',
  'long own words',
  'rarer own words',
  'own pairs',
  'own words',
  'own words a sentence',
  'order words',
  'linking words',
  'threes',
  'best sentence',
  'in order',
  'copied runs',
  'variety',
] as const;
export type SumUpFeature = (typeof sumUpFeatureNames)[number];

const orderWords = new Set('also another other first second third lastly finally then next last'.split(' '));
const linkingWords = new Set(
  'because since although while which whose whom that when where if so though unless therefore thus however instead without'.split(
    ' ',
  ),
);
const parts = 12;
const longestWord = 14;

function mean(values: readonly number[], none: number): number {
  return values.length === 0 ? none : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Weight of the source's words that stand outside copied runs, as a share of the sixty heaviest. */
function ownCoverage(own: ReadonlySet<string>, { heaviest }: SumUpSource): number {
  let all = 0;
  let held = 0;
  for (const [stem, one] of heaviest) {
    all += one;
    if (own.has(stem)) held += one;
  }
  return all === 0 ? 0 : held / all;
}

/** Entropy of the places in the source that the sum-up draws on, over twelve equal parts. */
function spread(stems: ReadonlySet<string>, { analysis }: SumUpSource): number {
  const shares = new Array<number>(parts).fill(0);
  const size = Math.max(1, analysis.tokens.length / parts);
  for (const stem of stems) {
    const places = analysis.stems.get(stem) ?? [];
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

/** Words of the text that the source does not hold, with what tells how well chosen they are. */
function ownWords({ text, keys, source }: SumUpReading, lexicon: Lexicon) {
  const own = text.tokens.filter(({ content }, at) => content && !source.holders.has(keys[at] ?? ''));
  const rarer = new Set(own.filter(({ lower }) => isRarer(lexicon.zipf(lower))).map(({ stem }) => stem));
  return { own, rarer };
}

/** Known, and rarer than about one in fifty thousand words. */
function isRarer(zipf: number): boolean {
  return zipf > 0 && zipf < 4.3;
}

function letters(tokens: readonly { readonly lower: string }[], none: number): number {
  return mean(
    tokens.map(({ lower }) => Math.min(longestWord, lower.length)),
    none,
  );
}

function sentencesOf({ text, keys }: SumUpReading): readonly (readonly string[])[] {
  const sentences: string[][] = text.sentences.map(() => []);
  text.tokens.forEach(({ sentence }, at) => sentences[sentence]?.push(keys[at] ?? ''));
  return sentences.filter((keysOfOne) => keysOfOne.length > 0);
}

/** The features of a sum-up by name; all finite, also for an empty text. */
export function sumUpFeatures(
  reading: SumUpReading,
  lexicon: Lexicon,
): Readonly<Record<SumUpFeature, number>> {
  const { text, keys, source, copied } = reading;
  const { tokens } = text;
  const words = Math.max(1, tokens.length);
  const sentences = sentencesOf(reading);
  const count = Math.max(1, sentences.length);
  const contentAt = tokens.flatMap(({ content }, at) => (content ? [at] : []));
  const content = contentAt.map((at) => keys[at] ?? '');
  const shared = new Set(content.filter((key) => source.holders.has(key)));
  const outside = new Set(contentAt.filter((at) => copied.inRun[at] !== true).map((at) => keys[at] ?? ''));
  const sharedOutside = new Set([...outside].filter((key) => source.holders.has(key)));
  const { own, rarer } = ownWords(reading, lexicon);
  const share = (set: ReadonlySet<string>) => tokens.filter(({ lower }) => set.has(lower)).length / words;
  let threes = 0;
  for (let n = 0; n + 2 < tokens.length; n++) if (source.threes.has(threeAt(tokens, n))) threes++;
  const sourceWords = Math.max(1, source.analysis.tokens.length);
  return {
    length: Math.log(words / sourceWords),
    sentences: Math.log(count) - Math.log(Math.max(1, source.sentences.length)),
    'sentence length': Math.min(40, words / count),
    'own coverage': ownCoverage(outside, source),
    'source words outside copied runs': Math.log(1 + sharedOutside.size),
    'source words': Math.log(1 + shared.size),
    spread: spread(shared, source),
    'content words': content.length / words,
    'long words': letters(
      contentAt.flatMap((at) => tokens[at] ?? []),
      5,
    ),
    'long own words': letters(own, 5),
    'rarer own words': Math.log(1 + rarer.size),
    'own pairs': Math.log(1 + ownPairs(content, source)),
    'own words': own.length / Math.max(1, content.length),
    'own words a sentence': own.length / count,
    'order words': share(orderWords),
    'linking words': share(linkingWords),
    threes: threes / words,
    'best sentence': bestSentence(sentences, source),
    'in order': inOrder(sentences, source),
    'copied runs': copied.runs.length,
    variety: new Set(tokens.map(({ lower }) => lower)).size / Math.sqrt(words),
  };
}
