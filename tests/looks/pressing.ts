import type { Action, Block, Field, Message } from '../../shared/messages.js';

/** What a hand would put into a field: the first thing to pick or tap, what stands there, or some words. */
export function sample(field: Field, words = 'some words'): string {
  switch (field.kind) {
    case 'line':
      return field.value ?? (field.name === 'days' || field.name === 'grade' ? '4' : words);
    case 'text':
      return field.value ?? words;
    case 'pick':
      return field.options[0]?.value ?? '';
    case 'sentence':
    case 'word': {
      const [first] = field.ranges;
      return first === undefined ? '' : `${first.start}-${first.end}`;
    }
    case 'file':
      return '';
    default:
      return field satisfies never;
  }
}

/** Something that can be pressed, with its form filled in. */
export interface Pressed {
  readonly label: string;
  readonly action: Action;
  readonly fields: Readonly<Record<string, string>>;
  readonly main: boolean;
}

function pressedIn(block: Block, words: string): readonly Pressed[] {
  if (block.type === 'choices') {
    return block.choices.map(({ label, action, main }) => ({
      label,
      action,
      fields: {},
      main: main === true,
    }));
  }
  if (block.type !== 'form') return [];
  const fields: Record<string, string> = {};
  for (const field of block.fields) fields[field.name] ||= sample(field, words);
  return [{ label: block.title, action: block.action, fields, main: block.main === true }];
}

/** All that can be pressed in messages, in order. */
export function allPressed(messages: readonly Message[], words = 'some words'): readonly Pressed[] {
  return messages.flatMap(({ blocks }) => blocks.flatMap((block) => pressedIn(block, words)));
}
