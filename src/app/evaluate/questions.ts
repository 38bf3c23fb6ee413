import { answeredFeatures } from '../../judging/question-answered.js';
import { questionChances } from '../../judging/question-odds.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { makeTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { fitQuestion, questionTable, type QuestionTable } from '../train/fit-question.js';
import { readOwnQuestions } from '../train/own-questions.js';
import { foldsOf, readQuestions } from '../train/question-data.js';
import { questionRows, type Judged } from './question-rows.js';
import type { Evaluation } from './row.js';

const folds = 5;

/** Questions on stories: each judged by a model that has seen nothing of its story, five folds over train and val. */
export const questions: Evaluation = {
  name: 'question',
  run(dir, progress) {
    const table = questionTable(readQuestions(dir), readOwnQuestions('open'), makeTools(readLexicon()));
    const fold = foldsOf(
      table.questions.map(({ story }) => story),
      folds,
    );
    const judged = new Array<Judged>(table.questions.length);
    for (let f = 0; f < folds; f++) {
      progress((f + 0.2) / folds);
      const model = fitQuestion(
        table,
        (i) => fold[i] !== f,
        (i) => fold[i] !== f && !table.questions[i]!.val,
      );
      table.questions.forEach((_, i) => {
        if (fold[i] === f) judged[i] = judgedBy(model, table, i);
      });
    }
    progress(1);
    return questionRows(table, judged);
  },
};

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
