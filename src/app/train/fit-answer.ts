import { chanceOf, logOdds, type Logistic } from '../../judging/logistic.js';
import type { AnswerCuts } from '../../judging/answer-model.js';
import type { AnswerCase } from './answer-data.js';
import { fitTable } from './fit-table.js';
import { foldsOf } from './question-data.js';

/** Best of 10, 100, 330 and 1000 on questions left out. */
const ridge = 300;
/** "Fits" and "not yet" must each be right this often on answers not seen in training. */
const right = 0.8;

/** Fits a model on all cases but those of a fold. */
export function fitAnswer(cases: readonly AnswerCase[], use: (i: number) => boolean = () => true): Logistic {
  const labels = cases.map(({ fits }) => fits);
  return fitTable(
    cases.map(({ features }) => features),
    labels,
    { ridge, use: (i) => (use(i) ? 1 : 0) },
  );
}

/** Chance of each case by a model that has seen nothing of its group. */
export function chancesUnseen(cases: readonly AnswerCase[]): readonly number[] {
  const folds = foldsOf(cases.map(({ group }) => group));
  const models = [0, 1, 2, 3, 4].map((fold) => fitAnswer(cases, (i) => folds[i] !== fold));
  return cases.map(({ features }, i) => chanceOf(logOdds(models[folds[i]!]!, features)));
}

/** The band outside of which both verdicts are right often enough. */
export function answerCuts(chances: readonly number[], cases: readonly AnswerCase[]): AnswerCuts {
  let high = 0.95;
  let low = 0.05;
  const share = (holds: (p: number) => boolean, label: 0 | 1): number => {
    const called = cases.filter((_, i) => holds(chances[i]!));
    return called.length === 0 ? 0 : called.filter(({ fits }) => fits === label).length / called.length;
  };
  for (let at = 0.95; at >= 0.5; at -= 0.01) if (share((p) => p > at, 1) >= right) high = at;
  for (let at = 0.05; at <= 0.5; at += 0.01) if (share((p) => p < at, 0) >= right) low = at;
  return { low: Math.round(low * 100) / 100, high: Math.round(high * 100) / 100 };
}
