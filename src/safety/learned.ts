import type { Finding } from '../../shared/judgements.js';
import type { AlarmReading } from './alarms.js';
import { featuresOf, type Feature } from './learned-features.js';
import type { Setting } from './setting.js';
import type { Spoken } from './spoken.js';
import stored from './weights/screen.json' with { type: 'json' };

/** A logistic model over features that are there or not; weights by feature name. */
export interface Learned {
  readonly bias: number;
  /** Held from this probability on, 0..1. */
  readonly from: number;
  readonly weights: Readonly<Record<string, number>>;
}

/**
 * Learned for alarms alone: with each writer left out in turn the same method added three to five found posts in a
 * thousand to what the rules hold as hurtful or private, and twenty-four in a thousand held for nothing.
 */
const model: Learned = stored.alarm;
const laid = new Map(Object.entries(model.weights));

/** The name of what the learned layer finds. */
export const learnedRule = 'reads like words of alarm';

/** A post that speaks neither of its writer nor to anybody is most often about the passage: it alarms from here on only; ours. */
const sureOfOthers = 0.85;
const near = new Set(
  ['I', 'ME', 'KIN', 'REALFRIEND', 'YOU'].flatMap((one) => [`c ${one}`, `c (passage) ${one}`]),
);

/** From which probability a post with these features alarms. */
export function thresholdFor(features: readonly string[], from = model.from): number {
  return features.some((name) => near.has(name)) ? from : Math.max(from, sureOfOthers);
}

/** Probability 0..1 that a post with these features calls for an adult. */
export function chanceOf(features: readonly Feature[]): number {
  let odds = model.bias;
  for (const { name } of features) odds += laid.get(name) ?? 0;
  return 1 / (1 + Math.exp(-odds));
}

/** What reads like the posts that called an adult, where no rule found it; the place is that of the words that weighed most. */
export function readsLike(
  text: string,
  reading: AlarmReading,
  spoken: Spoken,
  setting: Setting,
  ruled: readonly Finding[],
): readonly Finding[] {
  if (spoken.heard.length === 0 || ruled.some(({ kind }) => kind === 'alarm')) return [];
  const features = featuresOf(text, reading, setting);
  if (chanceOf(features) < thresholdFor(features.map(({ name }) => name))) return [];
  const weak = reading.hits.find(({ strong }) => !strong);
  const place = { in: 'text', ...weightiest(features, spoken) } as const;
  return [weak?.finding ?? { kind: 'alarm', rule: learnedRule, place }];
}

function weightiest(features: readonly Feature[], { heard }: Spoken): { start: number; end: number } {
  let best: Feature['heard'] = null;
  let most = 0;
  for (const feature of features) {
    const weight = laid.get(feature.name) ?? 0;
    if (feature.heard === null || weight <= most) continue;
    best = feature.heard;
    most = weight;
  }
  const [first, last] = best ?? [0, heard.length - 1];
  return { start: heard[first]?.start ?? 0, end: heard[last]?.end ?? 0 };
}
