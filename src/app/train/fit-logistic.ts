import { minimise } from './minimise.js';
import type { Rows } from './rows.js';

/** What a logistic model is fitted to. Every kind of row has weights of its own that stay near weights shared by all kinds. */
export interface LogisticProblem {
  readonly rows: Rows;
  readonly labels: ArrayLike<number>;
  /** How often each row counts, 0 leaves it out; all once where absent. */
  readonly counts?: ArrayLike<number>;
  readonly kinds?: ArrayLike<number>;
  readonly kindCount?: number;
  /** Penalty on squared weights: half of `ridge` times each square, beside the summed log loss. */
  readonly ridge: number;
  /** Columns without penalty. */
  readonly free?: ReadonlySet<number>;
  readonly rounds?: number;
}

/** Fits by ridge-penalised maximum likelihood; gives per kind one weight a column, kind after kind. */
export function fitLogistic(problem: LogisticProblem): Float64Array {
  const { rows, kindCount = 1, rounds = 100 } = problem;
  const { width } = rows;
  const sets = kindCount === 1 ? 1 : kindCount + 1;
  const own = kindCount === 1 ? 0 : width;
  const merged = new Float64Array(width * kindCount);
  const pull = new Float64Array(width * kindCount);
  const merge = (at: Float64Array): void => {
    for (let i = 0; i < merged.length; i++) merged[i] = at[own + i]! + (own ? at[i % width]! : 0);
  };
  const end = minimise(
    (at, slope) => {
      merge(at);
      const loss = lossAndPull(problem, merged, pull);
      slope.fill(0);
      for (let i = 0; i < pull.length; i++) {
        slope[own + i]! += pull[i]!;
        if (own) slope[i % width]! += pull[i]!;
      }
      return loss + penalty(problem, at, slope);
    },
    new Float64Array(width * sets),
    { rounds },
  );
  merge(end);
  return merged;
}

function penalty({ ridge, free, rows }: LogisticProblem, at: Float64Array, slope: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < at.length; i++) {
    if (free?.has(i % rows.width)) continue;
    sum += at[i]! ** 2;
    slope[i]! += ridge * at[i]!;
  }
  return (ridge / 2) * sum;
}

/** Log loss over the rows; `pull` gets its slope by kind and column. */
function lossAndPull(problem: LogisticProblem, weights: Float64Array, pull: Float64Array): number {
  const { rows, labels, counts, kinds } = problem;
  const { starts, columns, values, width } = rows;
  pull.fill(0);
  let loss = 0;
  for (let r = 0; r + 1 < starts.length; r++) {
    const count = counts ? counts[r]! : 1;
    if (count === 0) continue;
    const from = (kinds ? kinds[r]! : 0) * width;
    const last = starts[r + 1]!;
    let odds = 0;
    for (let k = starts[r]!; k < last; k++) odds += values[k]! * weights[from + columns[k]!]!;
    const chance = 1 / (1 + Math.exp(-odds));
    loss -= count * (labels[r]! * Math.log(chance + 1e-12) + (1 - labels[r]!) * Math.log(1 - chance + 1e-12));
    const error = count * (chance - labels[r]!);
    for (let k = starts[r]!; k < last; k++) pull[from + columns[k]!]! += error * values[k]!;
  }
  return loss;
}
