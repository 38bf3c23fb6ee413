import type { EventOf } from '../../shared/events.js';
import type { PersonId } from '../../shared/ids.js';
import { withGroup, withItem, withoutItem, withPractice, withSegment } from './changing.js';
import { closeSegment, counted, endLeg, finishPassage } from './evolve-closing.js';
import { isStaff, postsOn } from './lookup.js';
import type { ClassState, Leg, Practice, SegmentState } from './state.js';

type RunningChange = EventOf<
  | 'practice-started'
  | 'leg-began'
  | 'segment-opened'
  | 'segment-closed'
  | 'close-undone'
  | 'segment-extended'
  | 'leg-ended'
  | 'practice-paused'
  | 'practice-resumed'
  | 'passage-finished'
  | 'leader-changed'
  | 'leader-nudged'
  | 'pupil-nudged'
  | 'lead-offered'
  | 'live-led'
>;

/** The class after something about the running of a practice. */
export function evolveRunning(state: ClassState, event: RunningChange): ClassState {
  switch (event.type) {
    case 'practice-started':
      return start(state, event);
    case 'leg-began':
      return beginLeg(state, event);
    case 'segment-opened':
      return openSegment(state, event);
    case 'segment-closed':
      return closeSegment(state, event);
    case 'close-undone':
      return undoClose(state, event);
    case 'segment-extended':
      return withSegment(state, event.group, (segment) => ({ ...segment, times: event.times }));
    case 'leg-ended':
      return endLeg(state, event);
    case 'practice-paused':
      return withPractice(state, event.group, (was) =>
        was.phase === 'open' || was.phase === 'waiting'
          ? {
              phase: 'paused',
              practice: was.practice,
              passage: was.passage,
              why: event.why,
              since: event.at,
              was,
            }
          : was,
      );
    case 'practice-resumed':
      return withPractice(state, event.group, (practice) => resumed(practice, event));
    case 'passage-finished':
      return finishPassage(state, event);
    case 'leader-changed':
      return changeLeader(state, event);
    case 'leader-nudged':
      return withSegment(state, event.group, (segment) => ({
        ...segment,
        nudged: withItem(segment.nudged, event.person),
      }));
    case 'pupil-nudged':
      return nudgePupil(state, event.person);
    case 'lead-offered':
      return withSegment(state, event.group, (segment) => ({ ...segment, offeredTo: event.to }));
    case 'live-led':
      return withGroup(state, event.group, (group) => ({ ...group, ...counted(group, [event.person]) }));
    default:
      return event satisfies never;
  }
}

function start(state: ClassState, event: EventOf<'practice-started'>): ClassState {
  return withGroup(state, event.group, (group) => ({
    ...group,
    queue: withoutItem(group.queue, event.passage),
    beforeClose: null,
    practice: {
      phase: 'waiting',
      practice: event.practice,
      passage: event.passage,
      nextStop: 0,
      leg: null,
      opensAt: event.at,
      opensOn: null,
      passed: [],
      lastClosed: null,
    },
  }));
}

function beginLeg(state: ClassState, event: EventOf<'leg-began'>): ClassState {
  const leg: Leg = {
    endsAt: event.endsAt,
    segments: event.segments,
    done: 0,
    leaders: event.leaders,
    quietPassed: [],
    nudged: [],
    openedOn: [],
    sessionOn: event.sessionOn,
  };
  return withGroup(state, event.group, (group) => ({
    ...group,
    legs: group.legs + 1,
    beforeClose: null,
    practice:
      group.practice.phase === 'waiting'
        ? { ...group.practice, leg, opensAt: event.firstOpensAt, opensOn: event.firstOpensOn }
        : group.practice,
  }));
}

function openSegment(state: ClassState, event: EventOf<'segment-opened'>): ClassState {
  return withGroup(state, event.group, (group) => {
    const { practice } = group;
    if (practice.phase !== 'waiting' || practice.leg === null) return group;
    const predicted = postsOn(state, group.id, practice.passage, event.stop - 1).flatMap(
      ({ do: doing, person }) => (doing === 'predict' && person !== null ? [person] : []),
    );
    const segment: SegmentState = {
      stop: event.stop,
      leader: event.leader,
      partner: null,
      active: event.active,
      seen: [],
      passed: [...new Set([...practice.passed, ...predicted])],
      nudged: [],
      offeredTo: null,
      spareAsked: false,
      openedAt: event.at,
      card: state.version + 1,
      times: event.times,
      helped: {},
    };
    return {
      ...group,
      justOpened: isStaff(state, event.leader) ? [] : group.justOpened,
      aloneTimes: event.active.length === 1 ? group.aloneTimes + 1 : 0,
      practice: {
        phase: 'open',
        practice: practice.practice,
        passage: practice.passage,
        leg: { ...practice.leg, openedOn: [...practice.leg.openedOn, event.day] },
        segment,
      },
    };
  });
}

function undoClose(state: ClassState, event: EventOf<'close-undone'>): ClassState {
  return withGroup(state, event.group, (group) => {
    const before = group.beforeClose;
    if (before === null) return group;
    const { practice, queue, lot, lastLeader, led, finished } = before;
    const segment = { ...practice.segment, times: event.times };
    const set = group.queue.filter((passage) => !queue.includes(passage) && passage !== practice.passage);
    return {
      ...group,
      queue: [...queue, ...set],
      lot,
      lastLeader,
      led,
      finished,
      beforeClose: null,
      practice: { ...practice, segment },
    };
  });
}

function resumed(practice: Practice, event: EventOf<'practice-resumed'>): Practice {
  if (practice.phase !== 'paused') return practice;
  const { was } = practice;
  if (was.phase === 'open') {
    return { ...was, segment: { ...was.segment, times: event.times ?? was.segment.times } };
  }
  return { ...was, opensAt: event.opensAt ?? was.opensAt, opensOn: event.opensOn };
}

function changeLeader(state: ClassState, event: EventOf<'leader-changed'>): ClassState {
  return withPractice(state, event.group, (practice) => {
    if (practice.phase === 'none' || practice.phase === 'paused' || practice.leg === null) return practice;
    const { leader, partner, why, at } = event;
    const leg =
      why === 'quiet pass' && event.by !== 'clock' && event.by !== 'founder'
        ? { ...practice.leg, quietPassed: withItem(practice.leg.quietPassed, event.by) }
        : practice.leg;
    if (practice.phase === 'waiting') {
      const leaders = leg.leaders.map((drawn, nth) => (nth === leg.done && leader !== null ? leader : drawn));
      return { ...practice, leg: { ...leg, leaders } };
    }
    const { segment } = practice;
    // Who takes over after the hour of the nudge isn't nudged at once.
    const nudged =
      leader !== null && at >= segment.times.nudgeAt ? withItem(segment.nudged, leader) : segment.nudged;
    return { ...practice, leg, segment: { ...segment, leader, partner, nudged } };
  });
}

function nudgePupil(state: ClassState, person: PersonId): ClassState {
  const group = state.people[person]?.group;
  if (!group) return state;
  return withPractice(state, group, (practice) =>
    practice.phase === 'open'
      ? { ...practice, leg: { ...practice.leg, nudged: withItem(practice.leg.nudged, person) } }
      : practice,
  );
}
