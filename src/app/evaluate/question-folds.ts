import { answeredFeatures } from '../../judging/question-answered.js';
import { questionChances } from '../../judging/question-odds.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { makeTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { fitQuestion, questionTable, type QuestionTable } from '../train/fit-question.js';
import { readOwnQuestions } from '../train/own-questions.js';
import { foldsOf, readQuestions } from '../train/question-data.js';
import type { Judged } from './question-rows.js';

/** Parts that the stories are cut into. */
export const folds = 5;

/** What was said of a question, by its number among all. */
export type JudgedAt = readonly [i: number, judged: Judged];

/** Judges the questions of some folds, each by a model that has seen nothing of its story; `done` is told after each fold. */
export function judgeFolds(
  dir: string,
  which: readonly number[],
  done: (fold: number) => void,
): readonly JudgedAt[] {
  const table = questionTable(readQuestions(dir), readOwnQuestions('open'), makeTools(readLexicon()));
  const fold = foldsOf(
    table.questions.map(({ story }) => story),
    folds,
  );
  return which.flatMap((f) => {
    const model = fitQuestion(
      table,
      (i) => fold[i] !== f,
      (i) => fold[i] !== f && !table.questions[i]!.val,
    );
    const judged = fold.flatMap((own, i): JudgedAt[] => (own === f ? [[i, judgedBy(model, table, i)]] : []));
    done(f);
    return judged;
  });
}

function judgedBy(
  model: QuestionModel,
  { questions, views, settled, tools }: QuestionTable,
  i: number,
): Judged {
  const { answer, second } = questions[i]!;
  const view = views[i]!;
  const alone = questionChances(view, undefined, model, tools, settled[i]);
  const withAnswer = (text: string): number =>
    questionChances(view, text, model, tools, settled[i]).inferential;
  const plain = answeredFeatures(view, answer, 0, tools);
  return {
    alone: alone.inferential,
    aloneCuts: alone.cuts,
    answered: withAnswer(answer),
    answeredCuts: model.answeredCuts,
    second: second ? withAnswer(second.answer) : null,
    overlap: alone.features['best cover'] ?? 0,
    stem: /\b(why|feel|will|might)\b/.test(view.wording.plain) ? 1 : 0,
    runs: plain['most runs of three'] === 1 ? 0 : 1,
  };
}
