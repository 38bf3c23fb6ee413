/*
 * Blends laid out as arrays over one order of features, since looking up hundreds of names for each of several models is
 * what a judgement would spend most of its time on. They say the same as `blendOdds`.
 */
import { treeEnd } from '../text/trees.js';
import type { Blend } from './blend.js';
import type { Logistic } from './logistic.js';
import type { Features } from './question-features.js';

/** A logistic model as arrays in the order of some names. */
export interface LaidLogistic {
  readonly bias: number;
  readonly weights: Float64Array;
  readonly means: Float64Array;
}

/** A blend as arrays in the order of some names. */
export interface LaidBlend {
  readonly logistic: LaidLogistic;
  readonly bias: number;
  readonly trees: readonly Float64Array[];
  readonly slope: number;
  readonly shift: number;
}

/** All names that the models use, in order. */
export function namesIn(blends: readonly Blend[], alone: Logistic): readonly string[] {
  const names = blends.flatMap(({ logistic, trees }) => [...Object.keys(logistic.weights), ...trees.names]);
  return [...new Set([...names, ...Object.keys(alone.weights)])].sort();
}

/** Values of features in the order of names, 0 where one is not given. */
export function laidValues(features: Features, names: readonly string[]): Float64Array {
  const values = new Float64Array(names.length);
  for (let k = 0; k < names.length; k++) values[k] = features[names[k]!] ?? 0;
  return values;
}

/** Lays a logistic model out in the order of names. */
export function layLogistic({ bias, weights }: Logistic, names: readonly string[]): LaidLogistic {
  return {
    bias,
    weights: Float64Array.from(names, (name) => weights[name]?.[0] ?? 0),
    means: Float64Array.from(names, (name) => weights[name]?.[1] ?? 0),
  };
}

/** Lays a blend out in the order of names, which hold all of its own. */
export function layBlend({ logistic, trees, slope, shift }: Blend, names: readonly string[]): LaidBlend {
  const places = trees.names.map((name) => names.indexOf(name));
  const laid = trees.trees.map((tree) => {
    const moved = Float64Array.from(tree);
    for (let at = 0; at < tree.length; at += tree[at] === treeEnd ? 2 : 3)
      if (tree[at] !== treeEnd) moved[at] = places[tree[at]!]!;
    return moved;
  });
  return { logistic: layLogistic(logistic, names), bias: trees.bias, trees: laid, slope, shift };
}

/** Log odds of label 1 by a logistic model. */
export function laidLogOdds({ bias, weights, means }: LaidLogistic, values: Float64Array): number {
  let sum = bias;
  for (let k = 0; k < weights.length; k++) sum += weights[k]! * (values[k]! - means[k]!);
  return sum;
}

/** Log odds of label 1 by a blend. */
export function laidOdds({ logistic, bias, trees, slope, shift }: LaidBlend, values: Float64Array): number {
  let sum = laidLogOdds(logistic, values) + bias;
  for (const tree of trees) {
    let at = 0;
    while (tree[at] !== treeEnd) at = values[tree[at]!]! <= tree[at + 1]! ? at + 3 : tree[at + 2]!;
    sum += tree[at + 1]!;
  }
  return shift + (slope * sum) / 2;
}
