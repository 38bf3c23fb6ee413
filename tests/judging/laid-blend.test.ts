import { expect, it } from 'vitest';
import { fitBlend } from '../../src/app/train/fit-blend.js';
import { seededRandom } from '../../src/app/evaluate/seeded-random.js';
import { blendOdds } from '../../src/judging/blend.js';
import { laidOdds, laidValues, layBlend, namesIn } from '../../src/judging/laid-blend.js';

const random = seededRandom(5);
const cases = Array.from({ length: 400 }, () => ({ a: random(), b: random(), c: random() }));
/** Of three, one is turned round by chance. */
const labels = cases.map(({ a, b }) => ((a > 0.5 && b > 0.3) !== random() < 0.15 ? 1 : 0));
const options = {
  ridge: 1,
  trees: { trees: 40, depth: 3, rate: 0.2, rows: 0.8, columns: 1, ridge: 1, least: 2, seed: 1 },
  use: () => true,
  part: (i: number) => i % 4,
};
const { blend, unseen } = fitBlend(cases, labels, { ...options, parts: 4 });

it('a blend laid out as arrays says what the blend says, also among names that it does not use', () => {
  const names = ['0', ...namesIn([blend], blend.logistic), 'zz'];
  const laid = layBlend(blend, names);
  for (const each of [...cases.slice(0, 50), { a: 0.7 }, {}])
    expect(laidOdds(laid, laidValues(each, names))).toBeCloseTo(blendOdds(blend, each), 9);
});

it('odds unseen are stretched until their mean chance is the share of label 1', () => {
  const mean = unseen.reduce((sum, odds) => sum + 1 / (1 + Math.exp(-odds)), 0) / unseen.length;
  expect(mean).toBeCloseTo(labels.reduce<number>((sum, label) => sum + label, 0) / labels.length, 2);
  expect(blend.slope).toBeLessThan(1);
});

it('what a case is told unseen comes from blends that never met its part', () => {
  const spoilt = labels.map((label, i) => (i % 4 === 2 ? 1 - label : label));
  const other = fitBlend(cases, spoilt, { ...options, parts: 4 });
  const bare = (fitted: typeof other, i: number): number =>
    (fitted.unseen[i]! - fitted.blend.shift) / fitted.blend.slope;
  expect(bare(other, 2)).toBeCloseTo(bare({ blend, unseen }, 2), 6);
  expect(bare(other, 1)).not.toBeCloseTo(bare({ blend, unseen }, 1), 3);
});

it('with no parts nothing is unseen and nothing stretched', () => {
  const fitted = fitBlend(cases, labels, { ...options, parts: 0 });
  expect(fitted.blend).toMatchObject({ slope: 1, shift: 0 });
  expect(fitted.unseen.every((odds) => odds === 0)).toBe(true);
});
