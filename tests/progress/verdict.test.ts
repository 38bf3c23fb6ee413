import { describe, expect, it } from 'vitest';
import type { Level } from '../../shared/strategies.js';
import { chanceBelow } from '../../src/progress/beta.js';
import { barAsSeen, progressOf, verdictDefaults } from '../../src/progress/verdict.js';
import { monday, tries, wren } from './a-class.js';
import { lantern } from './a-shelf.js';

const sure = { ...verdictDefaults, judgeError: { question: 0, clarify: 0, 'sum-up': 0, predict: 0 } };
const levels = (met: number, missed: number): Level[] => [
  ...Array.from({ length: missed }, (): Level => 1),
  ...Array.from({ length: met }, (): Level => 2),
];

describe('The verdict on one pupil and one strategy', () => {
  it.each([
    { name: 'nothing yet', met: 0, missed: 0, verdict: 'not enough yet' },
    { name: 'four tries are too few, however poor', met: 0, missed: 4, verdict: 'not enough yet' },
    { name: 'five tries below are weak', met: 0, missed: 5, verdict: 'weak' },
    { name: 'one of five is weak', met: 1, missed: 4, verdict: 'weak' },
    { name: 'two of five point neither way', met: 2, missed: 3, verdict: 'not enough yet' },
    { name: 'four of five are on track', met: 4, missed: 1, verdict: 'on track' },
    { name: 'seven of ten are on track', met: 7, missed: 3, verdict: 'on track' },
    { name: 'six of ten point neither way', met: 6, missed: 4, verdict: 'not enough yet' },
  ])('$name', ({ met, missed, verdict }) => {
    const { rows } = tries(wren, 'sum-up', levels(met, missed));
    const progress = progressOf('sum-up', rows);
    expect(progress).toMatchObject({ tries: met + missed, met, verdict });
  });

  it('is not named on tries of one day', () => {
    const { rows } = tries(wren, 'sum-up', levels(0, 6));
    expect(
      progressOf(
        'sum-up',
        rows.map((one) => ({ ...one, day: '2026-11-02', at: monday })),
      ).verdict,
    ).toBe('not enough yet');
  });

  it('is not named on tries of one passage', () => {
    const { rows } = tries(wren, 'sum-up', levels(0, 6));
    expect(
      progressOf(
        'sum-up',
        rows.map((one) => ({ ...one, passage: lantern })),
      ).verdict,
    ).toBe('not enough yet');
  });

  it('does not count a try that nobody has settled', () => {
    const { rows } = tries(wren, 'sum-up', levels(0, 5));
    const unsure = rows.map((one, at) => (at === 0 ? { ...one, level: null } : one));
    expect(progressOf('sum-up', unsure)).toMatchObject({ tries: 4, verdict: 'not enough yet' });
  });

  it('three of eight are weak for a judge that never errs, and not for one that errs 15 % of the time', () => {
    const { rows } = tries(wren, 'sum-up', levels(3, 5));
    expect(progressOf('sum-up', rows, sure).verdict).toBe('weak');
    expect(progressOf('sum-up', rows).verdict).toBe('not enough yet');
  });

  it('takes the same three of eight for weak when a tutor has settled every one', () => {
    const { rows } = tries(wren, 'sum-up', levels(3, 5));
    const settled = rows.map((one) => ({ ...one, settledBy: 'tutor' as const }));
    expect(progressOf('sum-up', settled).verdict).toBe('weak');
  });
});

/** Chance that a pupil whose tries are seen as met at a rate is called weak at some fixed number of tries. */
function calledWeak(seenRate: number, bar: number, n: number): number {
  let chance = 0;
  let ways = 1;
  for (let met = 0; met <= n; met += 1) {
    const flagged = chanceBelow(bar, 1 + met, 1 + n - met) >= 0.95;
    if (flagged) chance += ways * seenRate ** met * (1 - seenRate) ** (n - met);
    ways = (ways * (n - met)) / (met + 1);
  }
  return chance;
}

describe("The judge's error carried into the flag", () => {
  // Calculated from the binomial distribution: a pupil exactly at the bar, seen through a judge that errs 15 % of the time.
  // 95 % sure under a flat prior is no promise of 5 in 100; it comes to 3 to 6.5 in 100 at these counts.
  it.each([5, 8, 12, 20, 30])(
    'with %i tries a pupil at the bar is called weak at most 7 times in 100',
    (n) => {
      const seen = barAsSeen(0.7, 0.15);
      expect(calledWeak(seen, seen, n)).toBeLessThanOrEqual(0.07);
    },
  );

  it('without it a pupil at the bar would be called weak more than twice as often over 30 tries', () => {
    const seen = barAsSeen(0.7, 0.15);
    expect(calledWeak(seen, 0.7, 30)).toBeGreaterThan(2 * calledWeak(seen, seen, 30));
  });
});

describe('The trend', () => {
  it.each([
    { name: 'five tries are too few', levels: [0, 0, 0, 2, 2], trend: null },
    { name: 'three of three after none of three', levels: [0, 0, 1, 2, 3, 2], trend: 'getting stronger' },
    { name: 'three of three after one of three', levels: [0, 2, 1, 2, 3, 2], trend: 'getting stronger' },
    { name: 'three of three after two of three', levels: [2, 2, 1, 2, 3, 2], trend: 'steady' },
    { name: 'none of three after three of three', levels: [2, 2, 3, 1, 0, 1], trend: 'slipping' },
    {
      name: 'only the newest ten count',
      levels: [0, 0, 0, 0, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2],
      trend: 'steady',
    },
  ] as { name: string; levels: Level[]; trend: string | null }[])(
    '$name: $trend',
    ({ levels: of, trend }) => {
      expect(progressOf('question', tries(wren, 'question', of).rows).trend).toBe(trend);
    },
  );

  it('is not told from one day', () => {
    const { rows } = tries(wren, 'question', [0, 0, 0, 2, 2, 2]);
    expect(
      progressOf(
        'question',
        rows.map((one) => ({ ...one, day: '2026-11-02' })),
      ).trend,
    ).toBeNull();
  });
});
