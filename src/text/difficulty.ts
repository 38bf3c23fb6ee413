import type { Lexicon } from '../lexicon/lexicon.js';
import { difficultyFeatures } from './difficulty-features.js';
import learned from './weights/hard-words.json' with { type: 'json' };

/** One learned feature: what it is on average, how far it strays, what a stray adds. */
export interface LearnedFeature {
  readonly mean: number;
  readonly deviation: number;
  readonly weight: number;
}

/** A linear model over named features. */
export interface DifficultyModel {
  readonly bias: number;
  readonly features: Readonly<Record<string, LearnedFeature>>;
}

/** Features are cut at this many deviations, so that a freak word can't run away. */
const mostDeviations = 4;

/** How far a feature's value strays from its mean, in deviations. */
export function strayOf(value: number, { mean, deviation }: Omit<LearnedFeature, 'weight'>): number {
  return Math.max(-mostDeviations, Math.min(mostDeviations, (value - mean) / deviation));
}

/** The model's answer for features, 0..1. */
export function applyDifficulty(features: Readonly<Record<string, number>>, model: DifficultyModel): number {
  let sum = model.bias;
  for (const [name, feature] of Object.entries(model.features)) {
    sum += feature.weight * strayOf(features[name] ?? feature.mean, feature);
  }
  return Math.min(1, Math.max(0, sum));
}

/** The piece of the segment between the stops around an offset. */
function sentenceAround(segment: string, at: number): string {
  const before = segment.slice(0, at);
  const start = Math.max(...['. ', '! ', '? ', '\n'].map((stop) => before.lastIndexOf(stop))) + 1;
  const end = segment.slice(at).search(/[.!?](?:\s|$)|\n/);
  return segment.slice(start, end < 0 ? segment.length : at + end);
}

/** How hard a word is for a reader, 0..1; a compound with a hyphen is as hard as its hardest part. */
export function difficultyOf(
  word: string,
  segment: string,
  offset: number | undefined,
  lexicon: Lexicon,
): number {
  const at = offset ?? Math.max(0, segment.toLowerCase().indexOf(word.toLowerCase()));
  const sentence = sentenceAround(segment, at);
  // A capital at the start of a sentence tells nothing; one inside tells of a name.
  const opens = /^["“‘'(\s]*$/u.test(sentence.slice(0, Math.max(0, sentence.indexOf(word))));
  const written = opens && /^\p{Lu}\p{Ll}/u.test(word) ? word.toLowerCase() : word;
  const whole = lexicon.zipf(written.toLowerCase()) > 0;
  const parts = whole ? [written] : written.split(/[-–]/).filter((part) => part.length > 1);
  return Math.max(
    0,
    ...(parts.length > 0 ? parts : [written]).map((part) =>
      applyDifficulty(difficultyFeatures({ word: part, sentence }, lexicon), learned.model),
    ),
  );
}
