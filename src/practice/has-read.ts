import type { PersonId } from '../../shared/ids.js';
import { openFor, postsOn, runningOf } from './lookup.js';
import type { ClassState, Group } from './state.js';

/**
 * Whether a pupil has the segment that is open before them: who has predicted, passed, or written on it. The first segment
 * has a card to look at first; the later ones only where predicting is open for the pupil.
 */
export function hasRead(state: ClassState, group: Group, person: PersonId): boolean {
  const running = runningOf(group.practice);
  if (running?.phase !== 'open') return false;
  const { segment, passage } = running;
  if (segment.passed.includes(person)) return true;
  if (segment.stop > 0 && !openFor(state, person).includes('predict')) return true;
  return postsOn(state, group.id, passage, segment.stop).some((post) => post.person === person);
}
