import type { Weights } from './measures.js';

/** Two sum-ups of one passage, by number, of which people scored the first higher. */
export interface SumUpPair {
  readonly higher: number;
  readonly lower: number;
}

const lengthApart = 1.1;
const scoreApart = 0.5;

/** Pairs whose word counts lie within 10 % and whose human scores lie more than half a deviation apart: length alone tells little there. */
export function pairsOf<Score extends string>(
  cases: readonly ({ readonly words: number } & Readonly<Record<Score, number>>)[],
  score: Score,
): readonly SumUpPair[] {
  const order = cases.map((_, n) => n).sort((a, b) => cases[a]!.words - cases[b]!.words || a - b);
  const pairs: SumUpPair[] = [];
  for (let n = 0; n < order.length; n++) {
    for (let m = n + 1; m < order.length; m++) {
      const [one, other] = [order[n]!, order[m]!];
      if (cases[other]!.words > cases[one]!.words * lengthApart) break;
      const apart = cases[one]![score] - cases[other]![score];
      if (Math.abs(apart) <= scoreApart) continue;
      pairs.push(apart > 0 ? { higher: one, lower: other } : { higher: other, lower: one });
    }
  }
  return pairs;
}

/** Share of pairs that the expected scores put in the people's order, a tie half; null without pairs. */
export function shareInOrder(
  pairs: readonly SumUpPair[],
  expected: readonly number[],
  weights?: Weights,
): number | null {
  let all = 0;
  let right = 0;
  for (const { higher, lower } of pairs) {
    const weight = weights ? weights[higher]! * weights[lower]! : 1;
    all += weight;
    const apart = expected[higher]! - expected[lower]!;
    if (apart > 0) right += weight;
    else if (apart === 0) right += weight / 2;
  }
  return all === 0 ? null : right / all;
}
