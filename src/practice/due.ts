import type { Instant } from '../../shared/time.js';
import { groupsOf } from './lookup.js';
import { heldSpareAt, pendingTimes, toNudge } from './pass-time.js';
import type { ClassState, Group, Post } from './state.js';

const known = new WeakMap<ClassState, Instant | null>();

/** When the class next needs the clock, null for never; what is due then is done by the move 'time-passed'. Asked after a move and again before the next, it is worked out once for each state. */
export function due(state: ClassState): Instant | null {
  const before = known.get(state);
  if (before !== undefined) return before;
  const next = dueOf(state);
  known.set(state, next);
  return next;
}

function dueOf(state: ClassState): Instant | null {
  const all = [
    ...groupsOf(state).flatMap((group) => groupTimes(state, group)),
    ...state.pending.flatMap((id) => {
      const post = state.posts[id];
      return post ? postTimes(post) : [];
    }),
    ...[...Object.values(state.alarms), ...Object.values(state.trials)].flatMap(
      ({ escalatesAt, acknowledgedBy, escalated }) =>
        acknowledgedBy === null && !escalated ? [escalatesAt] : [],
    ),
  ];
  return all.length === 0 ? null : Math.min(...all);
}

function groupTimes(state: ClassState, group: Group): readonly Instant[] {
  const { practice } = group;
  switch (practice.phase) {
    case 'none':
      return [];
    case 'paused':
      return practice.was.leg?.endsAt == null ? [] : [practice.was.leg.endsAt];
    case 'waiting':
      return practice.leg?.endsAt == null ? [practice.opensAt] : [practice.opensAt, practice.leg.endsAt];
    case 'open': {
      const nudge = toNudge({ state }, group, practice).length > 0 ? [practice.segment.times.wrapAt] : [];
      const ends = practice.leg.endsAt === null ? [] : [practice.leg.endsAt];
      const spare = heldSpareAt({ state }, group, practice);
      const held = spare === null ? [] : [spare];
      return [...pendingTimes({ state }, group, practice), ...held, ...nudge, ...ends];
    }
    default:
      return practice satisfies never;
  }
}

function postTimes({ stage }: Post): readonly Instant[] {
  if (stage.stage === 'draft') return stage.postsItselfAt === null ? [] : [stage.postsItselfAt];
  if (stage.stage !== 'held' || stage.reminded === 'deputy') return [];
  return [stage.reminded === 'no' ? stage.times.remindAt : stage.times.deputyAt];
}
