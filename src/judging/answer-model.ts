import type { Logistic } from './logistic.js';

/** Below `low` an answer is "not yet", above `high` it fits, between them unsure. */
export interface AnswerCuts {
  readonly low: number;
  readonly high: number;
}

/** What is learned on answers to story questions: does the segment bear the answer out? */
export interface EvidenceModel {
  readonly evidence: Logistic;
  readonly cuts: AnswerCuts;
}

/** What is learned on pupils' answers beside reference answers; from share-alike data, so in a file of its own. */
export interface ReferenceModel {
  readonly reference: Logistic;
  readonly cuts: AnswerCuts;
}
