import type { MeaningFeatures } from './meaning-features.js';
import { treeOdds, type Trees } from '../text/trees.js';
import weights from './weights/meaning.json' with { type: 'json' };

/** Boosted trees with a shift that puts one half between what people accept and what they don't. A logistic model on the same features is more than a point behind. */
export interface MeaningModel {
  readonly shift: number;
  readonly trees: Trees;
}

const model: MeaningModel = weights;

/** Log odds that people would accept a meaning in its place. */
export function meaningOdds(features: MeaningFeatures, { shift, trees }: MeaningModel): number {
  return shift + treeOdds(trees, features);
}

/** How well a meaning fits in its place, 0..1; one half lies between what people accept and what they don't. */
export function meaningFit(features: MeaningFeatures): number {
  return 1 / (1 + Math.exp(-meaningOdds(features, model)));
}

/** Of the weights; raised when they are learned anew. */
export const meaningWeightsVersion = weights.header.version;
