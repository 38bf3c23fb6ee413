import type { CloseReason, LegEndReason } from '../../shared/events.js';
import type { GroupId, PassageId, PersonId, PostId } from '../../shared/ids.js';
import { add, groupAt, mint, timeOf, type Deciding } from './deciding.js';
import { allDone, sentNow, talkIsOpen, type OpenPractice } from './duty.js';
import { dayOf, localAt, openMinutes } from './hours.js';
import { judgePredictionsAgain } from './judge-again.js';
import { isStaff, leadingAdult, pupilsOf, segmentsOf } from './lookup.js';
import { activeOf, drawLeader, drawLeaders } from './lot.js';
import type { ClassState, Group } from './state.js';
import { nextLegAt, nextOpening, numbers, planLeg, segmentTimes } from './times.js';

/** The group's practice where a segment is open, else null. */
export function openPractice(d: Deciding, group: GroupId): OpenPractice | null {
  const practice = d.state.groups[group]?.practice;
  return practice?.phase === 'open' ? practice : null;
}

/** Begins the next leg of a waiting practice, and opens its first segment where that is now; an adult who starts a practice opens it at once, at any hour. */
export function beginLeg(d: Deciding, id: GroupId, atOnce = false): void {
  const group = groupAt(d, id);
  if (group.practice.phase !== 'waiting') return;
  const { passage, nextStop } = group.practice;
  const time = timeOf(d);
  const plan = planLeg(time, d.act.at, segmentsOf(d.state, passage) - nextStop);
  const firstOpensAt = atOnce ? d.act.at : plan.firstOpensAt;
  const drawn = drawLeaders(d.state, group, plan.segments, d.chance);
  const adult = group.justOpened.length > 0 ? leadingAdult(d.state) : null;
  add(d, {
    type: 'leg-began',
    group: id,
    endsAt: plan.endsAt,
    segments: plan.segments,
    // When a strategy has just been opened, an adult leads first.
    leaders: adult === null ? drawn : [adult, ...drawn.slice(0, plan.segments - 1)],
    firstOpensAt,
    firstOpensOn: localAt(time, firstOpensAt),
    sessionOn: plan.sessionAt === null ? null : localAt(time, plan.sessionAt),
  });
  if (firstOpensAt <= d.act.at) openSegment(d, id);
}

/** Opens the next segment of a waiting practice's leg. */
export function openSegment(d: Deciding, id: GroupId): void {
  const group = groupAt(d, id);
  if (group.practice.phase !== 'waiting' || group.practice.leg === null) return;
  const { leg, nextStop } = group.practice;
  const time = timeOf(d);
  const active = activeOf(d.state, group);
  add(d, {
    type: 'segment-opened',
    group: id,
    stop: nextStop,
    leader: active.length === 1 ? null : leaderFor(d, group, active, leg.leaders[leg.done] ?? null),
    active,
    times: segmentTimes(time, d.act.at, leg.endsAt),
    day: dayOf(time, d.act.at),
  });
  if (active.length === 1) openAlone(d, id);
}

/** The leader drawn for a segment, or another where that one isn't there any more or has just led. */
function leaderFor(
  d: Deciding,
  group: Group,
  active: readonly PersonId[],
  drawn: PersonId | null,
): PersonId | null {
  if (group.justOpened.length > 0) {
    const adult = leadingAdult(d.state);
    if (adult !== null) return adult;
  }
  const named = drawn !== null && isStaff(d.state, drawn) && d.state.people[drawn]?.removed === false;
  if (drawn !== null && (named || (active.includes(drawn) && drawn !== group.lastLeader))) return drawn;
  return drawLeader(active, group.led, group.lastLeader, d.chance);
}

/** One pupil alone is asked at once, and the second time running staff are asked what to do. */
function openAlone(d: Deciding, id: GroupId): void {
  seedQuestion(d, id);
  if (d.state.groups[id]?.aloneTimes === 2) add(d, { type: 'staff-reminded', group: id, of: 'alone' });
}

/** Opens the talk with the adult's spare question, or one that the text gives; nothing where there is neither. */
export function seedQuestion(d: Deciding, id: GroupId): void {
  const practice = openPractice(d, id);
  if (practice === null || practice.segment.spareAsked) return;
  const { stop } = practice.segment;
  const passage = d.state.shelf[practice.passage];
  const spare = passage?.spareQuestions[stop];
  const seeds = passage?.reading.segments[stop]?.questions ?? [];
  const seed = seeds.find(({ relationship }) => relationship === 'think and search') ?? seeds[0];
  const text = spare ?? seed?.text ?? 'What is this part about?';
  const from = spare === undefined ? 'text' : 'adult';
  add(d, { type: 'question-seeded', group: id, stop, post: mint<PostId>(d, 'p'), text, from });
}

