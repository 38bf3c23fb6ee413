import type { Concern, Learned } from '../../safety/learned.js';
import { fitLogistic } from './fit-logistic.js';
import { packRows } from './rows.js';
import type { ScreenCase } from './screen-cases.js';

/** Features of fewer posts are left out. */
const fewest = 2;
/** Of 1, 1.5, 4, 10 and 20, with each writer left out in turn, 1 to 1.5 kept most recall at 5 % false alarms. */
const ridge = 1.5;
/** Weights nearer to 0 change no answer and are left out. */
const least = 0.03;

/** Fits one concern's model to the posts that `use` takes; the threshold is chosen elsewhere. */
export function fitConcern(
  cases: readonly ScreenCase[],
  concern: Concern,
  use: (one: ScreenCase) => boolean,
): Omit<Learned, 'from'> {
  const used = cases.filter((one) => one.labels[concern] !== null && use(one));
  const columns = columnsOf(used);
  const rows = packRows(
    used.map(({ features }) => [
      [0, 1] as const,
      ...features.flatMap((name) => {
        const column = columns.get(name);
        return column === undefined ? [] : [[column, 1] as const];
      }),
    ]),
    columns.size + 1,
  );
  const weights = fitLogistic({
    rows,
    labels: used.map((one) => (one.labels[concern] === true ? 1 : 0)),
    ridge,
    free: new Set([0]),
    rounds: 60,
  });
  const named = [...columns].map(([name, column]) => [name, weights[column] ?? 0] as const);
  return {
    bias: weights[0] ?? 0,
    weights: Object.fromEntries(named.filter(([, weight]) => Math.abs(weight) >= least)),
  };
}

function columnsOf(cases: readonly ScreenCase[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { features } of cases)
    for (const name of features) counts.set(name, (counts.get(name) ?? 0) + 1);
  const names = [...counts].filter(([, count]) => count >= fewest).map(([name]) => name);
  return new Map(names.map((name, column) => [name, column + 1]));
}

/** Probability of a post by a fitted model. */
export function chanceBy({ bias, weights }: Omit<Learned, 'from'>, features: readonly string[]): number {
  let odds = bias;
  for (const name of features) odds += weights[name] ?? 0;
  return 1 / (1 + Math.exp(-odds));
}

/** Each post's probability by a model that never saw a post of its writer. */
export function chancesLeftOut(cases: readonly ScreenCase[], concern: Concern): readonly number[] {
  const writers = [...new Set(cases.map(({ writer }) => writer))];
  const models = new Map(
    writers.map((writer) => [writer, fitConcern(cases, concern, (one) => one.writer !== writer)]),
  );
  return cases.map((one) => {
    const model = models.get(one.writer);
    return model === undefined ? 0 : chanceBy(model, one.features);
  });
}
