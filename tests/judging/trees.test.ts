import { describe, expect, it } from 'vitest';
import { binTable } from '../../src/app/train/bin-table.js';
import { fitTrees, type TreesOptions } from '../../src/app/train/fit-trees.js';
import { seededRandom } from '../../src/app/evaluate/seeded-random.js';
import { treeOdds, type Trees } from '../../src/text/trees.js';

const options: TreesOptions = {
  trees: 60, depth: 3, rate: 0.2, rows: 0.8, columns: 1, ridge: 1, least: 2, seed: 7,
}; // prettier-ignore

const random = seededRandom(3);
const cases = Array.from({ length: 600 }, () => ({ a: random(), b: random(), c: random(), always: 1 }));
/** Neither a nor b alone tells. */
const crossed = cases.map(({ a, b }) => (a > 0.5 === b > 0.5 ? 1 : 0));
const share = (model: Trees): number =>
  cases.filter((each, i) => treeOdds(model, each) > 0 === (crossed[i] === 1)).length / cases.length;

describe('boosted trees', () => {
  it('learn what no sum of single features can tell', () => {
    expect(share(fitTrees(binTable(cases), crossed, options))).toBeGreaterThan(0.95);
  });

  it('say the same for the same seed and another thing for another', () => {
    const fit = (seed: number) => JSON.stringify(fitTrees(binTable(cases), crossed, { ...options, seed }));
    expect(fit(7)).toBe(fit(7));
    expect(fit(7)).not.toBe(fit(8));
  });

  it('learn nothing from cases that do not count, and twice as much from those that count twice', () => {
    const half = (i: number): number => (i < 300 ? 1 : 0);
    const spoilt = crossed.map((label, i) => (half(i) ? label : 1 - label));
    const table = binTable(cases, { use: (i) => half(i) > 0 });
    const fit = (labels: readonly number[], use: (i: number) => number) =>
      fitTrees(table, labels, { ...options, use });
    expect(fit(spoilt, half)).toEqual(fit(crossed, half));
    expect(fit(crossed, (i) => 2 * half(i)).trees[0]).not.toEqual(fit(crossed, half).trees[0]);
  });

  it('leave out what never varies, and write cuts of four digits that ask the same when read again', () => {
    const model = fitTrees(binTable(cases), crossed, options);
    expect(model.names).toEqual(['a', 'b', 'c']);
    const short = JSON.parse(
      JSON.stringify(model, (_key, value: unknown) =>
        typeof value === 'number' ? Number(value.toPrecision(4)) : value,
      ),
    ) as Trees;
    expect(cases.map((each) => treeOdds(short, each))).toEqual(cases.map((each) => treeOdds(model, each)));
  });
});

it('a tree is walked by its cuts, a feature that is not given counting as 0', () => {
  const model: Trees = { bias: 0.5, names: ['x', 'y'], trees: [[0, 1.5, 5, -1, -2, 1, 0, 10, -1, 1, -1, 3]] };
  expect(treeOdds(model, { x: 1.5, y: 9 })).toBe(-1.5);
  expect(treeOdds(model, { x: 2 })).toBe(1.5);
  expect(treeOdds(model, { x: 2, y: 0.1 })).toBe(3.5);
});
