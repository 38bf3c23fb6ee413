import type { Look } from '../../shared/looks.js';
import type { Block, Message } from '../../shared/messages.js';
import type { ShelfPassage } from '../practice/state.js';
import { groupsOf } from '../practice/lookup.js';
import { answer, found, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, look, move, typed } from './blocks.js';
import { levelBlocks, segmentBlocks } from './passage-blocks.js';

/** What an adult can write for a stop: the gist that can be said in a sentence, and a spare question. */
function adultForms(passage: ShelfPassage, stop: number): readonly Block[] {
  const args = { passage: passage.id, stop: String(stop) };
  const gist = passage.gists[stop];
  const question = passage.spareQuestions[stop];
  const part = stop + 1;
  return [
    form(
      staff('gist title', { part }),
      move('write-gist', args),
      [
        typed('text', 'text', staff('gist label'), {
          max: 400,
          hint: staff('gist hint'),
          ...(gist === undefined ? {} : { value: gist }),
        }),
      ],
      staff('save'),
    ),
    form(
      staff('spare title', { part }),
      move('write-spare-question', args),
      [
        typed('text', 'text', staff('spare label'), {
          max: 400,
          ...(question === undefined ? {} : { value: question }),
        }),
      ],
      staff('save'),
    ),
  ];
}

/** A passage as the bot reads it, with what an adult adds for each stop. */
export function preview(
  asked: Asked,
  { passage: id }: Extract<Look, { type: 'preview' }>,
): readonly Message[] {
  const passage = found(asked.state.shelf[id], 'a passage');
  const { reading } = passage;
  const many = reading.segments.length;
  return [
    answer(asked, staff('preview of', { title: reading.title }), [
      heading(reading.title),
      ...levelBlocks(reading),
      ...choices(null, [
        ...groupsOf(asked.state).map((group) =>
          choice(
            staff('set to', { group: group.name }),
            move('set-passage', { passage: id, group: group.id }),
          ),
        ),
        choice(staff('back to passages'), look('passages')),
      ]),
      ...reading.segments.flatMap((segment, stop) => [
        ...segmentBlocks(segment, stop, many),
        ...adultForms(passage, stop),
      ]),
    ]),
  ];
}