/** Whose lead counts: who asked before anybody had to stand in for them. */
function ledBy(state: ClassState, group: Group, practice: OpenPractice): readonly PersonId[] {
  const posts = sentNow(state, group, practice);
  const seededAt = posts.find(({ seeded }) => seeded !== null)?.at ?? Number.POSITIVE_INFINITY;
  const { leader, partner, active } = practice.segment;
  const asks = group.open.includes('question');
  return [leader, partner].flatMap((person) => {
    if (person === null || !active.includes(person)) return [];
    const led = posts.some(
      (post) => post.person === person && post.at <= seededAt && (post.do === 'question' || !asks),
    );
    return led ? [person] : [];
  });
}

/** Closes the open segment and goes on to what follows: the next segment, the leg's end, the passage's end. */
export function closeSegment(d: Deciding, id: GroupId, why: CloseReason, upTo?: number): void {
  const practice = openPractice(d, id);
  if (practice === null) return;
  const group = groupAt(d, id);
  const stop = upTo ?? practice.segment.stop;
  const { leg } = practice;
  const time = timeOf(d);
  const last = stop + 1 >= segmentsOf(d.state, practice.passage) || leg.done + 1 >= leg.segments;
  const today = leg.openedOn.filter((day) => day === dayOf(time, d.act.at)).length;
  const nextAt =
    last || why === 'leg ended'
      ? null
      : nextOpening(time, d.act.at, why === 'read live' ? numbers.openedPerDay : today);
  add(d, {
    type: 'segment-closed',
    group: id,
    stop,
    why,
    nextOpensAt: nextAt,
    nextOpensOn: nextAt === null ? null : localAt(time, nextAt),
    led: ledBy(d.state, group, practice),
    missed: why === 'read live' ? [] : missedBy(d, practice),
  });
  judgePredictionsAgain(d, id, practice.passage, practice.segment.stop - 1);
  markAway(d, id);
  if (last && leg.endsAt === null) endLeg(d, id, 'all segments done');
  else if (nextAt !== null && nextAt <= d.act.at) openSegment(d, id);
}

function markAway(d: Deciding, id: GroupId): void {
  for (const pupil of pupilsOf(d.state, id)) {
    if (pupil.missed >= 2 && !pupil.away) add(d, { type: 'person-away', person: pupil.id });
  }
}

/** The next passage that is set for a group and still on the shelf. */
export function nextInQueue(state: ClassState, group: Group): PassageId | null {
  return group.queue.find((passage) => state.shelf[passage]?.withdrawn === false) ?? null;
}

/** Ends the leg with its digest; a passage that was read through is finished, and the next one waits for its leg. */
export function endLeg(d: Deciding, id: GroupId, why: LegEndReason): void {
  const group = groupAt(d, id);
  const running = group.practice.phase === 'paused' ? group.practice.was : group.practice;
  if (running.phase === 'none') return;
  const stop = running.phase === 'waiting' ? running.nextStop : running.segment.stop;
  const through = why === 'ended by staff' || stop >= segmentsOf(d.state, running.passage);
  const next = why === 'ended by staff' ? null : nextInQueue(d.state, group);
  const goesOn = why !== 'ended by staff' && why !== 'nobody active' && (!through || next !== null);
  const time = timeOf(d);
  const nextAt = goesOn ? nextLegAt(time, d.act.at, running.leg?.endsAt ?? null) : null;
  add(d, {
    type: 'leg-ended',
    group: id,
    why,
    nextLegAt: nextAt,
    nextLegOn: nextAt === null ? null : localAt(time, nextAt),
    sessionOn: running.leg?.sessionOn ?? null,
  });
  if (through) add(d, { type: 'passage-finished', group: id, passage: running.passage, next });
}

/** Whether the open segment left enough time to come: four open hours, or a whole short day. */
function leftTime(d: Deciding, { segment }: OpenPractice): boolean {
  const { closesMinute, opensMinute } = d.state.settings;
  const enough = Math.min(numbers.quorumNotBefore, closesMinute - opensMinute);
  return openMinutes(timeOf(d), segment.openedAt, d.act.at) >= enough;
}

function missedBy(d: Deciding, practice: OpenPractice): readonly PersonId[] {
  if (!leftTime(d, practice)) return [];
  return practice.segment.active.filter((person) => !practice.segment.seen.includes(person));
}

/** Whether nobody was there in the open segment, and it was open long enough to tell. */
export function nobodyCame(d: Deciding, practice: OpenPractice): boolean {
  return practice.segment.seen.length === 0 && leftTime(d, practice);
}

/** Pauses a practice in which nobody is active; a leg that no session ends, ends here. */
export function pauseForNobody(d: Deciding, id: GroupId): void {
  add(d, { type: 'practice-paused', group: id, why: 'nobody active' });
  const practice = d.state.groups[id]?.practice;
  if (practice?.phase === 'paused' && practice.was.leg !== null && practice.was.leg.endsAt === null) {
    endLeg(d, id, 'nobody active');
  }
}

/** Goes on where everybody who is active has done their share. */
export function settle(d: Deciding, id: GroupId | null): void {
  const practice = id === null ? null : openPractice(d, id);
  if (id === null || practice === null) return;
  const group = groupAt(d, id);
  if (talkIsOpen(d.state, group, practice) || !group.open.includes('question')) {
    if (allDone(d.state, group, practice)) closeSegment(d, id, 'all done');
  }
}
