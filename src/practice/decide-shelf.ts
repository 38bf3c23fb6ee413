import type { PassageId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { add, groupAt, mint, refuse, type Deciding } from './deciding.js';
import { groupsOf, runningOf } from './lookup.js';
import type { ShelfPassage } from './state.js';

type ShelfMove = MoveOf<
  'add-passage' | 'withdraw-passage' | 'write-gist' | 'write-spare-question' | 'set-passage' | 'unset-passage'
>;

/** Grade for which a passage is cut where none is given and the reading finds none. */
const usualGrade = 4;

/** Moves about the shelf. */
export function decideShelf(d: Deciding, move: ShelfMove): void {
  switch (move.type) {
    case 'add-passage':
      return addPassage(d, move);
    case 'withdraw-passage':
      passageAt(d, move.passage);
      return add(d, { type: 'passage-withdrawn', passage: move.passage });
    case 'write-gist':
    case 'write-spare-question':
      return write(d, move);
    case 'set-passage':
      return setPassage(d, move);
    case 'unset-passage':
      return unsetPassage(d, move);
    default:
      return move satisfies never;
  }
}

function passageAt(d: Deciding, id: PassageId): ShelfPassage {
  const passage = d.state.shelf[id];
  if (passage && !passage.withdrawn) return passage;
  return refuse(
    'not found',
    'Cannot do that, expected a passage of the shelf, got another',
    'Pick a passage of the list.',
  );
}

function addPassage(d: Deciding, move: MoveOf<'add-passage'>): void {
  if (move.grade !== undefined && (move.grade < 3 || move.grade > 8)) {
    refuse('bad input', `Cannot read for grade ${move.grade}, expected 3 to 8`, 'Pick a grade from 3 to 8.');
  }
  const reading = d.tools.judges.read(move.text, {
    ...(move.title === undefined ? {} : { title: move.title }),
    ...(move.grade === undefined ? {} : { grade: move.grade }),
  });
  const found = Math.round(reading.level.grade ?? usualGrade);
  const grade = move.grade ?? Math.min(8, Math.max(3, found));
  add(d, { type: 'passage-added', passage: mint<PassageId>(d, 's'), grade, reading });
}

function write(d: Deciding, move: MoveOf<'write-gist' | 'write-spare-question'>): void {
  const { reading } = passageAt(d, move.passage);
  const { passage, stop, text } = move;
  if (stop < 0 || stop >= reading.segments.length) {
    refuse(
      'bad input',
      `Cannot write that, expected a segment from 0 to ${reading.segments.length - 1}, got ${stop}`,
      'Pick a segment of the passage.',
    );
  }
  const type = move.type === 'write-gist' ? 'gist-written' : 'spare-question-written';
  add(d, { type, passage, stop, text });
}

function setPassage(d: Deciding, move: MoveOf<'set-passage'>): void {
  const group = groupAt(d, move.group);
  passageAt(d, move.passage);
  if (group.queue.includes(move.passage) || runningOf(group.practice)?.passage === move.passage) {
    refuse(
      'in use',
      'Cannot set this passage, expected one that isn’t set, got one that is',
      'Pick another one.',
    );
  }
  add(d, { type: 'passage-set', passage: move.passage, group: move.group });
}

function unsetPassage(d: Deciding, move: MoveOf<'unset-passage'>): void {
  const set = groupsOf(d.state).some(({ id, queue }) => id === move.group && queue.includes(move.passage));
  if (!set) {
    refuse(
      'not found',
      'Cannot take this passage from the group, expected one that waits, got another',
      'End the practice to stop a passage that runs.',
    );
  }
  add(d, { type: 'passage-unset', passage: move.passage, group: move.group });
}
