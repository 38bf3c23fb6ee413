import type { Features } from './question-features.js';

/** A logistic model over named features: `bias` and, of each feature, its weight and its mean in training. */
export interface Logistic {
  readonly bias: number;
  readonly weights: Readonly<Record<string, readonly [weight: number, mean: number]>>;
}

/** What a feature did to a judgement: its push in log odds, above 0 towards label 1. */
export interface Push {
  readonly feature: string;
  readonly push: number;
}

/** Log odds of label 1; a feature that the model lacks does nothing, one that is not given counts as 0. */
export function logOdds(model: Logistic, features: Features): number {
  let sum = model.bias;
  for (const name in model.weights) {
    const [weight, mean] = model.weights[name]!;
    sum += weight * ((features[name] ?? 0) - mean);
  }
  return sum;
}

/** Chance 0..1 of log odds. */
export function chanceOf(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}

/** What pushed most, strongest first. */
export function strongestPushes(model: Logistic, features: Features, count: number): readonly Push[] {
  return Object.entries(model.weights)
    .map(([feature, [weight, mean]]) => ({ feature, push: weight * ((features[feature] ?? 0) - mean) }))
    .sort((a, b) => Math.abs(b.push) - Math.abs(a.push))
    .slice(0, count);
}
