import type { PersonId } from '../../shared/ids.js';
import type { ClassState, Post } from '../practice/state.js';

/** The newest public question of the running passage that isn't one's own, or that of a given asker; null where there is none. */
export function newestQuestion(state: ClassState, answerer: PersonId, asker?: PersonId | ''): Post | null {
  const group = state.people[answerer]?.group;
  const open = Object.values(state.posts).filter(
    (post) =>
      post.do === 'question' &&
      post.stage.stage === 'public' &&
      post.group === group &&
      post.person !== answerer &&
      (asker === undefined || asker === '' || post.person === asker),
  );
  const publicAt = (post: Post): number => (post.stage.stage === 'public' ? post.stage.at : 0);
  return open.reduce<Post | null>(
    (newest, post) => (newest === null || publicAt(post) >= publicAt(newest) ? post : newest),
    null,
  );
}
