import type { Block, Choice, Message } from '../../shared/messages.js';
import { groupsOf, runningOf } from '../practice/lookup.js';
import type { ShelfPassage } from '../practice/state.js';
import { answer, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, list, look, move, prose, typed } from './blocks.js';

/** A passage may hold at most this many characters (a quarter of a MiB, as moves have it). */
const longest = 262_144;

function whereSet(asked: Asked, { id }: ShelfPassage): readonly string[] {
  return groupsOf(asked.state).flatMap((group) => {
    if (runningOf(group.practice)?.passage === id) return [staff('read by', { group: group.name })];
    if (group.queue.includes(id)) return [staff('set for', { group: group.name })];
    return group.finished.some(({ passage }) => passage === id)
      ? [staff('was read by', { group: group.name })]
      : [];
  });
}

function onePassage(asked: Asked, passage: ShelfPassage): readonly Block[] {
  const { id, reading, grade } = passage;
  const setTo = groupsOf(asked.state).map((group): Choice => {
    const args = { passage: id, group: group.id };
    return group.queue.includes(id)
      ? choice(staff('unset from', { group: group.name }), move('unset-passage', args))
      : choice(staff('set to', { group: group.name }), move('set-passage', args));
  });
  return [
    heading(reading.title),
    prose(staff('passage line', { grade, words: reading.level.words, many: reading.segments.length })),
    ...list(whereSet(asked, passage)),
    ...choices(null, [
      choice(staff('preview'), look('preview', { passage: id })),
      ...setTo,
      choice(staff('withdraw'), move('withdraw-passage', { passage: id })),
    ]),
  ];
}

/** The form through which a passage is read before it is put on the shelf. */
export function readFirstForm(): Block {
  return form(
    staff('add passage'),
    look('preview-text'),
    [
      typed('line', 'title', staff('title label'), { required: false, hint: staff('title hint') }),
      typed('line', 'grade', staff('grade label'), { required: false, max: 1, hint: staff('grade hint') }),
      typed('text', 'text', staff('text label'), { required: false, max: longest }),
      { kind: 'file', name: 'text', label: staff('file label'), required: false },
    ],
    staff('read it first'),
  );
}

/** The shelf: every passage, where it is set, and a form to add one. */
export function passages(asked: Asked): readonly Message[] {
  const shelf = Object.values(asked.state.shelf).filter(({ withdrawn }) => !withdrawn);
  const title = staff('passages title');
  return [
    answer(asked, title, [
      heading(title),
      ...(shelf.length === 0 ? [prose(staff('empty shelf'))] : []),
      ...shelf.flatMap((passage) => onePassage(asked, passage)),
      readFirstForm(),
    ]),
  ];
}
