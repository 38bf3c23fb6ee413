import type { JudgeInput, SumUpJudgement } from '../../shared/judgements.js';
import type { Analysis } from '../text/analysis.js';
import { copiedFrom, type Copied } from './copied.js';
import { deniesOtherwise } from './sum-up-denial.js';
import { sumUpFeatures, type SumUpReading } from './sum-up-features.js';
import { offTopicBelow, sumUpLevel } from './sum-up-level.js';
import { coverage, gistOverlap, onTopic, sharedWords } from './sum-up-measures.js';
import { sumUpReasons } from './sum-up-reasons.js';
import { contentAndWording, sumUpWeightsVersion } from './sum-up-score.js';
import { keysAgainst, sourceOf } from './sum-up-source.js';
import type { JudgingTools } from './tools.js';

type SumUpInput = Extract<JudgeInput, { kind: 'sum-up' }>;

/** Of the rules of this judge; raised with every change of a rule. */
const rules = 1;

/** The largest share copied from one peer; what both took from the segment doesn't count. */
function copiedFromPeers(
  text: Analysis,
  keys: readonly string[],
  segment: Analysis,
  fromSegment: Copied,
  peers: readonly Analysis[],
): number {
  return peers.reduce(
    (most, peer) => Math.max(most, copiedFrom(text, keys, peer, segment, fromSegment.inRun).share),
    0,
  );
}

/** Judges a sum-up of a segment: topic, copying, coverage, gist, and the content and wording that people would see in it. */
export function judgeSumUp(input: SumUpInput, tools: JudgingTools): SumUpJudgement {
  const { lexicon } = tools;
  const segment = tools.analyse(input.segment);
  const text = tools.analyse(input.text);
  const gist = input.gist === undefined || input.gist.trim() === '' ? null : tools.analyse(input.gist);
  const source = sourceOf(segment, lexicon);
  const keys = keysAgainst(text, source, lexicon);
  const copied = copiedFrom(text, keys, segment, segment);
  const reading: SumUpReading = { text, keys, source, copied };
  const shares = contentAndWording(sumUpFeatures(reading, lexicon));
  const measures = {
    ...shares,
    sentences: text.sentences.length,
    words: text.tokens.length,
    coverage: coverage(new Set(keys), source.keyTerms),
    copied: copied.share,
    onTopic: onTopic(reading, lexicon),
    copiedFromPeers: copiedFromPeers(
      text,
      keys,
      segment,
      copied,
      (input.peers ?? []).map((peer) => tools.analyse(peer)),
    ),
    gist: gist === null ? null : gistOverlap(text, gist, lexicon),
  };
  const { level, rule } = sumUpLevel({
    ...measures,
    segmentWords: segment.tokens.length,
    sharedWords: sharedWords(reading),
    deniesOtherwise: gist !== null && deniesOtherwise(text, gist),
  });
  return {
    kind: 'sum-up',
    level,
    value: measures.onTopic < offTopicBelow && copied.share < 0.5 ? 'off topic' : 'on topic',
    probability: null,
    measures,
    reasons: sumUpReasons(rule, measures, reading),
    version: `${rules}.${sumUpWeightsVersion}`,
  };
}
