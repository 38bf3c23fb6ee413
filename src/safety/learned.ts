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

/** What the learned layer looks for, each with what its findings are called. */
export type Concern = 'alarm' | 'hurtful' | 'personal';

const models: Readonly<Record<Concern, Learned>> = {
  alarm: stored.alarm,
  hurtful: stored.hurtful,
  personal: stored.personal,
};
const laid = new Map(
  (Object.keys(models) as Concern[]).map((concern) => [
    concern,
    new Map(Object.entries(models[concern].weights)),
  ]),
);

/** Names of what the learned layer finds, by kind. */
export const learnedRules: Readonly<Record<Concern, string>> = {
  alarm: 'reads like words of alarm',
  hurtful: 'reads like words that are held',
  personal: 'reads like a private detail',
};

/** A post that speaks neither of its writer nor to anybody is most often about the passage: it alarms from here on only; ours. */
const sureOfOthers = 0.85;
const near = new Set(
  ['I', 'ME', 'KIN', 'REALFRIEND', 'YOU'].flatMap((one) => [`c ${one}`, `c (passage) ${one}`]),
);

/** From which probability a post with these features is taken to be of a concern. */
export function thresholdFor(
  features: readonly string[],
  concern: Concern,
  from = models[concern].from,
): number {
  if (concern !== 'alarm' || features.some((name) => near.has(name))) return from;
  return Math.max(from, sureOfOthers);
}

/** Probability 0..1 that a post with these features is of a concern. */
export function chanceOf(features: readonly Feature[], concern: Concern): number {
  const weights = laid.get(concern);
  let odds = models[concern].bias;
  for (const { name } of features) odds += weights?.get(name) ?? 0;
  return 1 / (1 + Math.exp(-odds));
}

/** What reads like the posts that were held or called an adult, where no rule found it; the place is that of the words that weighed most. */
export function readsLike(
  text: string,
  reading: AlarmReading,
  spoken: Spoken,
  setting: Setting,
  ruled: readonly Finding[],
): readonly Finding[] {
  if (spoken.heard.length === 0) return [];
  const features = featuresOf(text, reading, setting);
  const names = features.map(({ name }) => name);
  const wanted: Concern[] = [];
  if (!ruled.some(({ kind }) => kind === 'alarm')) wanted.push('alarm');
  if (ruled.length === 0) wanted.push('hurtful', 'personal');
  return wanted
    .filter((concern) => chanceOf(features, concern) >= thresholdFor(names, concern))
    .map((concern) => {
      const weak = concern === 'alarm' ? reading.hits.find(({ strong }) => !strong) : undefined;
      return (
        weak?.finding ?? {
          kind: concern,
          rule: learnedRules[concern],
          place: { in: 'text', ...weightiest(features, concern, spoken) },
        }
      );
    });
}

function weightiest(
  features: readonly Feature[],
  concern: Concern,
  { heard }: Spoken,
): { start: number; end: number } {
  const weights = laid.get(concern);
  let best: Feature['heard'] = null;
  let most = 0;
  for (const feature of features) {
    const weight = weights?.get(feature.name) ?? 0;
    if (feature.heard === null || weight <= most) continue;
    best = feature.heard;
    most = weight;
  }
  const [first, last] = best ?? [0, heard.length - 1];
  return { start: heard[first]?.start ?? 0, end: heard[last]?.end ?? 0 };
}
