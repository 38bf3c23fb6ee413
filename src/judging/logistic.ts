import type { Features } from './question-features.js';

/** A logistic model over named features: `bias` and, of each feature, its weight and its mean in training. */
export interface Logistic {
  readonly bias: number;
  readonly weights: Readonly<Record<string, readonly [weight: number, mean: number]>>;
}

interface Laid {
  readonly names: readonly string[];
  readonly weights: Float64Array;
  readonly means: Float64Array;
}

const laidOut = new WeakMap<Logistic, Laid>();

/** The model as arrays, for walking a record of hundreds of names is slow. */
function lay(model: Logistic): Laid {
  const known = laidOut.get(model);
  if (known) return known;
  const entries = Object.values(model.weights);
  const laid = {
    names: Object.keys(model.weights),
    weights: Float64Array.from(entries, ([weight]) => weight),
    means: Float64Array.from(entries, ([, mean]) => mean),
  };
  laidOut.set(model, laid);
  return laid;
}

/** Log odds of label 1; a feature that is not given counts as 0. */
export function logOdds(model: Logistic, features: Features): number {
  const { names, weights, means } = lay(model);
  let sum = model.bias;
  for (let k = 0; k < names.length; k++) sum += weights[k]! * ((features[names[k]!] ?? 0) - means[k]!);
  return sum;
}

/** Chance 0..1 of log odds. */
export function chanceOf(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}
