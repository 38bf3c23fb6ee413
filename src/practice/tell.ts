import type { ClassEvent } from '../../shared/events.js';
import type { PostId } from '../../shared/ids.js';
import type { Telling } from '../../shared/tellings.js';
import type { ClassState, Post } from './state.js';
import { tellAlarm, tellTrial } from './tell-alarms.js';
import { tellDraft, tellGoneTo, tellHeld, tellPosted, tellReleased, tellSentBack } from './tell-draft.js';
import { tellPrivate } from './tell-private.js';
import { tellRunning } from './tell-running.js';
import { tellNudge, tellSegment } from './tell-segment.js';
import { tellLine, tellMeaning, tellReminder, tellWaiting } from './tell-staff.js';
import { tellGone, tellShown } from './tell-talk.js';

/** What everybody is told of an event; `after` is the state right after that event, not after those that follow it. */
export function tell(after: ClassState, event: ClassEvent): readonly Telling[] {
  switch (event.type) {
    case 'leg-began':
    case 'segment-opened':
    case 'segment-closed':
    case 'segment-extended':
    case 'close-undone':
    case 'leader-changed':
      return tellSegment(after, event);
    case 'leg-ended':
    case 'practice-paused':
    case 'practice-resumed':
    case 'passage-finished':
      return tellRunning(after, event);
    case 'leader-nudged':
      return tellNudge(after, event);
    case 'prediction-passed':
    case 'pupil-nudged':
    case 'lead-offered':
    case 'where-said':
    case 'response-given':
    case 'prediction-checked':
    case 'help-given':
    case 'word-reviewed':
      return tellPrivate(after, event);
    case 'draft-judged':
      return tellDraft(after, event);
    case 'draft-held':
    case 'post-waits':
      return ofPost(after, event.post, (post) => [
        ...tellHeld(after, post),
        ...tellWaiting(after, post.group),
      ]);
    case 'draft-posted':
      return ofPost(after, event.post, (post) => [
        ...tellPosted(after, post, event.how),
        ...tellShown(after, post),
      ]);
    case 'post-released':
      return ofPost(after, event.post, (post) => [
        ...tellReleased(after, post),
        ...tellShown(after, post),
        ...tellWaiting(after, post.group),
      ]);
    case 'post-sent-back':
      return withWaiting(after, event.post, tellSentBack(after, event));
    case 'post-removed':
      return gone(after, event.post, 'removed');
    case 'post-taken-back':
      return gone(after, event.post, 'taken back');
    case 'draft-left':
      return ofPost(after, event.post, (post) => tellGoneTo(after, post, 'left'));
    case 'question-seeded':
      return ofPost(after, event.post, (post) => tellShown(after, post));
    case 'line-moved':
      return tellLine(after, event);
    case 'staff-reminded':
      return tellReminder(after, event);
    case 'meaning-confirmed':
      return tellMeaning(after, event);
    case 'alarm-raised':
    case 'alarm-acknowledged':
    case 'alarm-escalated':
      return tellAlarm(after, event);
    case 'alarm-tried':
    case 'trial-acknowledged':
    case 'trial-escalated':
      return tellTrial(after, event);
    case 'class-made':
    case 'setting-changed':
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
    case 'passage-added':
    case 'passage-withdrawn':
    case 'gist-written':
    case 'spare-question-written':
    case 'passage-set':
    case 'passage-unset':
    case 'practice-started':
    case 'person-seen':
    case 'person-away':
    case 'judged-again':
    case 'overruled':
    case 'live-noted':
    case 'live-led':
      return [];
    default:
      return event satisfies never;
  }
}

function ofPost(state: ClassState, id: PostId, of: (post: Post) => readonly Telling[]): readonly Telling[] {
  const post = state.posts[id];
  return post ? of(post) : [];
}

function withWaiting(state: ClassState, id: PostId, told: readonly Telling[]): readonly Telling[] {
  return ofPost(state, id, (post) => [...told, ...tellWaiting(state, post.group)]);
}

function gone(state: ClassState, id: PostId, key: 'removed' | 'taken back'): readonly Telling[] {
  return ofPost(state, id, (post) => [
    ...tellGoneTo(state, post, key),
    ...tellGone(state, post),
    ...tellWaiting(state, post.group),
  ]);
}
