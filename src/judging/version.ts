import question from './weights/question.json' with { type: 'json' };
import answer from './weights/answer.json' with { type: 'json' };

/** Of the rules of all judges; raised by hand with every change of a rule, so that old judgements are never re-made. */
const rules = 1;

/** What a question's or an answer's judgement carries: the rules' number, then that of the weights. */
export const versions = {
  question: `${rules}.${question.header.version}`,
  answer: `${rules}.${answer.header.version}`,
} as const;
