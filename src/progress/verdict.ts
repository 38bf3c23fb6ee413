/**
 * What the tries of one pupil on one strategy allow to be said. The tool suggests, the tutor confirms.
 *
 *     not enough yet   under 5 tries, or all on one day, or all on one passage; or enough tries that point neither way
 *     weak             P(the rate the judge would see < the bar as the judge would see it) >= 0.95
 *     on track         the share met is at least the bar
 *
 * A judge that errs with chance e sees a pupil of true rate p at p (1 - e) + (1 - p) e. So a pupil exactly at the bar of
 * 0.7 is seen at 0.64 where e is 0.15, and it is 0.64 that the count is held against. A tutor's own word has no such
 * error, so e counts only for the share of tries that no tutor has settled. `low` and `high` are of the count as seen.
 */
import type { EvidenceRow } from '../../shared/evidence.js';
import type { Strategy } from '../../shared/strategies.js';
import { chanceBelow, intervalOf } from './beta.js';
import { measuredError } from './judge-error.js';
import { trendOf, type Trend } from './trend.js';

export type Verdict = 'weak' | 'not enough yet' | 'on track';

/** When a strategy is called weak; every number is a setting with this default. */
export interface VerdictSettings {
  /** The rate that a pupil is hoped to meet. */
  readonly bar: number;
  /** How sure one must be that the rate is below the bar. */
  readonly sure: number;
  readonly tries: number;
  readonly sittings: number;
  readonly passages: number;
  /** Chance 0..0.5 that the judge of a strategy errs about "level 2 or more". */
  readonly judgeError: Readonly<Record<Strategy, number>>;
}

/** The defaults are ours; the judges' errors are those measured on labelled data. */
export const verdictDefaults: VerdictSettings = {
  bar: 0.7,
  sure: 0.95,
  tries: 5,
  sittings: 2,
  passages: 2,
  judgeError: measuredError,
};

/** What is known of one pupil on one strategy from evidence given in one way. */
export interface StrategyProgress {
  readonly tries: number;
  /** Tries at level 2 or more. */
  readonly met: number;
  /** Equal-tailed 95 % interval of the rate, nothing known before. */
  readonly low: number;
  readonly high: number;
  readonly verdict: Verdict;
  readonly trend: Trend | null;
}

/** Whether a try met the mark: level 2 or more in the tutor's table. */
export function isMet(row: EvidenceRow): boolean {
  return row.level !== null && row.level >= 2;
}

/** The bar as a judge with this error would see a pupil who is exactly at it. */
export function barAsSeen(bar: number, error: number): number {
  return bar * (1 - error) + (1 - bar) * error;
}

function verdictOf(strategy: Strategy, tries: readonly EvidenceRow[], settings: VerdictSettings): Verdict {
  const different = (of: (row: EvidenceRow) => string | null): number =>
    new Set(tries.map(of).filter((one) => one !== null)).size;
  const enough =
    tries.length >= settings.tries &&
    different((row) => row.day) >= settings.sittings &&
    different((row) => row.passage) >= settings.passages;
  if (!enough) return 'not enough yet';

  const met = tries.filter(isMet).length;
  const machineMade = tries.filter((row) => row.settledBy !== 'tutor').length;
  const error = settings.judgeError[strategy] * (machineMade / tries.length);
  const below = chanceBelow(barAsSeen(settings.bar, error), 1 + met, 1 + tries.length - met);
  if (below >= settings.sure) return 'weak';
  return met / tries.length >= settings.bar ? 'on track' : 'not enough yet';
}

/** Weighs one pupil's rows on one strategy, all given in the same way; rows without a level are no tries. */
export function progressOf(
  strategy: Strategy,
  rows: readonly EvidenceRow[],
  settings: VerdictSettings = verdictDefaults,
): StrategyProgress {
  const tries = rows.filter((row) => row.do === strategy && row.level !== null);
  const met = tries.filter(isMet).length;
  return {
    tries: tries.length,
    met,
    ...intervalOf(met, tries.length),
    verdict: verdictOf(strategy, tries, settings),
    trend: trendOf(tries),
  };
}
