import type { KnownBlock } from '@slack/types';
import type { Block, Message, Picture } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { plain } from '../plain.js';
import type { FormBlock } from '../press-code.js';
import { choiceBlocks, formButton, mainFirst } from './choices.js';
import type { RenderContext } from './context.js';
import { inputBlocks } from './inputs.js';
import { glued, type Unit } from './pages.js';
import { lists, plainText, quotes, sections } from './rich.js';

function headingBlocks(text: string): readonly KnownBlock[] {
  const clean = plain(text).replace(/\s+/gu, ' ').trim();
  if (clean === '') return [];
  return clean.length <= limits.header
    ? [{ type: 'header', text: plainText(clean) }]
    : sections([{ text: clean, strong: true }]);
}

/** A picture as words that everybody can read, its alternative text first. */
function pictureBlocks({ alternative, data }: Picture): readonly KnownBlock[] {
  if (typeof data === 'string') return sections([{ text: `${alternative}: ` }, { text: data, strong: true }]);
  const items = data.map(({ label, value, of }) => [
    { text: `${label}: ` },
    { text: of === undefined ? String(value) : `${value} / ${of}`, strong: true as const },
  ]);
  return [...sections([{ text: alternative, strong: true }]), ...lists(items)];
}

function formUnits(form: FormBlock, at: number, context: RenderContext): readonly Unit[] {
  if (context.open !== form) return glued(formButton(form, at, context));
  return glued([...headingBlocks(form.title), ...inputBlocks(form)]);
}

function unitsOfBlock(block: Block, formAt: number, context: RenderContext): readonly Unit[] {
  switch (block.type) {
    case 'heading':
      return glued(headingBlocks(block.text), true);
    case 'prose':
      return glued(sections(block.prose));
    case 'quotation':
      return glued(quotes(block.text, block.by));
    case 'list':
      return glued(lists(block.items));
    case 'measure':
      return glued(sections([{ text: `${block.label}: `, strong: true }, { text: block.words }]));
    case 'picture':
      return glued(pictureBlocks(block.picture));
    case 'choices':
      return [
        ...(block.prompt === null ? [] : glued(sections([{ text: block.prompt }]), true)),
        ...glued(choiceBlocks(block.choices, context)),
      ];
    case 'form':
      return formUnits(block, formAt, context);
    default:
      return block satisfies never;
  }
}

/** All forms of messages in the order in which a press counts them. */
export function formsOf(messages: readonly Message[]): readonly FormBlock[] {
  return messages.flatMap(({ blocks }) => blocks.filter((block) => block.type === 'form'));
}

/** Messages as units to be parted into pages; one without blocks is shown by its summary. */
export function unitsOf(messages: readonly Message[], context: RenderContext): readonly Unit[] {
  const forms = formsOf(messages);
  return messages.flatMap((message, nth) => {
    const units =
      message.blocks.length === 0
        ? glued(sections([{ text: message.summary }]))
        : mainFirst(message.blocks).flatMap((block) =>
            unitsOfBlock(block, block.type === 'form' ? forms.indexOf(block) : -1, context),
          );
    return nth === 0 || units.length === 0 ? units : [...glued([{ type: 'divider' }], true), ...units];
  });
}
