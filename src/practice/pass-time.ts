import type { GroupId, PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import {
  beginLeg,
  closeSegment,
  endLeg,
  nobodyCame,
  openPractice,
  openSegment,
  pauseForNobody,
  seedQuestion,
} from './advance.js';
import { add, groupAt, timeOf, type Deciding } from './deciding.js';
import { isDone, leaderQuestion, leadsNow, quorumIsMet, type OpenPractice } from './duty.js';
import { openMinutes } from './hours.js';
import { segmentsOf } from './lookup.js';
import { passPosts } from './pass-posts.js';
import type { Group, Practice } from './state.js';
import { numbers, timesAfterGap } from './times.js';

/** More steps than one moment can hold; a bound, so that a mistake can't hang the class. */
const most = 60;

/** Does everything that is due: drafts, posts that wait, alarms, then each group's practice. */
export function passTime(d: Deciding): void {
  passPosts(d);
  for (const id of Object.keys(d.state.groups) as GroupId[]) {
    moveMissed(d, id);
    for (let step = 0; step < most && passGroup(d, id); step += 1);
  }
}

/** Does the next thing that is due in a group; false where nothing is. */
function passGroup(d: Deciding, id: GroupId): boolean {
  const { practice } = groupAt(d, id);
  switch (practice.phase) {
    case 'none':
      return false;
    case 'paused':
      return endLegInPause(d, id, practice);
    case 'waiting':
      return passWaiting(d, id, practice);
    case 'open':
      return passOpen(d, id, practice);
    default:
      return practice satisfies never;
  }
}

function isPast(d: Deciding, instant: Instant | null | undefined): boolean {
  return instant != null && instant <= d.act.at;
}

function endLegInPause(d: Deciding, id: GroupId, practice: Extract<Practice, { phase: 'paused' }>): boolean {
  if (!isPast(d, practice.was.leg?.endsAt)) return false;
  endLeg(d, id, practice.why === 'nobody active' ? 'nobody active' : 'reached the session');
  return true;
}

function passWaiting(d: Deciding, id: GroupId, practice: Extract<Practice, { phase: 'waiting' }>): boolean {
  const { leg } = practice;
  const through = practice.nextStop >= segmentsOf(d.state, practice.passage);
  if (leg !== null && (isPast(d, leg.endsAt) || (leg.endsAt === null && through))) {
    endLeg(d, id, through || leg.done >= leg.segments ? 'all segments done' : 'reached the session');
    return true;
  }
  if (!isPast(d, practice.opensAt)) return false;
  if (leg === null) beginLeg(d, id);
  else if (!through && leg.done < leg.segments) openSegment(d, id);
  else return false;
  return true;
}

function passOpen(d: Deciding, id: GroupId, practice: OpenPractice): boolean {
  const group = groupAt(d, id);
  if (isPast(d, practice.leg.endsAt)) {
    const nobody = nobodyCame(d, practice);
    closeSegment(d, id, 'leg ended');
    endLeg(d, id, 'reached the session');
    if (nobody && groupAt(d, id).practice.phase === 'waiting') pauseForNobody(d, id);
    return true;
  }
  return passClose(d, group, practice) || passTalk(d, group, practice) || nudgeOthers(d, group, practice);
}

/** Deadlines of the open segment that still wait for their hour. */
export function pendingTimes(
  d: Pick<Deciding, 'state'>,
  group: Group,
  practice: OpenPractice,
): readonly Instant[] {
  const { times, leader, nudged, offeredTo, spareAsked } = practice.segment;
  const pending = [times.quorumAt, times.closesAt];
  const asked = leaderQuestion(d.state, group, practice);
  if (asked !== null || spareAsked || !group.open.includes('question')) return pending;
  if (leader !== null && !nudged.includes(leader)) pending.push(times.nudgeAt);
  if (offeredTo === null) pending.push(times.offerAt);
  return [...pending, times.spareAt];
}

/** When the spare question stands in for a leader's question that waits for an adult; null where none does. */
export function heldSpareAt(
  d: Pick<Deciding, 'state'>,
  group: Group,
  practice: OpenPractice,
): Instant | null {
  if (!group.open.includes('question')) return null;
  const asked = leaderQuestion(d.state, group, practice);
  return asked?.stage.stage === 'held' && !practice.segment.spareAsked ? asked.stage.times.spareAt : null;
}

/** Deadlines that fell while the machine slept: the time doesn't count, and the close moves to a later school day. */
function moveMissed(d: Deciding, id: GroupId): void {
  const group = groupAt(d, id);
  const { practice } = group;
  if (practice.phase !== 'open' || isPast(d, practice.leg.endsAt)) return;
  const time = timeOf(d);
  // An act can bring a deadline up that has passed long ago; the machine was awake then.
  const missed = Math.max(Math.min(...pendingTimes(d, group, practice)), d.awakeAt);
  if (missed > d.act.at || openMinutes(time, missed, d.act.at) <= numbers.slept) return;
  const times = timesAfterGap(time, practice.segment, missed, d.act.at, practice.leg.endsAt);
  add(d, { type: 'segment-extended', group: id, stop: practice.segment.stop, times });
}

function passClose(d: Deciding, group: Group, practice: OpenPractice): boolean {
  const { times, stop } = practice.segment;
  if (isPast(d, times.closesAt)) {
    if (nobodyCame(d, practice)) pauseForNobody(d, group.id);
    else closeSegment(d, group.id, quorumIsMet(d.state, group, practice) ? 'quorum' : 'time');
    return true;
  }
  if (!isPast(d, times.quorumAt)) return false;
  if (quorumIsMet(d.state, group, practice)) closeSegment(d, group.id, 'quorum');
  else {
    // Not enough yet: the next day's end decides.
    const later = { ...times, quorumAt: times.closesAt };
    add(d, { type: 'segment-extended', group: group.id, stop, times: later });
  }
  return true;
}

/** The leader isn't there: of a nudge, an offer and the spare question only the latest that is due is done. */
function passTalk(d: Deciding, group: Group, practice: OpenPractice): boolean {
  const { segment } = practice;
  const { stop, times } = segment;
  if (segment.spareAsked || !group.open.includes('question')) return false;
  const asked = leaderQuestion(d.state, group, practice);
  if (asked !== null) {
    if (!isPast(d, heldSpareAt(d, group, practice))) return false;
    seedQuestion(d, group.id);
    return true;
  }
  if (isPast(d, times.spareAt)) {
    seedQuestion(d, group.id);
    return openPractice(d, group.id)?.segment.spareAsked === true;
  }
  if (isPast(d, times.offerAt) && segment.offeredTo === null) {
    add(d, { type: 'lead-offered', group: group.id, stop, to: offerTo(group, practice) });
    return true;
  }
  if (isPast(d, times.nudgeAt) && segment.leader !== null && !segment.nudged.includes(segment.leader)) {
    add(d, { type: 'leader-nudged', group: group.id, stop, person: segment.leader });
    return true;
  }
  return false;
}

/** Those seen in this segment, who led least first. */
function offerTo(group: Group, { segment }: OpenPractice): readonly PersonId[] {
  return segment.seen
    .filter((person) => person !== segment.leader && person !== segment.partner)
    .toSorted((a, b) => (group.led[a] ?? 0) - (group.led[b] ?? 0));
}

/** Pupils who get the leg's one nudge when the segment's time is mostly over. */
export function toNudge(d: Pick<Deciding, 'state'>, group: Group, practice: OpenPractice) {
  return practice.segment.active.filter(
    (person) =>
      !practice.leg.nudged.includes(person) &&
      !leadsNow(practice, person) &&
      !isDone(d.state, group, practice, person),
  );
}

function nudgeOthers(d: Deciding, group: Group, practice: OpenPractice): boolean {
  if (!isPast(d, practice.segment.times.wrapAt)) return false;
  const people = toNudge(d, group, practice);
  for (const person of people) add(d, { type: 'pupil-nudged', person, stop: practice.segment.stop });
  return people.length > 0;
}
