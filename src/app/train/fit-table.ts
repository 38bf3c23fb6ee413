import type { Features } from '../../judging/question-features.js';
import type { Logistic } from '../../judging/logistic.js';
import { fitLogistic } from './fit-logistic.js';
import { rowPacker } from './rows.js';

/** Fits a logistic model to named features, each scaled to deviation 1 first; only cases for which `use` holds count. */
export function fitTable(
  cases: readonly Features[],
  labels: readonly number[],
  { ridge, use = () => 1 }: { readonly ridge: number; readonly use?: (i: number) => number },
): Logistic {
  const used = cases.map((_, i) => i).filter((i) => use(i) > 0);
  const names = namesIn(used.map((i) => cases[i]!));
  const scales = names.map((name) => scaleOf(used.map((i) => cases[i]![name] ?? 0)));
  const kept = names.map((_, k) => k).filter((k) => scales[k]!.deviation > 1e-9);
  const packer = rowPacker(kept.length + 1);
  for (const i of used) {
    packer.put(0, 1);
    kept.forEach((k, column) => {
      const { mean, deviation } = scales[k]!;
      packer.put(column + 1, ((cases[i]![names[k]!] ?? 0) - mean) / deviation);
    });
    packer.endRow();
  }
  const weights = fitLogistic({
    rows: packer.rows(),
    labels: used.map((i) => labels[i]!),
    counts: used.map(use),
    ridge,
    free: new Set([0]),
    rounds: 150,
  });
  const named = kept.map((k, column) => {
    const { mean, deviation } = scales[k]!;
    return [names[k]!, [weights[column + 1]! / deviation, mean] as const] as const;
  });
  return { bias: weights[0]!, weights: Object.fromEntries(named) };
}

function namesIn(cases: readonly Features[]): readonly string[] {
  const names = new Set<string>();
  for (const features of cases) for (const name in features) names.add(name);
  return [...names].sort();
}

function scaleOf(values: readonly number[]): { readonly mean: number; readonly deviation: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
  return { mean, deviation: Math.sqrt(spread) };
}
