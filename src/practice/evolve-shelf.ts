import type { EventOf } from '../../shared/events.js';
import type { PassageId } from '../../shared/ids.js';
import { withGroup, withItem, withoutItem } from './changing.js';
import type { ClassState, ShelfPassage } from './state.js';

type ShelfChange = EventOf<
  | 'passage-added'
  | 'passage-withdrawn'
  | 'gist-written'
  | 'spare-question-written'
  | 'passage-set'
  | 'passage-unset'
>;

/** The class after something about its shelf. */
export function evolveShelf(state: ClassState, event: ShelfChange): ClassState {
  switch (event.type) {
    case 'passage-added': {
      const { passage, grade, reading } = event;
      const added = { id: passage, grade, reading, gists: {}, spareQuestions: {}, withdrawn: false };
      return { ...state, shelf: { ...state.shelf, [passage]: added } };
    }
    case 'passage-withdrawn':
      return withPassage(state, event.passage, (one) => ({ ...one, withdrawn: true }));
    case 'gist-written':
      return withPassage(state, event.passage, (one) => ({
        ...one,
        gists: { ...one.gists, [event.stop]: event.text },
      }));
    case 'spare-question-written':
      return withPassage(state, event.passage, (one) => ({
        ...one,
        spareQuestions: { ...one.spareQuestions, [event.stop]: event.text },
      }));
    case 'passage-set':
      return withGroup(state, event.group, (group) => ({
        ...group,
        queue: withItem(group.queue, event.passage),
      }));
    case 'passage-unset':
      return withGroup(state, event.group, (group) => ({
        ...group,
        queue: withoutItem(group.queue, event.passage),
      }));
    default:
      return event satisfies never;
  }
}

function withPassage(
  state: ClassState,
  id: PassageId,
  change: (passage: ShelfPassage) => ShelfPassage,
): ClassState {
  const passage = state.shelf[id];
  return passage ? { ...state, shelf: { ...state.shelf, [id]: change(passage) } } : state;
}
