import type { ActionsBlock, Button, KnownBlock } from '@slack/types';
import type { Block, Choice } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { beginning, plain } from '../plain.js';
import { packPress, type FormBlock, type Press } from '../press-code.js';
import { say } from '../words.js';
import type { RenderContext } from './context.js';
import { plainText, sections } from './rich.js';

interface Pressed {
  readonly label: string;
  readonly press: Press;
  readonly main: boolean;
}

/** Buttons in rows. A label that is too long for a button stands whole above it; what no button can carry is said. */
export function buttonBlocks(pressed: readonly Pressed[], context: RenderContext): readonly KnownBlock[] {
  const above: KnownBlock[] = [];
  const buttons: Button[] = [];
  for (const { label, press, main } of pressed) {
    const text = plain(label).trim() === '' ? '…' : plain(label);
    const value = packPress(press, limits.buttonValue);
    if (value === null) {
      above.push(...sections([{ text: say('too long to carry', { label: text }) }]));
      continue;
    }
    if (text.length > limits.buttonText) above.push(...sections([{ text }]));
    buttons.push({
      type: 'button',
      action_id: context.newName(),
      text: plainText(beginning(text, limits.buttonText)),
      value,
      ...(main ? { style: 'primary' as const } : {}),
    });
  }
  const rows: ActionsBlock[] = [];
  for (let at = 0; at < buttons.length; at += limits.row) {
    rows.push({ type: 'actions', block_id: context.newName(), elements: buttons.slice(at, at + limits.row) });
  }
  return [...above, ...rows];
}

/** Choices as buttons, the main one first. */
export function choiceBlocks(choices: readonly Choice[], context: RenderContext): readonly KnownBlock[] {
  const ordered = [...choices.filter(({ main }) => main), ...choices.filter(({ main }) => !main)];
  return buttonBlocks(
    ordered.map(({ label, action, main }) => ({
      label,
      press: { press: 'act', action },
      main: main === true,
    })),
    context,
  );
}

/** A form that isn't open: a button that opens it, by the look in whose answer it stands where the form itself is too large to travel. */
export function formButton(form: FormBlock, at: number, context: RenderContext): readonly KnownBlock[] {
  const press: Press =
    form.fields.length === 0
      ? { press: 'act', action: form.action }
      : context.look === null
        ? { press: 'fill here', form }
        : { press: 'fill', look: context.look, form: at };
  return buttonBlocks([{ label: form.title, press, main: form.main === true }], context);
}

/** Blocks with the one next thing before all else that can be pressed. */
export function mainFirst(blocks: readonly Block[]): readonly Block[] {
  const first = blocks.findIndex(({ type }) => type === 'choices' || type === 'form');
  const holder = blocks.findIndex(
    (block) => block.type === 'choices' && block.choices.some(({ main }) => main),
  );
  const from = blocks[holder];
  if (holder <= first || from?.type !== 'choices') return blocks;
  const main = from.choices.filter((choice) => choice.main);
  const others = from.choices.filter((choice) => !choice.main);
  const left: readonly Block[] =
    others.length > 0
      ? [{ ...from, choices: others }]
      : from.prompt === null
        ? []
        : [{ type: 'prose', prose: [{ text: from.prompt }] }];
  return [
    ...blocks.slice(0, first),
    { type: 'choices', prompt: null, choices: main },
    ...blocks.slice(first, holder),
    ...left,
    ...blocks.slice(holder + 1),
  ];
}
