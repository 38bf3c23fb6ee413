import type { Cuts } from '../../judging/question-model.js';
import type { LabelledQuestion } from '../train/question-data.js';
import { interval95 } from './bootstrap.js';
import { ascending, auc, calibrationError, confusion, kappa, macroF1, type Weights } from './measures.js';
import type { Row } from './row.js';

/** What was said of a labelled question: chances that it is inferential, and what the baselines say. */
export interface Judged {
  readonly alone: number;
  readonly aloneCuts: Cuts;
  readonly answered: number;
  readonly answeredCuts: Cuts;
  /** With the second expert's answer, null where there is none. */
  readonly second: number | null;
  /** Share of the question's words in the best sentence. */
  readonly overlap: number;
  /** 1 where the question says why, feel, will or might. */
  readonly stem: number;
  /** 1 where fewer than three quarters of the answer's runs of three words stand in the section. */
  readonly runs: number;
}

interface Part {
  readonly name: string;
  readonly labels: readonly number[];
  readonly groups: readonly string[];
  readonly judged: readonly Judged[];
  /** The other expert's label, where there is one. */
  readonly seconds: readonly (number | null)[];
  readonly secondShown: boolean;
}

/** All figures on story questions, over the folds and on val alone. */
export function questionRows(
  questions: readonly LabelledQuestion[],
  judged: readonly Judged[],
): readonly Row[] {
  const all = questions.map((_, i) => i);
  const val = all.filter((i) => questions[i]!.val);
  return [partOf('folds', questions, judged, all), partOf('val', questions, judged, val)].flatMap((part) => [
    ...aloneRows(part),
    ...decidedRows(part),
    ...answeredRows(part),
  ]);
}

function partOf(
  name: string,
  questions: readonly LabelledQuestion[],
  judged: readonly Judged[],
  use: readonly number[],
): Part {
  return {
    name,
    labels: use.map((i) => questions[i]!.inferential),
    groups: use.map((i) => questions[i]!.story),
    judged: use.map((i) => judged[i]!),
    seconds: use.map((i) => questions[i]!.second?.inferential ?? null),
    secondShown: name === 'val',
  };
}

interface Figure {
  readonly figure: string;
  readonly of: (weights: Weights) => number | null;
  readonly baselines?: Row['baselines'];
  readonly ceiling?: number | null;
  readonly n?: number;
  readonly more?: boolean;
}

function row(
  { name, groups }: Part,
  { figure, of, baselines = [], ceiling = null, n = groups.length, more = true }: Figure,
): Row {
  return {
    judge: 'question',
    figure: `${figure}, ${name}`,
    value: of(undefined),
    interval: interval95(of, { groups, times: 200 }),
    baselines,
    ceiling,
    n,
    more,
  };
}

/** Macro-F1 of saying label 1 where `said` is 1. */
const macro = (labels: readonly number[], said: readonly number[]) => (weights: Weights) =>
  macroF1(confusion(labels, said, 2, weights));

function aloneRows(part: Part): readonly Row[] {
  const { labels, judged } = part;
  const chances = judged.map(({ alone }) => alone);
  const order = ascending(chances);
  const overlap = judged.map(({ overlap: share }) => -share);
  const said = judged.map(({ alone, aloneCuts }) => (alone > aloneCuts.cut ? 1 : 0));
  return [
    row(part, {
      figure: 'AUC',
      of: (weights) => auc(chances, labels, weights, order),
      baselines: [{ name: 'best sentence', value: auc(overlap, labels) }],
    }),
    row(part, {
      figure: 'macro-F1',
      of: macro(labels, said),
      baselines: [
        {
          name: 'majority',
          value: macro(
            labels,
            labels.map(() => 0),
          )(undefined),
        },
        {
          name: 'why, feel, will',
          value: macro(
            labels,
            judged.map(({ stem }) => stem),
          )(undefined),
        },
      ],
      ceiling: expertsAgree(part, macroF1),
    }),
    row(part, {
      figure: 'calibration error',
      of: (weights) => calibrationError(chances, labels, weights),
      more: false,
    }),
  ];
}

/** Over the questions that are decided; recall is of all inferential questions, the undecided too. */
function decidedRows(part: Part): readonly Row[] {
  const { labels, judged } = part;
  const called = judged.map(({ alone, aloneCuts: { low, high } }) =>
    alone < low ? 0 : alone > high ? 1 : -1,
  );
  const sure = called.map((call) => (call < 0 ? 0 : 1));
  const count = (holds: (i: number) => boolean, weights: Weights): number =>
    labels.reduce((sum, _, i) => sum + (holds(i) ? (weights ? weights[i]! : 1) : 0), 0);
  const share = (of: (i: number) => boolean, among: (i: number) => boolean) => (weights: Weights) => {
    const n = count(among, weights);
    return n === 0 ? null : count((i) => among(i) && of(i), weights) / n;
  };
  const masked = (weights: Weights): Float64Array =>
    Float64Array.from(sure, (s, i) => s * (weights ? weights[i]! : 1));
  const decided = (said: readonly number[]) => (weights: Weights) =>
    kappa(confusion(labels, said, 2, masked(weights)));
  return [
    row(part, {
      figure: 'share decided',
      of: share(
        (i) => sure[i] === 1,
        () => true,
      ),
    }),
    row(part, {
      figure: 'kappa where decided',
      of: decided(called.map((call) => Math.max(0, call))),
      baselines: [{ name: 'why, feel, will', value: decided(judged.map(({ stem }) => stem))(undefined) }],
      ceiling: expertsAgree(part, kappa, (i) => sure[i] === 1),
      n: count((i) => sure[i] === 1, undefined),
    }),
    row(part, {
      figure: '"inferential" right',
      of: share(
        (i) => labels[i] === 1,
        (i) => called[i] === 1,
      ),
      n: count((i) => called[i] === 1, undefined),
    }),
    row(part, {
      figure: 'inferential found',
      of: share(
        (i) => called[i] === 1,
        (i) => labels[i] === 1,
      ),
      n: count((i) => labels[i] === 1, undefined),
    }),
  ];
}

function answeredRows(part: Part): readonly Row[] {
  const { labels, judged, seconds } = part;
  const said = judged.map(({ answered, answeredCuts }) => (answered > answeredCuts.cut ? 1 : 0));
  const first = row(part, {
    figure: 'with an answer, macro-F1',
    of: macro(labels, said),
    baselines: [
      {
        name: 'runs of three',
        value: macro(
          labels,
          judged.map(({ runs }) => runs),
        )(undefined),
      },
    ],
  });
  if (!part.secondShown) return [first];
  const other = judged.map(({ second, answeredCuts }) =>
    second !== null && second > answeredCuts.cut ? 1 : 0,
  );
  const secondLabels = seconds.map((label) => label ?? 0);
  return [
    first,
    row(part, { figure: 'with an answer, macro-F1 on the second expert', of: macro(secondLabels, other) }),
  ];
}

/** A figure of one expert against the other, null where nobody compared. */
function expertsAgree(
  { labels, seconds }: Part,
  figure: (table: readonly (readonly number[])[]) => number | null,
  among: (i: number) => boolean = () => true,
): number | null {
  const both = seconds.map((_, i) => i).filter((i) => seconds[i] !== null && among(i));
  if (both.length === 0) return null;
  return figure(
    confusion(
      both.map((i) => labels[i]!),
      both.map((i) => seconds[i]!),
      2,
    ),
  );
}
