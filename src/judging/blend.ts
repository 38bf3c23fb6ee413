import { logOdds, type Logistic } from './logistic.js';
import type { Features } from './question-features.js';
import { treeOdds, type Trees } from '../text/trees.js';

/** The mean of a logistic model and of boosted trees on the same features, stretched so that its chances come true as often as they say. */
export interface Blend {
  readonly logistic: Logistic;
  readonly trees: Trees;
  readonly slope: number;
  readonly shift: number;
}

/** Log odds of label 1; a feature that is not given counts as 0. */
export function blendOdds({ logistic, trees, slope, shift }: Blend, features: Features): number {
  return shift + (slope * (logOdds(logistic, features) + treeOdds(trees, features))) / 2;
}
