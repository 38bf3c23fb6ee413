/**
 * Agreement beyond chance between two who labelled the same things (Cohen 1960). A table holds counts or shares: rows
 * are the first one's labels, columns the second one's, in the same order. With squared weights a near miss of ordered
 * levels costs less than a far one.
 */

/** How two agree: observed and chance agreement 0..1, and kappa, null where chance alone would agree fully. */
export interface Agreement {
  readonly observed: number;
  readonly chance: number;
  readonly kappa: number | null;
}

/** How much two labels count as the same, 0..1. */
type Credit = (first: number, second: number) => number;

const same: Credit = (first, second) => (first === second ? 1 : 0);

function agreement(table: readonly (readonly number[])[], credit: Credit): Agreement {
  const size = table.length;
  if (table.some((row) => row.length !== size)) {
    throw new Error(
      `Cannot compute agreement, expected a square table, got rows of other lengths than ${size}`,
    );
  }
  const total = table.flat().reduce((sum, count) => sum + count, 0);
  if (total === 0) return { observed: 0, chance: 0, kappa: null };
  const rows = table.map((row) => row.reduce((sum, count) => sum + count, 0) / total);
  const columns = table.map((_, at) => table.reduce((sum, row) => sum + (row[at] ?? 0), 0) / total);
  let observed = 0;
  let chance = 0;
  table.forEach((row, first) =>
    row.forEach((count, second) => {
      observed += (credit(first, second) * count) / total;
      chance += credit(first, second) * (rows[first] ?? 0) * (columns[second] ?? 0);
    }),
  );
  const room = 1 - chance;
  return { observed, chance, kappa: room < 1e-12 ? null : (observed - chance) / room };
}

/** Cohen's kappa of a square table. */
export function kappaOf(table: readonly (readonly number[])[]): Agreement {
  return agreement(table, same);
}

/** Kappa with squared weights, for labels in order such as levels 0 to 3. */
export function weightedKappaOf(table: readonly (readonly number[])[]): Agreement {
  const far = Math.max(1, table.length - 1);
  return agreement(table, (first, second) => 1 - ((first - second) / far) ** 2);
}

/** Names of bands of kappa with the highest value that still belongs to each (Landis & Koch 1977). */
const bands = [
  ['slight', 0.2],
  ['fair', 0.4],
  ['moderate', 0.6],
  ['substantial', 0.8],
] as const;

/** Kappa in words; "not computable" for null. */
export function kappaInWords(kappa: number | null): string {
  if (kappa === null) return 'not computable';
  if (kappa < 0) return 'poor';
  return bands.find(([, upTo]) => kappa <= upTo)?.[0] ?? 'almost perfect';
}

/** The square table of pairs of labels 0..size-1: first one's label in the row, second one's in the column. */
export function tableOf(pairs: readonly (readonly [number, number])[], size: number): number[][] {
  const table = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  for (const [first, second] of pairs) {
    const row = table[first];
    if (row?.[second] !== undefined) row[second] += 1;
  }
  return table;
}

/** Times that a set of pairs is drawn anew for a range. */
const redraws = 400;

/**
 * 95 % of the weighted kappa of pairs of labels 0..size-1, by drawing as many pairs again with putting back (percentile
 * bootstrap, Efron 1979, from memory); the same seed gives the same range. Nulls where kappa is not computable.
 */
export function kappaRange(
  pairs: readonly (readonly [number, number])[],
  size: number,
  seed: number,
): { readonly low: number | null; readonly high: number | null } {
  if (weightedKappaOf(tableOf(pairs, size)).kappa === null) return { low: null, high: null };
  let mixed = seed | 1;
  const next = (): number => {
    // Marsaglia's shifts of 13, 17 and 5 (2003).
    mixed ^= mixed << 13;
    mixed ^= mixed >>> 17;
    mixed ^= mixed << 5;
    return (mixed >>> 0) % pairs.length;
  };
  const drawnAgain = Array.from({ length: redraws }, () => {
    const again = pairs.map(() => pairs[next()] ?? ([0, 0] as const));
    return weightedKappaOf(tableOf(again, size)).kappa ?? 1;
  }).toSorted((a, b) => a - b);
  return {
    low: drawnAgain[Math.floor(redraws * 0.025)] ?? null,
    high: drawnAgain[Math.ceil(redraws * 0.975) - 1] ?? null,
  };
}
