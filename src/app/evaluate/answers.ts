import { judgeAnswer } from '../../judging/judge-answer.js';
import { questionModel } from '../../judging/judge-question.js';
import { makeTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { evidenceCases, referenceCases, type AnswerCase } from '../train/answer-data.js';
import { chancesUnseen } from '../train/fit-answer.js';
import { setFolder } from '../train/own-questions.js';
import { readQuestions } from '../train/question-data.js';
import { readLines } from '../train/read-lines.js';
import { interval95, shareInterval } from './bootstrap.js';
import { ascending, auc } from './measures.js';
import type { Evaluation, Row } from './row.js';

/** Answers: beside references on questions never seen, by evidence on stories never seen, and our own turned-round answers (sealed half). */
export const answers: Evaluation = {
  name: 'answer',
  run(dir, progress) {
    const tools = makeTools(readLexicon());
    const beside = referenceCases(dir, tools);
    progress(0.4);
    const stories = evidenceCases(
      readQuestions(dir).filter(({ val }) => val),
      questionModel.locator,
      tools,
    );
    progress(0.8);
    const rows = [
      areaRow('with references, AUC on unseen questions', beside, 'recall', 'words of the reference'),
      areaRow('evidence in the segment, AUC, val', stories, 'share', 'words of the segment'),
    ];
    const own = readLines<OwnAnswer>(setFolder('answers'), 'sealed.jsonl').map((line) => ({
      label: line.label,
      judgement: judgeAnswer(
        { kind: 'answer', segment: line.segment, question: line.question, text: line.text },
        tools,
      ),
    }));
    progress(1);
    const of = (label: string) =>
      own.filter((each) => each.label === label).map(({ judgement }) => judgement);
    const share = (figure: string, hits: number, n: number): Row => ({
      judge: 'answer',
      figure,
      value: n === 0 ? null : hits / n,
      interval: shareInterval(hits, n),
      baselines: [],
      ceiling: null,
      n,
      more: true,
    });
    const negated = of('negated');
    const right = of('right');
    return [
      ...rows,
      share(
        'negated answers not called right',
        negated.filter(({ value }) => value !== 'fits').length,
        negated.length,
      ),
      share('right answers called right', right.filter(({ value }) => value === 'fits').length, right.length),
      share(
        'right answers not called turned round',
        right.filter(({ measures }) => !measures.negated).length,
        right.length,
      ),
    ];
  },
};

interface OwnAnswer {
  readonly segment: string;
  readonly question: string;
  readonly text: string;
  readonly label: 'right' | 'negated' | 'off' | 'partly';
}

function areaRow(figure: string, cases: readonly AnswerCase[], plain: string, plainName: string): Row {
  const chances = chancesUnseen(cases);
  const labels = cases.map(({ fits }) => fits);
  const order = ascending(chances);
  const area = (weights?: ArrayLike<number>): number | null => auc(chances, labels, weights, order);
  return {
    judge: 'answer',
    figure,
    value: area(),
    interval: interval95(area, { groups: cases.map(({ group }) => group), times: 200 }),
    baselines: [
      {
        name: plainName,
        value: auc(
          cases.map(({ features }) => features[plain] ?? 0),
          labels,
        ),
      },
    ],
    ceiling: null,
    n: cases.length,
    more: true,
  };
}
