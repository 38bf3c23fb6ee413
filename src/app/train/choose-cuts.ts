import { confusion, kappa, macroF1 } from '../evaluate/measures.js';

/** Share of questions that must be decided, with a little to spare. */
const decided = 0.61;

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

/** What a band aims at beside kappa: of those called 1 the share that is, and of all that are 1 the share so called. */
const aims = { right: 0.7, found: 0.4 };

/** The band of the unsure that leaves enough cases decided and gives the best kappa over those, less what it falls short of the aims. */
export function bandFor(
  chances: readonly number[],
  labels: readonly number[],
): { readonly low: number; readonly high: number } {
  const sorted = [...chances].sort((a, b) => a - b);
  let best = { low: 0.5, high: 0.5, score: -1 };
  for (let high = 0.3; high < 0.9; high += 0.01) {
    const above = sorted.filter((p) => p > high).length;
    const low = sorted[Math.max(0, Math.ceil(decided * sorted.length) - above)] ?? 0;
    if (low > high) continue;
    const score = (kappaOutside(chances, labels, low, high) ?? 0) - shortOfAims(chances, labels, high);
    if (score > best.score) best = { low, high, score };
  }
  return { low: round(best.low), high: round(best.high) };
}

function shortOfAims(chances: readonly number[], labels: readonly number[], high: number): number {
  let [called, ones, both] = [0, 0, 0];
  chances.forEach((chance, i) => {
    called += chance > high ? 1 : 0;
    ones += labels[i]!;
    both += chance > high ? labels[i]! : 0;
  });
  const short = (aim: number, hits: number, among: number): number =>
    Math.max(0, aim - (among > 0 ? hits / among : 0));
  return short(aims.right, both, called) + short(aims.found, both, ones);
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
