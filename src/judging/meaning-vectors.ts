import type { Lexicon } from '../lexicon/lexicon.js';
import stored from './weights/meaning-vectors.json' with { type: 'json' };

const { dimensions } = stored.header;

/** A direction in which a word's uses point; length 1. */
export type Vector = Float32Array;

interface Shelf {
  readonly rows: ReadonlyMap<string, number>;
  /** Two coordinates a byte, four bits each, 8 in the middle. */
  readonly packed: string;
}

let shelf: Shelf | null = null;

/** Unpacked when first asked for. */
function open(): Shelf {
  shelf ??= {
    rows: new Map(stored.words.split(' ').map((word, row) => [word, row])),
    packed: atob(stored.vectors),
  };
  return shelf;
}

const held = new Map<number, Vector>();
const mostHeld = 8000;

function vectorAt(row: number): Vector {
  const known = held.get(row);
  if (known) return known;
  const { packed } = open();
  const vector = new Float32Array(dimensions);
  for (let n = 0; n < dimensions; n += 2) {
    const byte = packed.charCodeAt((row * dimensions + n) / 2);
    vector[n] = (byte >> 4) - 8;
    vector[n + 1] = (byte & 15) - 8;
  }
  scale(vector);
  if (held.size >= mostHeld) held.clear();
  held.set(row, vector);
  return vector;
}

function scale(vector: Vector): void {
  let sum = 0;
  for (const one of vector) sum += one * one;
  const length = Math.sqrt(sum) || 1;
  for (let n = 0; n < vector.length; n++) vector[n] = (vector[n] ?? 0) / length;
}

/** The vector of a word or of its base form, or null where neither has one. */
export function vectorOf(word: string, lexicon: Lexicon): Vector | null {
  const { rows } = open();
  const own = rows.get(word);
  if (own !== undefined) return vectorAt(own);
  for (const base of lexicon.bases(word)) {
    const row = rows.get(base);
    if (row !== undefined) return vectorAt(row);
  }
  return null;
}

/** The weighted mean direction of vectors, or null where there is none. */
export function meanVector(
  vectors: readonly { readonly vector: Vector | null; readonly weight: number }[],
): Vector | null {
  const sum = new Float32Array(dimensions);
  let some = false;
  for (const { vector, weight } of vectors) {
    if (!vector) continue;
    some = true;
    for (let n = 0; n < dimensions; n++) sum[n] = (sum[n] ?? 0) + weight * (vector[n] ?? 0);
  }
  if (some) scale(sum);
  return some ? sum : null;
}

/** Cosine of two vectors, -1..1; `none` where one is missing. */
export function cosine(a: Vector | null, b: Vector | null, none = 0): number {
  if (!a || !b) return none;
  let sum = 0;
  for (let n = 0; n < dimensions; n++) sum += (a[n] ?? 0) * (b[n] ?? 0);
  return sum;
}

/** Of the vectors; raised when they are made anew. */
export const meaningVectorsVersion = stored.header.version;
