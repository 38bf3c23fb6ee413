import type { Locator } from '../../judging/question-locator.js';
import type { JudgingTools } from '../../judging/tools.js';
import { auc } from '../evaluate/measures.js';
import { evidenceCases, referenceCases, type AnswerCase } from './answer-data.js';
import { answerCuts, chancesUnseen, fitAnswer } from './fit-answer.js';
import { readQuestions } from './question-data.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

/** Learns the answer's weights, those of share-alike data in a file of their own, and writes both. */
export function trainAnswer(dir: string, tools: JudgingTools, locator: Locator): readonly string[] {
  const stories = evidenceCases(readQuestions(dir), locator, tools);
  const pupils = referenceCases(dir, tools);
  return [
    write(
      'answer',
      'evidence',
      stories,
      'FairytaleQA train and val (Xu et al. 2022, ACL)',
      'Apache-2.0 (data)',
      '2022',
    ),
    write(
      'answer.share-alike',
      'reference',
      pupils,
      'SciEntsBank, SemEval-2013 task 7 (Dzikovska et al. 2013)',
      'CC BY-SA (data and these weights)',
      '2013',
    ),
  ];
}

function write(
  file: string,
  name: string,
  cases: readonly AnswerCase[],
  data: string,
  licence: string,
  date: string,
): string {
  const path = weightsPath(file);
  const chances = chancesUnseen(cases);
  const area =
    auc(
      chances,
      cases.map(({ fits }) => fits),
    ) ?? 0;
  const header = { version: 1, data, licence, date, figures: { cases: cases.length, auc: area } };
  writeWeights(path, header, { [name]: fitAnswer(cases), cuts: answerCuts(chances, cases) });
  return path;
}
