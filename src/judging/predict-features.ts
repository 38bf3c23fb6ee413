import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from '../text/analysis.js';
import { plainOf } from './clarify-meaning.js';
import { cuesIn } from './predict-cues.js';
import { heldAgainst, shareThere, type HeldWord } from './predict-words.js';

/** What a prediction is made of, before any judgement. */
export interface PredictionReading {
  readonly cues: ReturnType<typeof cuesIn>;
  readonly words: readonly HeldWord[];
  /** Words before and behind the reason's marker. */
  readonly claim: readonly HeldWord[];
  readonly reason: readonly HeldWord[];
  readonly forward: boolean;
  readonly retelling: boolean;
  /** What is predicted holds a "not"; one in the reason alone turns nothing round. */
  readonly negated: boolean;
  readonly vague: boolean;
}

/** Verbs in the past, by form; children's predictions stand in the present or the future. */
const past =
  /\b(was|were|had|did|went|came|said|saw|took|made|got|gave|found|thought|knew|told|stood|rode|wanted|tried|picked|\w{3,}ed)\b/;
/** From this share of a post's words in the segment on, without a look ahead, it tells again. */
const retoldFrom = 0.75;
const retoldInPast = 0.4;
const leastWords = 2;

/** Reads a prediction against the text so far. */
export function readPrediction(text: Analysis, segment: Analysis, lexicon: Lexicon): PredictionReading {
  const plain = plainOf(text.text);
  const cues = cuesIn(plain);
  const words = heldAgainst(text, segment, lexicon);
  const marker = cues.get('reason');
  const negator = cues.get('negated');
  const claim = marker ? words.filter(({ token }) => token.end <= marker[0]) : words;
  const reason = marker ? words.filter(({ token }) => token.start >= marker[1]) : [];
  const ahead = cues.has('forward') || cues.has('guess');
  const strict = shareThere(words.map((word) => ({ ...word, there: word.there === 1 ? 1 : 0 })));
  const pastOnly = past.test(marker ? plain.slice(0, marker[0]) : plain);
  const retelling =
    !ahead &&
    !marker &&
    !cues.has('points at text') &&
    words.length >= leastWords &&
    (pastOnly ? strict >= retoldInPast : strict >= retoldFrom);
  return {
    cues,
    words,
    claim,
    reason,
    forward: words.length > 0 && !retelling && (ahead || !pastOnly || marker !== undefined),
    retelling,
    negated: negator !== undefined && (marker === undefined || negator[0] < marker[0]),
    vague: cues.has('vague') || words.length < leastWords,
  };
}

/** Features by which a prediction is held to be grounded. */
export const predictionFeatureNames = [
  'linked words',
  'length',
  'points at text',
  'own reason',
  'linked reason',
  'weakest claim',
  'retelling',
] as const;
export type PredictionFeature = (typeof predictionFeatureNames)[number];

/** The features of a prediction; shares 0..1, counts as logarithms. */
export function predictionFeatures({
  cues,
  words,
  claim,
  reason,
  retelling,
}: PredictionReading): Readonly<Record<PredictionFeature, number>> {
  const stated = words.filter(({ there }) => there === 1);
  const linked = shareThere(reason);
  return {
    'linked words': Math.log(1 + new Set(stated.map(({ key }) => key)).size),
    length: Math.log(1 + words.length),
    'points at text': cues.has('points at text') ? 1 : 0,
    'own reason': cues.has('own reason') ? 1 : 0,
    'linked reason': linked,
    'weakest claim': claim.length === 0 ? 0 : Math.min(...claim.map(({ there }) => there)),
    retelling: retelling ? 1 : 0,
  };
}
