import type { ClassEvent } from '../../shared/events.js';
import type { ClassId } from '../../shared/ids.js';
import { withOwnPosts } from './changing.js';
import { emptyState } from './empty-state.js';
import { evolveAlarms } from './evolve-alarms.js';
import { evolveClass } from './evolve-class.js';
import { evolvePosts } from './evolve-posts.js';
import { evolveRunning } from './evolve-running.js';
import { evolveShelf } from './evolve-shelf.js';
import { evolveTalk } from './evolve-talk.js';
import type { ClassState } from './state.js';

/** The class after an event; judges nothing, reckons no zones, and takes any stored event without throwing. */
export function evolve(state: ClassState, event: ClassEvent): ClassState {
  return {
    ...change(state, event),
    version: state.version + 1,
    lastAt: Math.max(state.lastAt, event.at),
  };
}

/** The class after all its events, in order. */
export function replay(classId: ClassId, events: Iterable<ClassEvent>): ClassState {
  return withOwnPosts(emptyState(classId), (empty) => {
    let state = empty;
    for (const event of events) state = evolve(state, event);
    return state;
  });
}

function change(state: ClassState, event: ClassEvent): ClassState {
  switch (event.type) {
    case 'class-made':
    case 'setting-changed':
    case 'line-moved':
    case 'strategy-opened':
    case 'strategy-closed':
    case 'group-made':
    case 'person-added':
    case 'person-renamed':
    case 'pupil-moved':
    case 'person-removed':
    case 'person-erased':
    case 'second-key-reset':
    case 'goal-set':
    case 'help-changed':
      return evolveClass(state, event);
    case 'passage-added':
    case 'passage-withdrawn':
    case 'gist-written':
    case 'spare-question-written':
    case 'passage-set':
    case 'passage-unset':
      return evolveShelf(state, event);
    case 'practice-started':
    case 'leg-began':
    case 'segment-opened':
    case 'segment-closed':
    case 'close-undone':
    case 'segment-extended':
    case 'leg-ended':
    case 'practice-paused':
    case 'practice-resumed':
    case 'passage-finished':
    case 'leader-changed':
    case 'leader-nudged':
    case 'pupil-nudged':
    case 'lead-offered':
    case 'live-led':
      return evolveRunning(state, event);
    case 'draft-judged':
    case 'draft-held':
    case 'draft-posted':
    case 'post-waits':
    case 'post-released':
    case 'post-sent-back':
    case 'post-removed':
    case 'draft-left':
    case 'post-taken-back':
    case 'question-seeded':
    case 'staff-reminded':
      return evolvePosts(state, event);
    case 'where-said':
    case 'judged-again':
    case 'overruled':
    case 'meaning-confirmed':
    case 'response-given':
    case 'prediction-checked':
    case 'help-given':
    case 'word-reviewed':
    case 'live-noted':
    case 'person-seen':
    case 'person-away':
    case 'prediction-passed':
      return evolveTalk(state, event);
    case 'alarm-raised':
    case 'alarm-acknowledged':
    case 'alarm-escalated':
    case 'alarm-tried':
    case 'trial-acknowledged':
    case 'trial-escalated':
      return evolveAlarms(state, event);
    default:
      return event satisfies never;
  }
}
