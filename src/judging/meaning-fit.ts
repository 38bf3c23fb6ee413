import type { MeaningFeature, MeaningFeatures } from './meaning-features.js';
import weights from './weights/meaning.json' with { type: 'json' };

/** A logistic model: odds = bias + sum of weight x (feature - mean) / deviation, each cut at four deviations. */
export interface MeaningModel {
  readonly bias: number;
  readonly features: Readonly<
    Partial<
      Record<MeaningFeature, { readonly mean: number; readonly deviation: number; readonly weight: number }>
    >
  >;
}

const farthest = 4;

/** A feature's standing among those learned from, in deviations from their mean, cut. */
export function meaningStanding(value: number, mean: number, deviation: number): number {
  return Math.max(-farthest, Math.min(farthest, (value - mean) / deviation));
}

/** Log odds that people would accept a meaning in its place. */
export function meaningOdds(features: MeaningFeatures, model: MeaningModel): number {
  let odds = model.bias;
  for (const [name, { mean, deviation, weight }] of Object.entries(model.features)) {
    odds += weight * meaningStanding(features[name as MeaningFeature], mean, deviation);
  }
  return odds;
}

/** How well a meaning fits in its place, 0..1; one half lies between what people accept and what they don't. */
export function meaningFit(features: MeaningFeatures): number {
  return 1 / (1 + Math.exp(-meaningOdds(features, weights)));
}

/** Of the weights; raised when they are learned anew. */
export const meaningWeightsVersion = weights.header.version;
