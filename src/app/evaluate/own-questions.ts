import { judgeQuestion, questionModel } from '../../judging/judge-question.js';
import { makeTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { readOwnQuestions } from '../train/own-questions.js';
import { interval95 } from './bootstrap.js';
import { auc, confusion, kappa, type Weights } from './measures.js';
import type { Evaluation, Row } from './row.js';

/** Questions of our own beyond stories, on the sealed half, which no rule or weight has seen; run last. */
export const ownQuestions: Evaluation = {
  name: 'question beyond stories',
  run(_dir, progress) {
    const tools = makeTools(readLexicon());
    const asked = readOwnQuestions('sealed');
    const judged = asked.map(({ text, segment }, i) => {
      progress(i / asked.length);
      return judgeQuestion({ kind: 'question', text, segment }, tools, questionModel);
    });
    progress(1);
    const real = asked.map((_, i) => i).filter((i) => asked[i]!.isQuestion);
    const inHead = (relationship: string | null): number =>
      relationship === 'author and me' || relationship === 'on my own' ? 1 : 0;
    const labels = real.map((i) => inHead(asked[i]!.relationship));
    const said = real.map((i) => inHead(judged[i]!.measures.relationship));
    const sure = real.map((i) => (judged[i]!.value === 'unsure' ? 0 : 1));
    const right = real.map((i) => (judged[i]!.measures.relationship === asked[i]!.relationship ? 1 : 0));
    const groups = real.map((i) => asked[i]!.passage);
    const stems = real.map((i) => (/\b(why|feel|will|might)\b/i.test(asked[i]!.text) ? 1 : 0));
    const share = (hits: readonly number[], among?: readonly number[]) => (weights: Weights) => {
      const n = hits.reduce((sum, _, i) => sum + (among?.[i] ?? 1) * (weights?.[i] ?? 1), 0);
      return n === 0
        ? null
        : hits.reduce((sum, hit, i) => sum + hit * (among?.[i] ?? 1) * (weights?.[i] ?? 1), 0) / n;
    };
    const make = (
      figure: string,
      of: (weights: Weights) => number | null,
      baselines: Row['baselines'] = [],
    ): Row => ({
      judge: 'question beyond stories',
      figure,
      value: of(undefined),
      interval: interval95(of, { groups }),
      baselines,
      ceiling: null,
      n: real.length,
      more: true,
    });
    const sureKappa = (weights: Weights) =>
      kappa(
        confusion(
          labels,
          said,
          2,
          Float64Array.from(sure, (s, i) => s * (weights?.[i] ?? 1)),
        ),
      );
    const measure = (of: 'mainIdea' | 'answerable') => {
      const known = real.filter((i) => asked[i]![of] !== null);
      return auc(
        known.map((i) => judged[i]!.measures[of]),
        known.map((i) => (asked[i]![of] ? 1 : 0)),
      );
    };
    return [
      make('kappa, literal or inferential', (weights) => kappa(confusion(labels, said, 2, weights)), [
        { name: 'why, feel, will', value: kappa(confusion(labels, stems, 2)) },
      ]),
      make('share decided', share(sure)),
      make('kappa where decided', sureKappa),
      make('relationship right', share(right)),
      make('main idea, AUC', (weights) => (weights ? null : measure('mainIdea'))),
      make('answerable from the text, AUC', (weights) => (weights ? null : measure('answerable'))),
      {
        ...make('asks or not, right', share(real.map(() => 1))),
        value: asksRight(asked, judged),
        interval: null,
        n: asked.length,
      },
    ];
  },
};

function asksRight(
  asked: readonly { readonly isQuestion: boolean }[],
  judged: readonly { readonly measures: { readonly isQuestion: boolean } }[],
): number {
  return (
    asked.filter(({ isQuestion }, i) => judged[i]!.measures.isQuestion === isQuestion).length / asked.length
  );
}
