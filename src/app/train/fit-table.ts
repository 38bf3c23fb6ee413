import type { Features } from '../../judging/question-features.js';
import type { Logistic } from '../../judging/logistic.js';
import { fitLogistic } from './fit-logistic.js';
import { packRows } from './rows.js';

/** Fits a logistic model to named features, each scaled to deviation 1 first; only cases for which `use` holds count. */
export function fitTable(
  cases: readonly Features[],
  labels: readonly number[],
  { ridge, use = () => 1 }: { readonly ridge: number; readonly use?: (i: number) => number },
): Logistic {
  const used = cases.map((_, i) => i).filter((i) => use(i) > 0);
  const names = [...new Set(used.flatMap((i) => Object.keys(cases[i]!)))].sort();
  const scales = names.map((name) => scaleOf(used.map((i) => cases[i]![name] ?? 0)));
  const kept = names.map((_, k) => k).filter((k) => scales[k]!.deviation > 1e-9);
  const rows = used.map((i) => {
    const scaled = kept.map((k, column) => {
      const { mean, deviation } = scales[k]!;
      return [column + 1, ((cases[i]![names[k]!] ?? 0) - mean) / deviation] as const;
    });
    return [[0, 1] as const, ...scaled];
  });
  const weights = fitLogistic({
    rows: packRows(rows, kept.length + 1),
    labels: used.map((i) => labels[i]!),
    counts: used.map(use),
    ridge,
    free: new Set([0]),
    rounds: 200,
  });
  const named = kept.map((k, column) => {
    const { mean, deviation } = scales[k]!;
    return [names[k]!, [weights[column + 1]! / deviation, mean] as const] as const;
  });
  return { bias: weights[0]!, weights: Object.fromEntries(named) };
}

function scaleOf(values: readonly number[]): { readonly mean: number; readonly deviation: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
  return { mean, deviation: Math.sqrt(spread) };
}
