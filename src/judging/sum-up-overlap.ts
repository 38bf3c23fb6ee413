import type { SumUpSource } from './sum-up-source.js';

/** Keys of a text's sentences, in order. */
export type Sentences = readonly (readonly string[])[];

/** Length of the longest common subsequence of two lists of keys, by one row of the usual table. */
export function commonInOrder(a: readonly string[], b: readonly string[]): number {
  const row = new Int16Array(b.length + 1);
  for (const key of a) {
    let before = 0;
    for (let n = 1; n <= b.length; n++) {
      const above = row[n] ?? 0;
      row[n] = key === b[n - 1] ? before + 1 : Math.max(above, row[n - 1] ?? 0);
      before = above;
    }
  }
  return row[b.length] ?? 0;
}

/** For the mean sentence of a text: the most words in the same order that one sentence of the source shares with it. */
export function inOrder(sentences: Sentences, source: SumUpSource): number {
  let sum = 0;
  for (const sentence of sentences) {
    const words = new Set(sentence);
    let best = 0;
    for (const other of source.sentences) {
      let shared = 0;
      for (const key of other) if (words.has(key)) shared++;
      if (shared > best) best = Math.max(best, commonInOrder(sentence, other));
    }
    sum += best;
  }
  return sentences.length === 0 ? 0 : sum / sentences.length;
}

/** For the mean sentence of a text: the rarity of its words that stand in the one sentence of the source that shares most. */
export function bestSentence(sentences: Sentences, source: SumUpSource): number {
  const shared = new Float64Array(source.sentences.length);
  let sum = 0;
  for (const sentence of sentences) {
    shared.fill(0);
    for (const key of new Set(sentence)) {
      const rarity = source.rarity.get(key) ?? 0;
      for (const holder of source.holders.get(key) ?? []) shared[holder] = (shared[holder] ?? 0) + rarity;
    }
    sum += shared.reduce((most, one) => Math.max(most, one), 0);
  }
  return sentences.length === 0 ? 0 : sum / sentences.length;
}

const reach = { source: 6, text: 4 };

/** Pairs of content words that stand near each other in the text and not so in the source, as a count. */
export function ownPairs(content: readonly string[], source: SumUpSource): number {
  let pairs = 0;
  for (let n = 0; n < content.length; n++) {
    for (let m = n + 1; m <= n + reach.text && m < content.length; m++) {
      const one = content[n] ?? '';
      const other = content[m] ?? '';
      if (one !== other && !near(one, other, source)) pairs++;
    }
  }
  return pairs;
}

function near(one: string, other: string, { contentPlaces }: SumUpSource): boolean {
  const places = contentPlaces.get(other);
  if (!places) return false;
  for (const at of contentPlaces.get(one) ?? []) {
    for (const place of places) if (Math.abs(place - at) <= reach.source) return true;
  }
  return false;
}
