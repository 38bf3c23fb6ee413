import type { Blend } from '../../judging/blend.js';
import { logOdds } from '../../judging/logistic.js';
import type { Features } from '../../judging/question-features.js';
import { treeOdds } from '../../text/trees.js';
import { binTable } from './bin-table.js';
import { fitTable } from './fit-table.js';
import { fitTrees, type TreesOptions } from './fit-trees.js';

/** How a blend is fitted. */
export interface BlendOptions {
  /** Penalty of the logistic half. */
  readonly ridge: number;
  readonly trees: Omit<TreesOptions, 'use'>;
  readonly use: (i: number) => boolean;
  /** Part 0..parts - 1 of a case, cases that hang together in the same one. */
  readonly part: (i: number) => number;
  /** With 0 no case is left out: nothing is unseen and nothing stretched. */
  readonly parts: number;
}

/** A blend, and for each used case the log odds by a blend that has not seen its part; 0 for the others. */
export interface FittedBlend {
  readonly blend: Blend;
  readonly unseen: readonly number[];
}

/** Fits both halves on all cases, and on all but each part in turn, whose unseen odds tell how far to stretch. */
export function fitBlend(
  cases: readonly Features[],
  labels: readonly number[],
  { ridge, trees, use, part, parts }: BlendOptions,
): FittedBlend {
  const bins = binTable(cases, { use, most: 24 });
  const fit = (holds: (i: number) => boolean): Pick<Blend, 'logistic' | 'trees'> => {
    const counts = (i: number): number => (use(i) && holds(i) ? 1 : 0);
    return {
      logistic: fitTable(cases, labels, { ridge, use: counts }),
      trees: fitTrees(bins, labels, { ...trees, use: counts }),
    };
  };
  if (parts === 0) return { blend: { ...fit(() => true), slope: 1, shift: 0 }, unseen: cases.map(() => 0) };
  const without = Array.from({ length: parts }, (_, p) => fit((i) => part(i) !== p));
  const raw = cases.map((features, i) => {
    if (!use(i)) return 0;
    const halves = without[part(i)]!;
    return (logOdds(halves.logistic, features) + treeOdds(halves.trees, features)) / 2;
  });
  const { slope, shift } = stretch(raw, labels, use);
  return {
    blend: { ...fit(() => true), slope, shift },
    unseen: raw.map((odds, i) => (use(i) ? shift + slope * odds : 0)),
  };
}

function stretch(
  odds: readonly number[],
  labels: readonly number[],
  use: (i: number) => boolean,
): Pick<Blend, 'slope' | 'shift'> {
  const { bias, weights } = fitTable(
    odds.map((one) => ({ odds: one })),
    labels,
    { ridge: 1, use: (i) => (use(i) ? 1 : 0) },
  );
  const [slope, mean] = weights.odds ?? [1, 0];
  return { slope, shift: bias - slope * mean };
}
