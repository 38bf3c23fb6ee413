import type { Features } from '../../judging/question-features.js';
import type { Logistic } from '../../judging/logistic.js';
import { fitLogistic } from './fit-logistic.js';
import { rowPacker } from './rows.js';

/** How a table is fitted. */
export interface TableOptions {
  /** Half of this times each squared weight is the penalty, beside the summed log loss. */
  readonly ridge: number;
  /** How often a case counts; 0 leaves it out. */
  readonly use?: (i: number) => number;
}

/** Fits a logistic model to named features, each scaled to deviation 1 first; a feature that a case lacks is 0. */
export function fitTable(
  cases: readonly Features[],
  labels: readonly number[],
  { ridge, use = () => 1 }: TableOptions,
): Logistic {
  const used = cases.map((_, i) => i).filter((i) => use(i) > 0);
  const scales = scalesOf(used.map((i) => cases[i]!));
  const packer = rowPacker(scales.length + 1);
  for (const i of used) {
    const features = cases[i]!;
    packer.put(0, 1);
    scales.forEach(({ name, mean, deviation }, k) =>
      packer.put(k + 1, ((features[name] ?? 0) - mean) / deviation),
    );
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
  const named = scales.map(({ name, mean, deviation }, k) => [
    name,
    [weights[k + 1]! / deviation, mean] as const,
  ]);
  return { bias: weights[0]!, weights: Object.fromEntries(named) as Logistic['weights'] };
}

interface Scale {
  readonly name: string;
  readonly mean: number;
  readonly deviation: number;
}

/** Mean and deviation of each feature that varies, by name. */
function scalesOf(cases: readonly Features[]): readonly Scale[] {
  const sums = new Map<string, { sum: number; squares: number }>();
  for (const features of cases) {
    for (const name in features) {
      const value = features[name]!;
      const known = sums.get(name) ?? { sum: 0, squares: 0 };
      sums.set(name, known);
      known.sum += value;
      known.squares += value * value;
    }
  }
  return [...sums]
    .map(([name, { sum, squares }]) => {
      const mean = sum / cases.length;
      return { name, mean, deviation: Math.sqrt(Math.max(0, squares / cases.length - mean * mean)) };
    })
    .filter(({ deviation }) => deviation > 1e-6)
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}
