import { seededRandom } from './seeded-random.js';

/** How the interval is found: cases are drawn by group (a story, a passage, a question), as cases of one group resemble each other. */
export interface Resampling {
  /** Group of each case. */
  readonly groups: readonly (string | number)[];
  readonly times?: number;
}

/**
 * Percentile bootstrap interval of 95 % (Efron 1979) of a figure over resampled groups; null where it can't be computed in most draws.
 * The draws are the same in every run.
 */
export function interval95(
  figure: (weights: Uint16Array) => number | null,
  { groups, times = 400 }: Resampling,
): readonly [number, number] | null {
  const members = new Map<string | number, number[]>();
  groups.forEach((group, i) => {
    const known = members.get(group);
    if (known) known.push(i);
    else members.set(group, [i]);
  });
  const all = [...members.values()];
  const random = seededRandom(20);
  const weights = new Uint16Array(groups.length);
  const figures: number[] = [];
  for (let draw = 0; draw < times; draw++) {
    weights.fill(0);
    for (let k = 0; k < all.length; k++)
      for (const i of all[Math.floor(random() * all.length)]!) weights[i]! += 1;
    const value = figure(weights);
    if (value !== null) figures.push(value);
  }
  if (figures.length < times / 2) return null;
  figures.sort((a, b) => a - b);
  const at = (share: number): number => figures[Math.round(share * (figures.length - 1))]!;
  return [at(0.025), at(0.975)];
}

/** Wilson's interval of 95 % for `hits` of `n` (Wilson 1927); null for n = 0. */
export function shareInterval(hits: number, n: number): readonly [number, number] | null {
  if (n === 0) return null;
  const z2 = 1.959964 ** 2;
  const p = hits / n;
  const middle = (p + z2 / (2 * n)) / (1 + z2 / n);
  const half = (Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n)) * Math.sqrt(z2)) / (1 + z2 / n);
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
