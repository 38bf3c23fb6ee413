import type { Look } from '../../shared/looks.js';
import type { Message } from '../../shared/messages.js';
import { answer, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, look, move, typed } from './blocks.js';
import { levelBlocks, segmentBlocks } from './passage-blocks.js';

const longest = 262_144;

/** A text as the bot would read it, before it is on the shelf; the form carries it on as it is. Throws `Fault` where it can't be used. */
export function previewText(
  asked: Asked,
  { text, title, grade }: Extract<Look, { type: 'preview-text' }>,
): readonly Message[] {
  const reading = asked.port.judges.read(text, {
    ...(title === undefined ? {} : { title }),
    ...(grade === undefined ? {} : { grade }),
  });
  const many = reading.segments.length;
  return [
    answer(asked, staff('preview of', { title: reading.title }), [
      heading(staff('preview of', { title: reading.title })),
      ...levelBlocks(reading),
      ...reading.segments.flatMap((segment, stop) => segmentBlocks(segment, stop, many)),
      form(
        staff('put on shelf'),
        move('add-passage'),
        [
          typed('line', 'title', staff('title label'), { required: false, value: reading.title }),
          typed('line', 'grade', staff('grade label'), {
            required: false,
            max: 1,
            hint: staff('grade hint'),
            ...(grade === undefined ? {} : { value: String(grade) }),
          }),
          typed('text', 'text', staff('text label'), { max: longest, value: text }),
        ],
        staff('put on shelf'),
        true,
      ),
      ...choices(null, [choice(staff('back to passages'), look('passages'))]),
    ]),
  ];
}
