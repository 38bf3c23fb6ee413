import type { PredictionFeature } from './predict-features.js';

/** Log odds of "grounded": learned by ridge-penalised logistic regression on the open half of fixtures/sets/predictions (90 predictions, four passages against the fifth: AUC .95), rounded. */
const bias = -2.5;
const points: Readonly<Record<PredictionFeature, number>> = {
  'linked words': 1.5,
  length: 1.4,
  'points at text': 1.6,
  'own reason': -3.4,
  'linked reason': 1.1,
  'weakest claim': -0.8,
  retelling: -2,
};

/** How likely a tutor would say that a prediction rests on the text, 0..1. */
export function groundedChance(features: Readonly<Record<PredictionFeature, number>>): number {
  let odds = bias;
  for (const [name, point] of Object.entries(points)) odds += point * features[name as PredictionFeature];
  return 1 / (1 + Math.exp(-odds));
}
