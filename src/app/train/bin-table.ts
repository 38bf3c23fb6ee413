import type { Features } from '../../judging/question-features.js';

/** Cases whose features are put into bins, made once and fitted on many parts. */
export interface BinTable {
  readonly names: readonly string[];
  /** Of each feature the cuts between its bins, ascending: bin b holds values up to cut b. */
  readonly cuts: readonly Float64Array[];
  /** Bin of feature k of case i at i * names.length + k. */
  readonly bins: Uint8Array;
  readonly cases: number;
}

/** Puts each feature that varies among the cases for which `use` holds into at most `most` bins of like count; a feature that a case lacks is 0. Cuts have four digits, so that weights written short ask the same. */
export function binTable(
  cases: readonly Features[],
  { most = 48, use = () => true }: { readonly most?: number; readonly use?: (i: number) => boolean } = {},
): BinTable {
  const seen = cases.filter((_, i) => use(i));
  const all = new Set<string>();
  for (const features of seen) for (const name in features) all.add(name);
  const laid = [...all]
    .sort()
    .map((name) => ({
      name,
      cuts: cutsOf(
        Float64Array.from(seen, (each) => each[name] ?? 0),
        most,
      ),
    }))
    .filter(({ cuts }) => cuts.length > 0);
  const bins = new Uint8Array(cases.length * laid.length);
  laid.forEach(({ name, cuts }, k) => {
    cases.forEach((features, i) => (bins[i * laid.length + k] = binOf(features[name] ?? 0, cuts)));
  });
  return {
    names: laid.map(({ name }) => name),
    cuts: laid.map(({ cuts }) => cuts),
    bins,
    cases: cases.length,
  };
}

/** Cuts midway between neighbouring values: between all where they are few, else so that each bin holds its share of cases. */
function cutsOf(values: Float64Array, most: number): Float64Array {
  values.sort();
  const changes = values.reduce((sum, value, i) => sum + (i > 0 && value !== values[i - 1] ? 1 : 0), 0);
  const share = changes < most ? 1 : values.length / most;
  const cuts: number[] = [];
  let filled = 0;
  for (let i = 1; i < values.length; i++) {
    if (values[i] === values[i - 1] || i - filled < share) continue;
    const cut = Number(((values[i]! + values[i - 1]!) / 2).toPrecision(4));
    if (cut <= (cuts.at(-1) ?? -Infinity)) continue;
    cuts.push(cut);
    filled = i;
  }
  return Float64Array.from(cuts);
}

function binOf(value: number, cuts: Float64Array): number {
  let low = 0;
  let high = cuts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (value <= cuts[middle]!) high = middle;
    else low = middle + 1;
  }
  return low;
}
