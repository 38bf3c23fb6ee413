import type { HeldTimes, SegmentTimes } from '../../shared/events.js';
import type { Instant } from '../../shared/time.js';
import {
  endOfSchoolDay,
  isSchoolDay,
  localAt,
  nextMorning,
  nextOpen,
  nextSession,
  openMinutes,
  plusOpen,
  type SchoolTime,
} from './hours.js';
import type { SegmentState } from './state.js';

/** The numbers of the rules, all ours: open minutes unless said otherwise. */
export const numbers = {
  nudge: 180,
  offer: 360,
  spare: 480,
  /** Share of the time after which the leader wraps up. */
  wrap: 0.6,
  quorumNotBefore: 240,
  /** Clock minutes from the end of a leg to the live session. */
  beforeSession: 180,
  heldSpare: 240,
  heldTutor: 660,
  heldDeputy: 1380,
  legSegments: 3,
  openedPerDay: 2,
  /** Minute of the day from which the next segment waits for the morning. */
  opensBefore: 17 * 60,
  lateSchoolDays: 7,
  /** A deadline that is found this much too late fell while the machine slept. */
  slept: 30,
  undoHours: 24,
} as const;

const minute = 60_000;

/** The deadlines of a segment that opens now; none lies after the leg's end. */
export function segmentTimes(time: SchoolTime, at: Instant, legEndsAt: Instant | null): SegmentTimes {
  const from = nextOpen(time, at);
  const cap = (instant: Instant): Instant => Math.min(instant, legEndsAt ?? instant);
  const closesAt = cap(endOfSchoolDay(time, from, 2));
  const dayEnd = cap(endOfSchoolDay(time, from, 1));
  const enough = openMinutes(time, from, dayEnd) >= numbers.quorumNotBefore;
  return {
    nudgeAt: plusOpen(time, from, numbers.nudge),
    offerAt: plusOpen(time, from, numbers.offer),
    spareAt: plusOpen(time, from, numbers.spare),
    wrapAt: plusOpen(time, from, numbers.wrap * openMinutes(time, from, closesAt)),
    quorumAt: enough ? dayEnd : closesAt,
    closesAt,
    closesOn: localAt(time, closesAt),
  };
}

/** Deadlines after a stretch that doesn't count (a pause, a machine that slept): what was left of open time is left again, and the close falls at a day's end. */
export function timesAfterGap(
  time: SchoolTime,
  { times }: SegmentState,
  from: Instant,
  to: Instant,
  legEndsAt: Instant | null,
): SegmentTimes {
  const moved = (instant: Instant): Instant =>
    instant < from ? instant : plusOpen(time, to, openMinutes(time, from, instant));
  const dayEnd = (instant: Instant): Instant => {
    const end = endOfSchoolDay(time, Math.max(moved(instant) - 1, nextOpen(time, to)), 1);
    return Math.min(end, legEndsAt ?? end);
  };
  const closesAt = dayEnd(times.closesAt);
  return {
    nudgeAt: moved(times.nudgeAt),
    offerAt: moved(times.offerAt),
    spareAt: moved(times.spareAt),
    wrapAt: moved(times.wrapAt),
    quorumAt: Math.min(dayEnd(times.quorumAt), closesAt),
    closesAt,
    closesOn: localAt(time, closesAt),
  };
}

/** When somebody is called about a post that waits; a leader's question also has the spare one stand in. */
export function heldTimes(time: SchoolTime, at: Instant, leadersQuestion: boolean): HeldTimes {
  return {
    spareAt: leadersQuestion ? plusOpen(time, at, numbers.heldSpare) : null,
    remindAt: plusOpen(time, at, numbers.heldTutor),
    deputyAt: plusOpen(time, at, numbers.heldDeputy),
  };
}

/** A leg as planned from an instant. */
export interface LegPlan {
  readonly firstOpensAt: Instant;
  readonly endsAt: Instant | null;
  readonly sessionAt: Instant | null;
  readonly segments: number;
}

/** School days between two instants that leave room for a segment, at most three. */
function roomyDays(time: SchoolTime, from: Instant, to: Instant): number {
  const { opensMinute, closesMinute } = time.settings;
  const needed = Math.min(numbers.quorumNotBefore, closesMinute - opensMinute);
  let days = 0;
  let start = from;
  while (start < to && days < numbers.legSegments) {
    const end = Math.min(to, endOfSchoolDay(time, start, 1));
    if (openMinutes(time, start, end) >= needed) days += 1;
    start = nextMorning(time, start);
  }
  return days;
}

/** Plans a leg: one segment a school day, three at most, up to the first session that leaves room for one. */
export function planLeg(time: SchoolTime, at: Instant, segmentsLeft: number): LegPlan {
  const firstOpensAt = nextOpen(time, at);
  let session = nextSession(time, at);
  for (let tries = 0; session !== null && tries < 60; tries += 1) {
    const endsAt = session - numbers.beforeSession * minute;
    const days = roomyDays(time, firstOpensAt, endsAt);
    if (days > 0) {
      return { firstOpensAt, endsAt, sessionAt: session, segments: Math.min(days, segmentsLeft) };
    }
    session = nextSession(time, session);
  }
  const segments = Math.min(numbers.legSegments, segmentsLeft);
  return { firstOpensAt, endsAt: null, sessionAt: null, segments };
}

/** When the next segment of a leg opens after a close: at once before 17:00 and not thrice a day, else the next morning. */
export function nextOpening(time: SchoolTime, at: Instant, openedToday: number): Instant {
  const there = localAt(time, at);
  const early = there.minute < numbers.opensBefore && there.minute < time.settings.closesMinute;
  const today = isSchoolDay(time, there) && early && openedToday < numbers.openedPerDay;
  return today ? nextOpen(time, at) : nextMorning(time, at);
}

/** When the next leg begins: the morning after the session, or after the leg where there are no sessions. */
export function nextLegAt(time: SchoolTime, at: Instant, legEndsAt: Instant | null): Instant {
  const session = legEndsAt === null ? at : legEndsAt + numbers.beforeSession * minute;
  return nextMorning(time, Math.max(at, session));
}

/** Until when a late post is taken after a passage was finished. */
export function lateUntil(time: SchoolTime, finishedAt: Instant): Instant {
  return endOfSchoolDay(time, finishedAt, numbers.lateSchoolDays + 1);
}
