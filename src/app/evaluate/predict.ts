import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { judgePredict } from '../../judging/judge-predict.js';
import { makeTools, type JudgingTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { setFolder } from '../train/own-questions.js';
import { readLines } from '../train/read-lines.js';
import { interval95 } from './bootstrap.js';
import { accuracy, auc, confusion, kappa, quadraticKappa, type Weights } from './measures.js';
import type { Evaluation, Row } from './row.js';

interface OwnPrediction {
  readonly passage: string;
  readonly segment: number;
  readonly text: string;
  readonly grounded: boolean;
  readonly outcome: 'came true' | 'partly' | 'off track' | null;
}

const outcomes = ['off track', 'partly', 'came true'] as const;
const draws = 400;

function segmentsOf(passage: string): readonly string[] {
  const file = join(setFolder('predictions'), '..', 'passages', `${passage}.json`);
  return (JSON.parse(readFileSync(file, 'utf8')) as { segments: string[] }).segments;
}

/** Share of a prediction's content words that stand in the segment: what a plain word count knows. */
function wordShare(text: string, segment: string, tools: JudgingTools): number {
  const content = tools.analyse(text).tokens.filter((token) => token.content);
  const { stems } = tools.analyse(segment);
  return content.filter(({ stem }) => stems.has(stem)).length / Math.max(1, content.length);
}

/** Judgements of one half of our own predictions, with what a plain word count says of each. */
function judgeAll(part: 'open' | 'sealed', tools: JudgingTools) {
  return readLines<OwnPrediction>(setFolder('predictions'), `${part}.jsonl`).map((row) => {
    const segments = segmentsOf(row.passage);
    const segment = segments[row.segment] ?? '';
    const next = segments[row.segment + 1] ?? '';
    const { measures } = judgePredict({ kind: 'predict', segment, text: row.text, next }, tools);
    return {
      row,
      measures,
      share: wordShare(row.text, segment, tools),
      shareNext: wordShare(row.text, next, tools),
    };
  });
}

function rowsOf(part: 'open' | 'sealed', tools: JudgingTools): readonly Row[] {
  const all = judgeAll(part, tools);
  const groups = all.map(({ row }, n) => `${row.passage} ${n % 6}`);
  const grounded = all.map(({ row }) => (row.grounded ? 1 : 0));
  const said = all.map(({ measures }) => (measures.grounded >= 0.5 ? 1 : 0));
  const chances = all.map(({ measures }) => measures.grounded);
  const told = all.filter(({ row }) => row.outcome !== null);
  const known = told.map(({ row }) => outcomes.indexOf(row.outcome ?? 'off track'));
  // Where the judge says nothing it counts as the middle one, so that silence earns nothing.
  const guessed = told.map(({ measures }) =>
    measures.outcome === null ? 1 : outcomes.indexOf(measures.outcome),
  );
  const plain = told.map(({ shareNext }) => (shareNext >= 0.5 ? 2 : shareNext >= 0.25 ? 1 : 0));
  const none = all.map(({ row }) => (row.outcome === null ? 1 : 0));
  const silent = all.map(({ measures }) => (measures.outcome === null ? 1 : 0));
  const make = (
    figure: string,
    of: (weights: Weights) => number | null,
    baseline: Row['baselines'][number],
    cases: readonly (string | number)[],
  ): Row => ({
    judge: `predict, ${part} set`,
    figure,
    value: of(undefined),
    interval: interval95(of, { groups: cases, times: draws }),
    baselines: [baseline],
    ceiling: null,
    n: cases.length,
    more: true,
  });
  const shares = all.map(({ share }) => share);
  return [
    make(
      'grounded, kappa',
      (w) => kappa(confusion(grounded, said, 2, w)),
      {
        name: 'half of the words in the text',
        value: kappa(
          confusion(
            grounded,
            shares.map((share) => (share >= 0.5 ? 1 : 0)),
            2,
          ),
        ),
      },
      groups,
    ),
    make(
      'grounded, AUC',
      (w) => auc(chances, grounded, w),
      { name: 'words in the text', value: auc(shares, grounded) },
      groups,
    ),
    make(
      'outcome, weighted kappa',
      (w) => quadraticKappa(confusion(known, guessed, 3, w)),
      {
        name: 'words in the next part',
        value: quadraticKappa(confusion(known, plain, 3)),
      },
      told.map((_, n) => n),
    ),
    make(
      'outcome or none, right',
      (w) => accuracy(confusion(none, silent, 2, w)),
      {
        name: 'always an outcome',
        value: accuracy(
          confusion(
            none,
            none.map(() => 0),
            2,
          ),
        ),
      },
      groups,
    ),
  ];
}

/** Predictions of our own over ten passages: the open half, on which the rules were tuned, and the sealed one. */
export const predictions: Evaluation = {
  name: 'predict',
  run(_dir, progress) {
    const tools = makeTools(readLexicon());
    const open = rowsOf('open', tools);
    progress(0.5);
    return [...open, ...rowsOf('sealed', tools)];
  },
};
