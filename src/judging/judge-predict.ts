import type { JudgeInput, PredictJudgement, Reason } from '../../shared/judgements.js';
import type { Analysis } from '../text/analysis.js';
import { readPrediction, predictionFeatures, type PredictionReading } from './predict-features.js';
import { groundedChance } from './predict-grounded.js';
import { predictLevel } from './predict-level.js';
import { outcomeOf, type Outcome } from './predict-outcome.js';
import type { JudgingTools } from './tools.js';

type PredictInput = Extract<JudgeInput, { kind: 'predict' }>;

/** Of the rules of this judge; raised with every change of a rule. */
const rules = 1;
const half = 0.5;

/** Judges a prediction: does it look ahead, does it rest on the text so far, and, once there is a next part, does that hold it. */
export function judgePredict(input: PredictInput, tools: JudgingTools): PredictJudgement {
  const { lexicon } = tools;
  const segment = tools.analyse(input.segment);
  const text = tools.analyse(input.text);
  const next = input.next === undefined || input.next.trim() === '' ? null : tools.analyse(input.next);
  const reading = readPrediction(text, segment, lexicon);
  const features = predictionFeatures(reading);
  const grounded = reading.words.length === 0 ? 0 : groundedChance(features);
  const outcome = outcomeOf(text, reading, next, lexicon);
  const linked = new Set(reading.words.filter(({ there }) => there === 1).map(({ key }) => key));
  const { level, rule } = predictLevel({
    words: reading.words.length,
    forward: reading.forward,
    retelling: reading.retelling,
    vague: reading.vague,
    grounded,
    evidence: features['linked reason'] >= half || reading.cues.has('points at text'),
    linkedWords: linked.size,
    outcome: outcome.outcome,
  });
  return {
    kind: 'predict',
    level,
    value: grounded >= half ? 'grounded' : 'not grounded',
    probability: Math.max(grounded, 1 - grounded),
    measures: {
      grounded,
      outcome: outcome.outcome,
      forward: reading.forward,
      retelling: reading.retelling,
      negated: reading.negated,
    },
    reasons: reasonsOf(rule, grounded, reading, segment, outcome, next),
    version: String(rules),
  };
}

/** The sentence of the segment that holds most of the prediction's words. */
function clueSentence({ words }: PredictionReading, segment: Analysis) {
  const linked = new Set(words.filter(({ there }) => there === 1).map(({ key }) => key));
  const counts = segment.sentences.map(() => new Set<string>());
  for (const { content, stem, sentence } of segment.tokens) {
    if (content && linked.has(stem)) counts[sentence]?.add(stem);
  }
  const best = counts.reduce((top, { size }, at) => (size > (counts[top]?.size ?? 0) ? at : top), 0);
  const range = segment.sentences[best];
  return range && (counts[best]?.size ?? 0) > 0 ? ({ in: 'segment', ...range } as const) : null;
}

function reasonsOf(
  rule: string,
  grounded: number,
  reading: PredictionReading,
  segment: Analysis,
  { outcome, share, met }: Outcome,
  next: Analysis | null,
): readonly Reason[] {
  const marker = reading.cues.get('reason') ?? reading.cues.get('points at text');
  const negator = reading.cues.get('negated');
  const first = met[0];
  const there = first && next?.tokens.find(({ stem }) => stem === first.key);
  const sentence = there ? next?.sentences[there.sentence] : undefined;
  return [
    { rule, place: null, figures: { grounded } },
    { rule: 'clue in the text', place: clueSentence(reading, segment) },
    ...(marker
      ? [{ rule: 'reason given', place: { in: 'text', start: marker[0], end: marker[1] } } as const]
      : []),
    ...(reading.negated && negator && next
      ? [
          {
            rule: 'a "not", so no outcome',
            place: { in: 'text', start: negator[0], end: negator[1] },
          } as const,
        ]
      : []),
    ...(outcome !== null && share !== null
      ? [
          {
            rule: `outcome: ${outcome}`,
            place: sentence ? ({ in: 'next', ...sentence } as const) : null,
            figures: { share },
          },
        ]
      : []),
  ].filter(({ rule: name, place }) => name !== 'clue in the text' || place !== null);
}
