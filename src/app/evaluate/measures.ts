/*
 * Figures by which a judge is measured. Every figure takes optional weights, one a case: how often the case counts.
 * That is what a bootstrap varies, so that each figure gets its interval from the same few lines.
 */

/** How often each case counts; all once where absent. */
export type Weights = ArrayLike<number> | undefined;

/** Area under the ROC curve: the chance that a case of label 1 scores above one of label 0, ties half; null where a label is missing. */
export function auc(
  scores: readonly number[],
  labels: readonly number[],
  weights?: Weights,
  order = ascending(scores),
): number | null {
  let below = 0;
  let wins = 0;
  let ones = 0;
  for (let i = 0; i < order.length;) {
    let zerosHere = 0;
    let onesHere = 0;
    const score = scores[order[i]!]!;
    for (; i < order.length && scores[order[i]!] === score; i++) {
      const weight = weights ? weights[order[i]!]! : 1;
      if (labels[order[i]!]) onesHere += weight;
      else zerosHere += weight;
    }
    wins += onesHere * (below + zerosHere / 2);
    below += zerosHere;
    ones += onesHere;
  }
  return ones > 0 && below > 0 ? wins / (ones * below) : null;
}

/** Indices of the scores from lowest to highest, for `auc` when it is asked again with other weights. */
export function ascending(scores: readonly number[]): readonly number[] {
  return scores.map((_, i) => i).sort((a, b) => scores[a]! - scores[b]! || a - b);
}

/** Counts of cases, `table[actual][said]`, both as indices of labels. */
export function confusion(
  actual: readonly number[],
  said: readonly number[],
  labels: number,
  weights?: Weights,
): readonly (readonly number[])[] {
  const table = Array.from({ length: labels }, () => new Array<number>(labels).fill(0));
  for (let i = 0; i < actual.length; i++) table[actual[i]!]![said[i]!]! += weights ? weights[i]! : 1;
  return table;
}

/** F1 of each label, averaged plainly; null for an empty table. */
export function macroF1(table: readonly (readonly number[])[]): number | null {
  const { rows, columns, total } = margins(table);
  if (total === 0) return null;
  const scores = table.map((row, k) => {
    const both = rows[k]! + columns[k]!;
    return both === 0 ? 1 : (2 * row[k]!) / both;
  });
  return scores.reduce((sum, score) => sum + score, 0) / scores.length;
}

/** Share of cases on the diagonal, null for an empty table. */
export function accuracy(table: readonly (readonly number[])[]): number | null {
  const { total } = margins(table);
  return total === 0 ? null : table.reduce((sum, row, k) => sum + row[k]!, 0) / total;
}

/** Cohen's kappa (Cohen 1960); null where chance agreement is 1, which is "not computable". */
export function kappa(table: readonly (readonly number[])[]): number | null {
  return weightedKappa(table, (i, j) => (i === j ? 0 : 1));
}

/** Kappa with quadratic weights, for ordered labels such as levels (Cohen 1968). */
export function quadraticKappa(table: readonly (readonly number[])[]): number | null {
  return weightedKappa(table, (i, j) => (i - j) ** 2);
}

function weightedKappa(
  table: readonly (readonly number[])[],
  cost: (i: number, j: number) => number,
): number | null {
  const { rows, columns, total } = margins(table);
  let seen = 0;
  let expected = 0;
  table.forEach((row, i) => {
    row.forEach((count, j) => {
      seen += cost(i, j) * count;
      expected += (cost(i, j) * rows[i]! * columns[j]!) / total;
    });
  });
  return total === 0 || expected < 1e-12 ? null : 1 - seen / expected;
}

/** Precision and recall of one label, null where nothing was said or nothing is there. */
export function precisionRecall(
  table: readonly (readonly number[])[],
  label: number,
): { readonly precision: number | null; readonly recall: number | null } {
  const { rows, columns } = margins(table);
  const hits = table[label]![label]!;
  return {
    precision: columns[label] ? hits / columns[label] : null,
    recall: rows[label] ? hits / rows[label] : null,
  };
}

/** Expected calibration error: gap between said and seen share of label 1 over ten bins of equal width, weighted by cases. */
export function calibrationError(
  probabilities: readonly number[],
  labels: readonly number[],
  weights?: Weights,
): number | null {
  const bins = Array.from({ length: 10 }, () => ({ said: 0, seen: 0 }));
  let total = 0;
  probabilities.forEach((p, i) => {
    const weight = weights ? weights[i]! : 1;
    const bin = bins[Math.min(9, Math.floor(p * 10))]!;
    bin.said += p * weight;
    bin.seen += (labels[i] ? 1 : 0) * weight;
    total += weight;
  });
  return total === 0 ? null : bins.reduce((sum, bin) => sum + Math.abs(bin.said - bin.seen), 0) / total;
}

function margins(table: readonly (readonly number[])[]): {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly total: number;
} {
  const rows = table.map((row) => row.reduce((sum, count) => sum + count, 0));
  const columns = table.map((_, k) => table.reduce((sum, row) => sum + row[k]!, 0));
  return { rows, columns, total: rows.reduce((sum, count) => sum + count, 0) };
}
