import weights from './weights/sum-up.json' with { type: 'json' };
import type { SumUpFeature } from './sum-up-features.js';

/** What ridge regression learned of one human score: score = bias + sum of weight x (feature - mean) / deviation, each cut at three deviations. */
export interface RidgeModel {
  readonly bias: number;
  readonly features: Readonly<
    Partial<
      Record<SumUpFeature, { readonly mean: number; readonly deviation: number; readonly weight: number }>
    >
  >;
}

/** How far a feature may lie from its mean, in deviations: a post unlike those learned from must not run away. */
export const farthest = 3;

/** A feature's standing among those learned from, in deviations from their mean, cut. */
export function standing(value: number, mean: number, deviation: number): number {
  return Math.max(-farthest, Math.min(farthest, (value - mean) / deviation));
}

/** The human score that a model expects, in standard deviations of the scores learned from. */
export function expectedScore(features: Readonly<Record<SumUpFeature, number>>, model: RidgeModel): number {
  let score = model.bias;
  for (const [name, learned] of Object.entries(model.features)) {
    score += learned.weight * standing(features[name as SumUpFeature], learned.mean, learned.deviation);
  }
  return score;
}

/** A standard score as a share of 1: about the share of pupils' sum-ups that are weaker (logistic curve near the normal one). */
export function asShare(score: number): number {
  return 1 / (1 + Math.exp(-1.7 * score));
}

/** Content and wording of a sum-up, each 0..1, learned from human scores. */
export function contentAndWording(features: Readonly<Record<SumUpFeature, number>>): {
  readonly content: number;
  readonly wording: number;
} {
  return {
    content: asShare(expectedScore(features, weights.content)),
    wording: asShare(expectedScore(features, weights.wording)),
  };
}

/** Of the weights; raised when they are learned anew. */
export const sumUpWeightsVersion = weights.header.version;
