import type { EventOf } from '../../shared/events.js';
import type { GroupId, PersonId } from '../../shared/ids.js';
import { withGroup, withoutItem, withoutPosts, withPractice } from './changing.js';
import { pupilsOf, runningOf, type Running } from './lookup.js';
import type { BeforeClose, ClassState, Group, Person, Practice } from './state.js';

/** Whose lead counts moves to the back of the lot. */
export function counted(group: Group, led: readonly PersonId[]): Pick<Group, 'lot' | 'led' | 'lastLeader'> {
  const counts = Object.fromEntries(led.map((person) => [person, (group.led[person] ?? 0) + 1]));
  return {
    lot: [...group.lot.filter((person) => !led.includes(person)), ...led],
    led: { ...group.led, ...counts },
    lastLeader: led[0] ?? group.lastLeader,
  };
}

/** The class after a segment closed. */
export function closeSegment(state: ClassState, event: EventOf<'segment-closed'>): ClassState {
  const group = state.groups[event.group];
  if (!group) return state;
  const { practice } = group;
  if (practice.phase === 'waiting') {
    const read: Practice = {
      ...practice,
      nextStop: event.stop + 1,
      opensAt: event.nextOpensAt ?? practice.leg?.endsAt ?? event.at,
      opensOn: event.nextOpensOn,
      passed: [],
    };
    return withPractice(state, group.id, () => read);
  }
  if (practice.phase !== 'open') return state;
  const leg = { ...practice.leg, done: practice.leg.done + 1 };
  const after: Group = {
    ...group,
    ...counted(group, event.led),
    beforeClose: snapshot(group, practice, event.at),
    practice: {
      phase: 'waiting',
      practice: practice.practice,
      passage: practice.passage,
      nextStop: event.stop + 1,
      leg,
      opensAt: event.nextOpensAt ?? leg.endsAt ?? event.at,
      opensOn: event.nextOpensOn,
      passed: [],
      lastClosed: { segment: practice.segment, at: event.at },
    },
  };
  const missed = pupilsOf(state, group.id).map((pupil) => [
    pupil.id,
    { ...pupil, missed: missedAfter(pupil, practice.segment.seen, event.missed) },
  ]);
  return {
    ...state,
    groups: { ...state.groups, [group.id]: after },
    people: { ...state.people, ...(Object.fromEntries(missed) as ClassState['people']) },
  };
}

/** Segments in a row without a pupil; one that left no time to come counts neither way. */
function missedAfter(pupil: Person, seen: readonly PersonId[], missed: readonly PersonId[]): number {
  if (seen.includes(pupil.id)) return 0;
  return missed.includes(pupil.id) ? pupil.missed + 1 : pupil.missed;
}

function snapshot(group: Group, practice: BeforeClose['practice'], at: number): BeforeClose {
  const { queue, lot, lastLeader, led, finished } = group;
  return { at, practice, queue, lot, lastLeader, led, finished };
}

/** The class after a leg ended; what was open waits for the next leg. */
export function endLeg(state: ClassState, event: EventOf<'leg-ended'>): ClassState {
  return withPractice(state, event.group, (practice) => {
    if (practice.phase === 'paused') return { ...practice, was: afterLeg(practice.was, event) };
    return practice.phase === 'none' ? practice : afterLeg(practice, event);
  });
}

function afterLeg(practice: Running, event: EventOf<'leg-ended'>): Extract<Practice, { phase: 'waiting' }> {
  const opens = { leg: null, opensAt: event.nextLegAt ?? event.at, opensOn: event.nextLegOn };
  if (practice.phase === 'waiting') return { ...practice, ...opens };
  return {
    phase: 'waiting',
    practice: practice.practice,
    passage: practice.passage,
    nextStop: practice.segment.stop,
    ...opens,
    passed: practice.segment.passed,
    lastClosed: { segment: practice.segment, at: event.at },
  };
}

/** The class after a passage was finished; the next one waits for its leg. */
export function finishPassage(state: ClassState, event: EventOf<'passage-finished'>): ClassState {
  return letOldPostsGo(finish(state, event), event.group);
}

/** Passages of a group whose posts the state still holds; of older ones the evidence table keeps the levels. Ours. */
const passagesHeld = 12;

/** Drops posts of passages long finished, except what still waits for somebody. */
function letOldPostsGo(state: ClassState, id: GroupId): ClassState {
  const finished = state.groups[id]?.finished ?? [];
  const recent = new Set(finished.slice(-passagesHeld).map(({ passage }) => passage));
  const old = finished.map(({ passage }) => passage).filter((passage) => !recent.has(passage));
  const keys = old
    .map((passage) => `${id}/${passage}`)
    .filter((key) => (state.postsOf[key]?.length ?? 0) > 0);
  if (keys.length === 0) return state;
  const gone = new Set(
    keys.flatMap((key) => state.postsOf[key] ?? []).filter((post) => !state.pending.includes(post)),
  );
  const postsOf = Object.fromEntries(
    Object.entries(state.postsOf).map(([key, posts]) => [
      key,
      keys.includes(key) ? posts.filter((post) => !gone.has(post)) : posts,
    ]),
  );
  return { ...state, posts: withoutPosts(state.posts, gone), postsOf };
}

function finish(state: ClassState, event: EventOf<'passage-finished'>): ClassState {
  return withGroup(state, event.group, (group) => {
    const running = runningOf(group.practice);
    const { next } = event;
    const practice: Practice =
      running === null || next === null
        ? { phase: 'none' }
        : {
            phase: 'waiting',
            practice: running.practice,
            passage: next,
            nextStop: 0,
            leg: null,
            opensAt: running.phase === 'waiting' ? running.opensAt : event.at,
            opensOn: running.phase === 'waiting' ? running.opensOn : null,
            passed: [],
            lastClosed: null,
          };
    return {
      ...group,
      practice,
      queue: next === null ? group.queue : withoutItem(group.queue, next),
      finished: [...group.finished, { passage: event.passage, at: event.at }],
    };
  });
}
