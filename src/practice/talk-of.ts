import type { GroupId, PassageId } from '../../shared/ids.js';
import type { ClassEvent } from '../../shared/events.js';
import type { TalkOf, Telling } from '../../shared/tellings.js';
import { runningOf } from './lookup.js';
import type { ClassState } from './state.js';

function talkIn(state: ClassState, id: GroupId, about: PassageId | null): TalkOf | null {
  const group = state.groups[id];
  const running = group ? runningOf(group.practice) : null;
  if (running === null || (about !== null && about !== running.passage)) return null;
  return { practice: running.practice, title: state.shelf[running.passage]?.reading.title ?? '' };
}

/** A telling with the practice that it belongs to: what a group's channel is told while one runs, up to the end of its passage. What is about an earlier passage belongs to none. */
export function inTalk(before: ClassState, after: ClassState, event: ClassEvent, telling: Telling): Telling {
  if (telling.do !== 'say' && telling.do !== 'replace') return telling;
  const { audience } = telling.message;
  if (audience.to !== 'channel') return telling;
  const post = 'post' in event ? after.posts[event.post] : undefined;
  const about = event.type === 'passage-finished' ? event.passage : (post?.passage ?? null);
  const talk = talkIn(after, audience.group, about) ?? talkIn(before, audience.group, about);
  return talk === null ? telling : { ...telling, talk };
}
