import type { Judgement, SumUpJudgement } from '../../shared/judgements.js';
import type { Level } from '../../shared/strategies.js';

export function sumUpJudged(level: Level, copied = 0): SumUpJudgement {
  return {
    kind: 'sum-up',
    level,
    value: 'on topic',
    probability: 0.9,
    measures: {
      content: 0.5,
      wording: 0.5,
      sentences: 1,
      words: 9,
      coverage: 0.5,
      copied,
      onTopic: 0.9,
      copiedFromPeers: 0,
      gist: null,
    },
    reasons: copied > 0.5 ? [{ rule: 'a rule', place: { in: 'text', start: 0, end: 9 } }] : [],
    version: 'test',
  };
}

export function questionJudged(
  level: Level | null,
  value: 'literal' | 'inferential' | 'unsure',
  probability = 0.8,
): Judgement {
  return {
    kind: 'question',
    level,
    value,
    probability,
    measures: {
      isQuestion: true,
      inferential: value === 'inferential' ? 0.8 : 0.2,
      relationship: value === 'unsure' ? null : value === 'literal' ? 'right there' : 'author and me',
      onTopic: 0.9,
      mainIdea: 0.4,
      answerable: 0.8,
      copied: 0,
    },
    reasons: [],
    version: 'test',
  };
}
