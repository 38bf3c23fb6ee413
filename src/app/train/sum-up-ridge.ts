import type { SumUpFeature } from '../../judging/sum-up-features.js';
import { standing, type RidgeModel } from '../../judging/sum-up-score.js';
import { rounded } from './rounded.js';

/** A sum-up as numbers with its human score. */
export interface ScoredSumUp {
  readonly features: Readonly<Record<SumUpFeature, number>>;
  readonly score: number;
}

/** Solves a square system by elimination with row exchange; rows are changed in place, the last column is the right side. */
function solve(rows: number[][]): number[] {
  const size = rows.length;
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row;
    }
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    for (let row = 0; row < size; row++) {
      if (row === column) continue;
      const factor = rows[row]![column]! / rows[column]![column]!;
      for (let n = column; n <= size; n++) rows[row]![n]! -= factor * rows[column]![n]!;
    }
  }
  return rows.map((row, n) => row[size]! / row[n]!);
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Ridge regression of the scores on the named features; `penalty` is per case. */
export function fitRidge(
  cases: readonly ScoredSumUp[],
  names: readonly SumUpFeature[],
  penalty: number,
): RidgeModel {
  const learned = names.map((name) => {
    const values = cases.map(({ features }) => features[name]);
    const mean = rounded(average(values));
    const deviation = Math.max(1e-5, rounded(Math.sqrt(average(values.map((value) => (value - mean) ** 2)))));
    return { name, mean, deviation };
  });
  const size = names.length + 1;
  const rows = Array.from({ length: size }, () => new Array<number>(size + 1).fill(0));
  for (const { features, score } of cases) {
    const x = [...learned.map(({ name, mean, deviation }) => standing(features[name], mean, deviation)), 1];
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) rows[i]![j]! += x[i]! * x[j]!;
      rows[i]![size]! += x[i]! * score;
    }
  }
  for (let i = 0; i < names.length; i++) rows[i]![i]! += penalty * cases.length;
  const solution = solve(rows);
  const features = Object.fromEntries(
    learned.map(({ name, mean, deviation }, i) => [name, { mean, deviation, weight: rounded(solution[i]!) }]),
  );
  return { bias: rounded(solution[names.length]!), features };
}
