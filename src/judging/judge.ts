import type { JudgeInput, Judgement } from '../../shared/judgements.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { judgeAnswer } from './judge-answer.js';
import { judgeClarify } from './judge-clarify.js';
import { judgePredict } from './judge-predict.js';
import { judgeQuestion } from './judge-question.js';
import { judgeSumUp } from './judge-sum-up.js';
import { makeTools } from './tools.js';

/** Builds the one judge of all kinds of post over a lexicon; synchronous and pure, the same input gives the same judgement. */
export function makeJudge(lexicon: Lexicon): (input: JudgeInput) => Judgement {
  const tools = makeTools(lexicon);
  return (input) => {
    switch (input.kind) {
      case 'question':
        return judgeQuestion(input, tools);
      case 'answer':
        return judgeAnswer(input, tools);
      case 'sum-up':
        return judgeSumUp(input, tools);
      case 'clarify':
        return judgeClarify(input, tools);
      case 'predict':
        return judgePredict(input, tools);
      default: {
        const never: never = input;
        return never;
      }
    }
  };
}
