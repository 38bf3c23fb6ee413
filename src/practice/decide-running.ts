import type { GroupId, PracticeId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { beginLeg, closeSegment, endLeg, nextInQueue, openPractice } from './advance.js';
import { add, groupAt, mint, refuse, timeOf, type Deciding } from './deciding.js';
import { decideLeader } from './decide-leader.js';
import { endOfSchoolDay, localAt, nextMorning } from './hours.js';
import { pupilsOf, segmentsOf } from './lookup.js';
import { numbers, segmentTimes } from './times.js';
import { resume } from './wake-up.js';

type RunningMove = MoveOf<
  | 'start-practice'
  | 'pause-practice'
  | 'resume-practice'
  | 'close-segment'
  | 'undo-close'
  | 'extend-segment'
  | 'read-live'
  | 'end-practice'
  | 'name-leader'
  | 'skip-leader'
  | 'pair-leader'
  | 'quiet-pass'
  | 'take-lead'
>;

const mostExtraDays = 10;

/** Moves about the running of a practice: what the adult may do at any time, and the lead. */
export function decideRunning(d: Deciding, move: RunningMove): void {
  switch (move.type) {
    case 'start-practice':
      return start(d, move.group);
    case 'pause-practice':
      running(d, move.group, 'pause');
      return add(d, { type: 'practice-paused', group: move.group, why: 'staff' });
    case 'resume-practice':
      if (groupAt(d, move.group).practice.phase !== 'paused') notNow('resume', 'a paused practice');
      return resume(d, move.group);
    case 'close-segment':
      openOr(d, move.group, 'close');
      return closeSegment(d, move.group, 'staff');
    case 'undo-close':
      return undoClose(d, move.group);
    case 'extend-segment':
      return extend(d, move);
    case 'read-live':
      return readLive(d, move);
    case 'end-practice':
      return end(d, move.group);
    case 'name-leader':
    case 'skip-leader':
    case 'pair-leader':
    case 'quiet-pass':
    case 'take-lead':
      return decideLeader(d, move);
    default:
      return move satisfies never;
  }
}

function notNow(what: string, expected: string): never {
  return refuse('wrong time', `Cannot ${what} now, expected ${expected}`, 'Look where the group is.');
}

function running(d: Deciding, id: GroupId, what: string): void {
  const { phase } = groupAt(d, id).practice;
  if (phase !== 'open' && phase !== 'waiting') notNow(what, 'a practice that runs');
}

function openOr(d: Deciding, id: GroupId, what: string) {
  groupAt(d, id);
  return openPractice(d, id) ?? notNow(what, 'a segment that is open');
}

function start(d: Deciding, id: GroupId): void {
  const group = groupAt(d, id);
  if (group.practice.phase !== 'none') notNow('start', 'a group that isn’t practising');
  const passage = nextInQueue(d.state, group);
  if (passage === null) {
    return refuse(
      'wrong time',
      'Cannot start, expected a passage that is set, got none',
      'Set a passage first.',
    );
  }
  if (pupilsOf(d.state, id).length === 0) {
    refuse('wrong time', 'Cannot start, expected at least one pupil, got none', 'Add a pupil first.');
  }
  add(d, { type: 'practice-started', group: id, practice: mint<PracticeId>(d, 'r'), passage });
  beginLeg(d, id, true);
}

/** Takes the last close back within a day: the segment is open again, at least until the end of a school day. */
function undoClose(d: Deciding, id: GroupId): void {
  const before = groupAt(d, id).beforeClose;
  if (before === null || d.act.at - before.at > numbers.undoHours * 3_600_000) {
    return notNow('undo', 'a segment that closed in the last 24 hours');
  }
  const time = timeOf(d);
  const { segment, leg } = before.practice;
  const legEndsAt = leg.endsAt !== null && leg.endsAt > d.act.at ? leg.endsAt : null;
  const later = segmentTimes(time, d.act.at, legEndsAt).quorumAt;
  const keep = segment.times.closesAt > d.act.at;
  const closesAt = keep ? segment.times.closesAt : later;
  const quorumAt = segment.times.quorumAt > d.act.at ? segment.times.quorumAt : closesAt;
  const times = { ...segment.times, quorumAt, closesAt, closesOn: localAt(time, closesAt) };
  add(d, { type: 'close-undone', group: id, stop: segment.stop, times });
}

function extend(d: Deciding, move: MoveOf<'extend-segment'>): void {
  const practice = openOr(d, move.group, 'extend');
  if (move.days < 1 || move.days > mostExtraDays) {
    refuse(
      'bad input',
      `Cannot extend by ${move.days}, expected 1 to ${mostExtraDays} days`,
      'Take fewer days.',
    );
  }
  const time = timeOf(d);
  const { times, stop } = practice.segment;
  const later = (instant: number): number => {
    const end = endOfSchoolDay(time, instant - 1, 1 + move.days);
    return Math.min(end, practice.leg.endsAt ?? end);
  };
  const closesAt = Math.max(times.closesAt, later(times.closesAt));
  add(d, {
    type: 'segment-extended',
    group: move.group,
    stop,
    times: {
      ...times,
      quorumAt: Math.min(later(times.quorumAt), closesAt),
      closesAt,
      closesOn: localAt(time, closesAt),
    },
  });
}

/** The group has read together up to a segment (the open or next one, unless said): what follows opens the next morning. */
function readLive(d: Deciding, move: MoveOf<'read-live'>): void {
  const { practice } = groupAt(d, move.group);
  if (practice.phase !== 'open' && practice.phase !== 'waiting')
    return notNow('read on', 'a practice that runs');
  const from = practice.phase === 'open' ? practice.segment.stop : practice.nextStop;
  const last = segmentsOf(d.state, practice.passage) - 1;
  const to = move.to ?? Math.min(from, last);
  if (to < from || to > last) {
    refuse(
      'bad input',
      `Cannot read up to ${to}, expected a segment from ${from} to ${last}`,
      'Pick a segment that is still to read.',
    );
  }
  if (practice.phase === 'open') {
    closeSegment(d, move.group, 'read live', to);
    return;
  }
  const time = timeOf(d);
  const nextAt = to >= last ? null : Math.max(practice.opensAt, nextMorning(time, d.act.at));
  add(d, {
    type: 'segment-closed',
    group: move.group,
    stop: to,
    why: 'read live',
    nextOpensAt: nextAt,
    nextOpensOn: nextAt === null ? null : localAt(time, nextAt),
    led: [],
    missed: [],
  });
  if (to >= last && (practice.leg === null || practice.leg.endsAt === null))
    endLeg(d, move.group, 'all segments done');
}

function end(d: Deciding, id: GroupId): void {
  if (groupAt(d, id).practice.phase === 'none') notNow('end', 'a practice');
  endLeg(d, id, 'ended by staff');
}
