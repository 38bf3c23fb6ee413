import type { GroupId, PassageId, PersonId, PostId } from '../../shared/ids.js';
import type { Doing } from '../../shared/strategies.js';
import { answeredBy, ownOf, talkOf } from './turn-talk.js';
import { stepsOf } from './turn-steps.js';
import { isDone, leadsNow } from './duty.js';
import { hasRead } from './has-read.js';
import { runningOf } from './lookup.js';
import type { ClassState, Group, Post } from './state.js';
import { sumUpsSoFar } from './sum-ups.js';
import type { Instant } from '../../shared/time.js';

/** A step that a pupil can take now. */
export type Step =
  | { readonly step: 'look first'; readonly stop: number }
  | { readonly step: 'do'; readonly do: Doing; readonly to: PostId | null }
  | { readonly step: 'check prediction'; readonly post: PostId }
  | { readonly step: 'respond'; readonly post: PostId }
  | { readonly step: 'say where'; readonly post: PostId }
  | { readonly step: 'finish draft'; readonly post: PostId }
  | { readonly step: 'take the lead' }
  | { readonly step: 'review word'; readonly word: string };

/** What a pupil's page shows: where the group is, the one next thing, what else may be done, and the talk that this pupil may see. */
export interface Turn {
  readonly person: PersonId;
  readonly group: GroupId | null;
  readonly passage: PassageId | null;
  readonly stop: number | null;
  readonly phase: 'none' | 'waiting' | 'look first' | 'open' | 'done' | 'paused';
  readonly leads: boolean;
  readonly leader: PersonId | null;
  /** The one next thing; null when there is nothing to do now. */
  readonly next: Step | null;
  readonly also: readonly Step[];
  /** Public posts of the segment that this pupil may see, oldest first; others' answers only once own is given. */
  readonly talk: readonly Post[];
  /** Own drafts and posts that wait. */
  readonly own: readonly Post[];
  /** Sum-ups that closed the earlier segments, in order: "So far". */
  readonly soFar: readonly string[];
  /** When the next segment opens or this one closes; children see a day and a time. */
  readonly until: number | null;
}

/** Where a group is, as seen from below a pause. */
function whereOf(group: Group): Pick<Turn, 'passage' | 'stop' | 'until' | 'leader'> {
  const running = runningOf(group.practice);
  if (running === null) {
    return { passage: group.finished.at(-1)?.passage ?? null, stop: null, until: null, leader: null };
  }
  if (running.phase === 'open') {
    const { stop, leader, times } = running.segment;
    return { passage: running.passage, stop, leader, until: times.closesAt };
  }
  const last = running.lastClosed?.segment.stop ?? null;
  const opens = running.opensOn === null ? null : running.opensAt;
  return { passage: running.passage, stop: last, leader: null, until: opens };
}

/** A pupil's turn: the one next thing, what else may be done, and the talk that this pupil may see. */
export function turnOf(state: ClassState, person: PersonId, at: Instant): Turn {
  const id = state.people[person]?.group ?? null;
  const group = id === null ? undefined : state.groups[id];
  if (!group) return emptyTurn(person);
  const where = whereOf(group);
  const phase = phaseOf(state, group, person);
  const steps = stepsOf(state, group, person, at, phase);
  const { practice } = group;
  return {
    person,
    group: group.id,
    ...where,
    until: phase === 'paused' || phase === 'none' ? null : where.until,
    phase,
    leads: practice.phase === 'open' && leadsNow(practice, person),
    next: steps[0] ?? null,
    also: steps.slice(1),
    talk:
      where.passage === null
        ? []
        : talkOf(state, group, where.passage, where.stop, person, phase === 'look first'),
    own: ownOf(state, group, where.passage, person),
    soFar: where.passage === null ? [] : sumUpsSoFar(state, group.id, where.passage, where.stop ?? 0),
  };
}

function emptyTurn(person: PersonId): Turn {
  return {
    ...{ person, group: null, passage: null, stop: null, phase: 'none', leads: false, leader: null },
    ...{ next: null, also: [], talk: [], own: [], soFar: [], until: null },
  };
}

function phaseOf(state: ClassState, group: Group, person: PersonId): Turn['phase'] {
  const { practice } = group;
  switch (practice.phase) {
    case 'none':
    case 'paused':
      return practice.phase;
    case 'waiting': {
      const first = practice.nextStop === 0 && practice.leg !== null && !practice.passed.includes(person);
      return first && !hasGuessed(state, group, person) ? 'look first' : 'waiting';
    }
    case 'open':
      if (!hasRead(state, group, person)) return 'look first';
      return isDone(state, group, practice, person) ? 'done' : 'open';
    default:
      return practice satisfies never;
  }
}

/** Whether a pupil has predicted from the card before the first segment. */
function hasGuessed(state: ClassState, group: Group, person: PersonId): boolean {
  const running = runningOf(group.practice);
  return (
    running !== null &&
    answeredBy(state, group, running.passage, -1, person).some((post) => post.do === 'predict')
  );
}
