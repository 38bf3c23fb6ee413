import { confusion, kappa, macroF1 } from '../evaluate/measures.js';

/** Share of questions that must be decided. */
const decided = 0.62;
/** What "inferential" must reach, with a little to spare. */
const precision = 0.72;

/** The chance above which calling a case 1 gives the best macro-F1. */
export function bestCut(chances: readonly number[], labels: readonly number[]): number {
  let best = { cut: 0.5, score: -1 };
  for (let cut = 0.2; cut <= 0.7; cut += 0.01) {
    const score =
      macroF1(
        confusion(
          labels,
          chances.map((p) => (p > cut ? 1 : 0)),
          2,
        ),
      ) ?? 0;
    if (score > best.score) best = { cut: round(cut), score };
  }
  return best.cut;
}

/** The band of the unsure: `high` is the lowest at which the called ones are right often enough; `low` decides enough of the rest, and more where kappa gains. */
export function bandFor(
  chances: readonly number[],
  labels: readonly number[],
): { readonly low: number; readonly high: number } {
  let high = 0.9;
  for (let at = 0.9; at >= 0.3; at -= 0.005) {
    const called = chances.flatMap((p, i) => (p > at ? [labels[i]!] : []));
    const right = called.reduce((sum, label) => sum + label, 0) / Math.max(1, called.length);
    if (called.length < 20 || right >= precision) high = at;
  }
  const above = chances.filter((p) => p > high).length;
  const sorted = chances.filter((p) => p <= high).sort((a, b) => a - b);
  const needed = Math.min(sorted.length - 1, Math.max(0, Math.ceil(decided * chances.length) - above));
  const least = sorted[needed] ?? high;
  let best = { low: least, score: -1 };
  for (let low = least; low < Math.min(high, least + 0.15); low += 0.005) {
    const score = kappaOutside(chances, labels, low, high) ?? 0;
    if (score > best.score) best = { low, score };
  }
  return { low: round(best.low), high: round(high) };
}

/** Kappa over the cases that are decided. */
export function kappaOutside(
  chances: readonly number[],
  labels: readonly number[],
  low: number,
  high: number,
): number | null {
  const sure = chances.map((_, i) => i).filter((i) => chances[i]! < low || chances[i]! > high);
  return kappa(
    confusion(
      sure.map((i) => labels[i]!),
      sure.map((i) => (chances[i]! > high ? 1 : 0)),
      2,
    ),
  );
}

const round = (number: number): number => Math.round(number * 1e4) / 1e4;
