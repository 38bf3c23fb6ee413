import { describe, expect, it } from 'vitest';
import { interval95, shareInterval } from '../../src/app/evaluate/bootstrap.js';
import { belowFloor } from '../../src/app/evaluate/floor.js';
import {
  accuracy,
  auc,
  calibrationError,
  confusion,
  kappa,
  macroF1,
  precisionRecall,
  quadraticKappa,
} from '../../src/app/evaluate/measures.js';
import { tableOf } from '../../src/app/evaluate/table.js';

/** Cohen 1960, the worked tables: three labels as proportions, and fifty cases of two labels. */
const threeLabels = [
  [0.44, 0.07, 0.09],
  [0.05, 0.2, 0.05],
  [0.01, 0.03, 0.06],
];
const fiftyCases = [
  [20, 5],
  [10, 15],
];

describe('agreement beyond chance', () => {
  it('is .492 for the published table of three labels (Cohen 1960)', () => {
    expect(accuracy(threeLabels)).toBeCloseTo(0.7, 10);
    expect(kappa(threeLabels)).toBeCloseTo(0.492, 3);
  });

  it('is .40 for fifty cases 20, 5, 10, 15 (Cohen 1960)', () => {
    expect(kappa(fiftyCases)).toBeCloseTo(0.4, 10);
  });

  it('is not computable where only one label occurs', () => {
    expect(kappa([[9, 0], [0, 0]])).toBeNull(); // prettier-ignore
    expect(kappa([[0, 0], [0, 0]])).toBeNull(); // prettier-ignore
  });

  it('forgives a neighbouring level more than a far one when weighted', () => {
    const near = [[5, 1, 0], [0, 5, 1], [0, 0, 5]]; // prettier-ignore
    const far = [[5, 0, 1], [0, 5, 0], [1, 0, 5]]; // prettier-ignore
    expect(quadraticKappa(near)!).toBeGreaterThan(quadraticKappa(far)!);
    expect(quadraticKappa([[3, 0], [0, 4]])).toBe(1); // prettier-ignore
  });
});

describe('how well scores order cases', () => {
  it('is 1 in the right order, 0 in the wrong one and half where all are equal', () => {
    expect(auc([1, 2, 3, 4], [0, 0, 1, 1])).toBe(1);
    expect(auc([4, 3, 2, 1], [0, 0, 1, 1])).toBe(0);
    expect(auc([1, 1, 1, 1], [0, 1, 0, 1])).toBe(0.5);
  });

  it('counts a case as often as its weight says', () => {
    expect(auc([1, 2, 3], [1, 0, 1], [1, 1, 3])).toBe(auc([1, 2, 3, 3, 3], [1, 0, 1, 1, 1]));
  });

  it('is not computable where a label is missing', () => {
    expect(auc([1, 2], [1, 1])).toBeNull();
  });
});

describe('figures of a table of counts', () => {
  const table = confusion([0, 0, 0, 1], [0, 0, 1, 1], 2);
  it('counts what was against what was said', () => {
    expect(table).toEqual([[2, 1], [0, 1]]); // prettier-ignore
  });
  it('averages F1 over labels plainly', () => {
    expect(macroF1(table)).toBeCloseTo((0.8 + 2 / 3) / 2, 10);
  });
  it('tells how often a label is right and how much of it is found', () => {
    expect(precisionRecall(table, 1)).toEqual({ precision: 0.5, recall: 1 });
  });
});

describe('calibration', () => {
  it('is off by the gap between what was said and what came', () => {
    expect(calibrationError([0.8, 0.8, 0.8, 0.8, 0.8], [1, 1, 1, 1, 0])).toBeCloseTo(0, 10);
    expect(calibrationError([0.9, 0.9], [0, 0])).toBeCloseTo(0.9, 10);
  });
});

describe('intervals', () => {
  it('are the same in every run and hold the figure', () => {
    const hits = [1, 0, 1, 1, 0, 1, 1, 0, 1, 1];
    const mean = (weights: ArrayLike<number>) => {
      const n = hits.reduce((sum, _, i) => sum + weights[i]!, 0);
      return n === 0 ? null : hits.reduce((sum, hit, i) => sum + hit * weights[i]!, 0) / n;
    };
    const groups = hits.map((_, i) => i);
    const first = interval95(mean, { groups });
    expect(first).toEqual(interval95(mean, { groups }));
    expect(first![0]).toBeLessThan(0.7);
    expect(first![1]).toBeGreaterThan(0.7);
  });

  it('of a share stay within 0 and 1', () => {
    expect(shareInterval(0, 0)).toBeNull();
    expect(shareInterval(10, 10)![1]).toBeCloseTo(1, 10);
    expect(shareInterval(5, 10)![0]).toBeCloseTo(0.2366, 3);
  });
});

describe('the floor', () => {
  const row = {
    judge: 'question',
    figure: 'AUC',
    value: 0.83,
    interval: null,
    baselines: [],
    ceiling: null,
    n: 10,
    more: true,
  } as const;

  it('lets a drop of .005 pass and no more', () => {
    expect(belowFloor([row], { 'question: AUC': 0.8345 })).toEqual([]);
    expect(belowFloor([row], { 'question: AUC': 0.836 })).toHaveLength(1);
  });

  it('knows that a smaller error is the better one', () => {
    expect(belowFloor([{ ...row, more: false }], { 'question: AUC': 0.9 })).toEqual([]);
    expect(belowFloor([{ ...row, more: false }], { 'question: AUC': 0.8 })).toHaveLength(1);
  });

  it('misses a figure that is gone', () => {
    expect(belowFloor([], { 'question: AUC': 0.8 })).toHaveLength(1);
  });

  it('says "not computable" in the table rather than a number', () => {
    expect(tableOf([{ ...row, value: null }])).toContain('not computable');
  });
});
