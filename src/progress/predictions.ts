import type { Post } from '../practice/state.js';
import type { Facts } from './facts.js';

/** Public predictions of the passages read now or last that their pupils have not gone back to, although the part they are about is closed. A prediction looks at the segment after its own; one on the card before the first has stop -1. */
export function uncheckedPredictions(facts: Pick<Facts, 'talk' | 'closed'>): readonly Post[] {
  return facts.talk.filter(
    (post) =>
      post.do === 'predict' &&
      post.person !== null &&
      post.stage.stage === 'public' &&
      post.outcome === null &&
      (facts.closed.get(post.passage) ?? 0) > post.stop + 1,
  );
}
