import type { JudgingTools } from '../../judging/tools.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { fitQuestion, questionTable } from './fit-question.js';
import { readOwnQuestions } from './own-questions.js';
import { readQuestions } from './question-data.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

/** The model that was learned, and the files written. */
export interface TrainedQuestion {
  readonly model: QuestionModel;
  readonly files: readonly string[];
}

/** Learns the question's weights on all stories, with cuts from the training stories alone, and writes them. */
export function trainQuestion(dir: string, tools: JudgingTools): TrainedQuestion {
  const own = readOwnQuestions('open');
  const table = questionTable(readQuestions(dir), own, tools);
  const model = fitQuestion(
    table,
    () => true,
    (i) => !table.questions[i]!.val,
  );
  const path = weightsPath('question');
  const header = {
    version: 2,
    data: 'FairytaleQA train and val (Xu et al. 2022, ACL); fixtures/sets/questions/open.jsonl',
    licence: 'Apache-2.0 (data); MIT (our own)',
    date: '2022',
    figures: { stories: table.questions.length, own: own.length },
  };
  writeWeights(path, header, model);
  return { model, files: [path] };
}
