/**
 * Whether a pupil's tries go up or down. The newest ten tries, oldest first, are cut into two halves (of an odd number
 * the middle one is left out), and the question is how sure one may be that the later half's rate is the higher one.
 * Fewer than six tries, or tries of one day only, have no trend. The numbers are ours.
 */
import type { EvidenceRow } from '../../shared/evidence.js';
import { chanceHigher } from './beta.js';

export type Trend = 'getting stronger' | 'slipping' | 'steady';

const fewest = 6;
const newest = 10;
/** Three of three after one of three is told (0.93), three of three after two of three is not (0.79). */
const sure = 0.9;

function countOf(rows: readonly EvidenceRow[]): { met: number; tries: number } {
  return { met: rows.filter((row) => (row.level ?? 0) >= 2).length, tries: rows.length };
}

/** The trend of one pupil's tries on one strategy, given in one way; null where there are too few. */
export function trendOf(tries: readonly EvidenceRow[]): Trend | null {
  const recent = tries.toSorted((a, b) => a.at - b.at).slice(-newest);
  if (recent.length < fewest || new Set(recent.map((row) => row.day)).size < 2) return null;
  const half = Math.floor(recent.length / 2);
  const up = chanceHigher(countOf(recent.slice(-half)), countOf(recent.slice(0, half)));
  if (up >= sure) return 'getting stronger';
  return up <= 1 - sure ? 'slipping' : 'steady';
}
