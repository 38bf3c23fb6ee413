import { describe, expect, it } from 'vitest';
import { chanceBelow, chanceHigher, intervalOf } from '../../src/progress/beta.js';
import { kappaInWords, kappaOf, tableOf, weightedKappaOf } from '../../src/progress/kappa.js';

describe('Beta intervals (calculated from the Beta(1,1) prior, equal-tailed 95 %)', () => {
  it.each([
    { met: 0, tries: 5, low: 0.0042, high: 0.4593 },
    { met: 1, tries: 5, low: 0.0433, high: 0.6412 },
    { met: 2, tries: 5, low: 0.1181, high: 0.7772 },
    { met: 3, tries: 8, low: 0.137, high: 0.7007 },
    { met: 7, tries: 10, low: 0.3903, high: 0.8907 },
    { met: 13, tries: 20, low: 0.4303, high: 0.8189 },
  ])('$met of $tries gives $low to $high', ({ met, tries, low, high }) => {
    const interval = intervalOf(met, tries);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });

  it('530 of 1000 gives .499 to .561 (published worked example with a uniform prior)', () => {
    const interval = intervalOf(530, 1000);
    expect(interval.low).toBeCloseTo(0.499, 3);
    expect(interval.high).toBeCloseTo(0.561, 3);
  });

  it.each([
    { met: 1, tries: 5, below: 0.9891 },
    { met: 2, tries: 5, below: 0.9295 },
    { met: 3, tries: 8, below: 0.9747 },
    { met: 7, tries: 10, below: 0.5696 },
  ])('after $met of $tries the rate is under 0.7 with probability $below', ({ met, tries, below }) => {
    expect(chanceBelow(0.7, 1 + met, 1 + tries - met)).toBeCloseTo(below, 4);
  });

  it('two equal counts are each as likely to be the higher one (by symmetry)', () => {
    expect(chanceHigher({ met: 3, tries: 7 }, { met: 3, tries: 7 })).toBeCloseTo(0.5, 10);
  });

  it('one met after one missed: 5 in 6 (calculated: the integral of 2p (2p - p^2) over 0..1)', () => {
    // Later rate has density 2p, the earlier one is below p with probability 1 - (1 - p)^2 = 2p - p^2.
    const byHand = 2 * (2 / 3 - 1 / 4);
    expect(chanceHigher({ met: 1, tries: 1 }, { met: 0, tries: 1 })).toBeCloseTo(byHand, 10);
  });
});

describe('Kappa (Cohen 1960)', () => {
  it('three categories in shares: observed .70, chance .41, kappa .492 (Cohen 1960)', () => {
    const { observed, chance, kappa } = kappaOf([
      [0.44, 0.07, 0.09],
      [0.05, 0.2, 0.05],
      [0.01, 0.03, 0.06],
    ]);
    expect(observed).toBeCloseTo(0.7, 10);
    expect(chance).toBeCloseTo(0.41, 10);
    expect(kappa).toBeCloseTo(0.492, 3);
  });

  it('fifty cases, 20/5/10/15: kappa .40 (Cohen 1960, worked example)', () => {
    expect(
      kappaOf([
        [20, 5],
        [10, 15],
      ]).kappa,
    ).toBeCloseTo(0.4, 10);
  });

  it('is not computable where chance alone agrees fully', () => {
    const { kappa } = kappaOf([
      [12, 0],
      [0, 0],
    ]);
    expect(kappa).toBeNull();
    expect(kappaInWords(kappa)).toBe('not computable');
    expect(kappaOf([]).kappa).toBeNull();
  });

  it('squared weights: a near miss costs less than a far one, and two categories weigh as none do (calculated)', () => {
    const near =
      weightedKappaOf(
        tableOf(
          [
            [0, 0],
            [1, 1],
            [2, 2],
            [3, 2],
          ],
          4,
        ),
      ).kappa ?? NaN;
    const far =
      weightedKappaOf(
        tableOf(
          [
            [0, 0],
            [1, 1],
            [2, 2],
            [3, 0],
          ],
          4,
        ),
      ).kappa ?? NaN;
    expect(near).toBeGreaterThan(far);
    expect(
      weightedKappaOf([
        [20, 5],
        [10, 15],
      ]).kappa,
    ).toBeCloseTo(0.4, 10);
    // Squared distances: 1 over the four pairs; 14 + 6 + 6 + 6 over all 16 pairings of a row with a column.
    expect(near).toBeCloseTo(1 - 1 / 4 / (32 / 16), 10);
  });

  it.each([
    { kappa: -0.1, band: 'poor' },
    { kappa: 0.2, band: 'slight' },
    { kappa: 0.4, band: 'fair' },
    { kappa: 0.6, band: 'moderate' },
    { kappa: 0.8, band: 'substantial' },
    { kappa: 0.81, band: 'almost perfect' },
  ])('$kappa is $band (Landis & Koch 1977)', ({ kappa, band }) => {
    expect(kappaInWords(kappa)).toBe(band);
  });
});
