import type { PassageId, PersonId } from '../../shared/ids.js';
import { isShown, postsOfPassage, postsOn } from './lookup.js';
import type { ClassState, Group, Post } from './state.js';
import { isBehind } from './tell-talk.js';

/** A person's own posts on a segment that count: drafts, posts that wait, posts that are through. */
export function answeredBy(
  state: ClassState,
  group: Group,
  passage: PassageId,
  stop: number,
  person: PersonId,
): readonly Post[] {
  return postsOn(state, group.id, passage, stop).filter((post) => post.person === person && isKept(post));
}

function isKept({ stage }: Post): boolean {
  return stage.stage === 'draft' || stage.stage === 'held' || stage.stage === 'public';
}

/** Whether somebody has given their own answer to a question, be it still with an adult. */
export function hasAnswered(state: ClassState, question: Post, person: PersonId): boolean {
  return answeredBy(state, { id: question.group } as Group, question.passage, question.stop, person).some(
    (post) => post.to === question.id && post.stage.stage !== 'draft',
  );
}

/** Public posts of a segment that a pupil may see: predictions about it, then the talk; others' answers once one's own is given. */
export function talkOf(
  state: ClassState,
  group: Group,
  passage: PassageId,
  stop: number | null,
  person: PersonId,
  beforeReading: boolean,
): readonly Post[] {
  if (stop === null) return [];
  const before = postsOn(state, group.id, passage, stop - 1).filter((post) => post.do === 'predict');
  if (beforeReading) return [];
  return [...before, ...postsOn(state, group.id, passage, stop)].filter(
    (post) => isShown(post) && maySee(state, post, person),
  );
}

function maySee(state: ClassState, post: Post, person: PersonId): boolean {
  if (post.do !== 'answer' || post.person === person) return true;
  const question = post.to === null ? undefined : state.posts[post.to];
  if (!question || question.person === person || isBehind(state, post)) return true;
  return hasAnswered(state, question, person);
}

/** A pupil's own drafts, posts that wait, and posts that came back, oldest first. */
export function ownOf(
  state: ClassState,
  group: Group,
  passage: PassageId | null,
  person: PersonId,
): readonly Post[] {
  if (passage === null) return [];
  return postsOfPassage(state, group.id, passage).filter(
    ({ person: by, stage }) =>
      by === person && (stage.stage === 'draft' || stage.stage === 'held' || stage.stage === 'sent back'),
  );
}
