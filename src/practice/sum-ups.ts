import type { GroupId, PassageId, PersonId } from '../../shared/ids.js';
import { wordsOf } from '../../shared/said.js';
import { isShown, postsOn } from './lookup.js';
import type { ClassState } from './state.js';

/** The sum-up that closes a segment: the leader's public one, else the adult's gist (`by` null), else none. */
export function closingSumUp(
  state: ClassState,
  group: GroupId,
  passage: PassageId,
  stop: number,
): { readonly text: string; readonly by: PersonId | null } | null {
  const shown = postsOn(state, group, passage, stop).findLast(
    (post) => post.do === 'sum-up' && isShown(post),
  );
  const text = shown && shown.text.kind === 'said' ? wordsOf(shown.text) : null;
  if (shown && text !== null) return { text, by: shown.person };
  const gist = state.shelf[passage]?.gists[stop];
  return gist === undefined ? null : { text: gist, by: null };
}

/** Sum-ups of the segments before one, in order; those without are left out. */
export function sumUpsSoFar(
  state: ClassState,
  group: GroupId,
  passage: PassageId,
  stop: number,
): readonly string[] {
  return Array.from({ length: Math.max(0, stop) }, (_, earlier) =>
    closingSumUp(state, group, passage, earlier),
  ).flatMap((sumUp) => (sumUp === null ? [] : [sumUp.text]));
}
