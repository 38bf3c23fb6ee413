import type {
  InputBlock,
  InputBlockElement,
  KnownBlock,
  PlainTextInput,
  PlainTextOption,
} from '@slack/types';
import type { Field } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { beginning, plain } from '../plain.js';
import type { FormBlock } from '../press-code.js';
import { say } from '../words.js';
import { optionsOf, selectOf } from './options.js';
import { lists, plainText, quotes, sections } from './rich.js';

type FieldOf<K extends Field['kind']> = Extract<Field, { kind: K }>;

/** The block id of a field: its place in the form and its name, so that two fields of one name stay apart. */
export function fieldBlockId(at: number, name: string): string {
  return `f${at}:${name}`.slice(0, limits.blockId);
}

function input(
  field: Field,
  at: number,
  element: InputBlockElement,
  hint: string | null = null,
): readonly KnownBlock[] {
  const label = plain(field.label).trim() === '' ? '…' : plain(field.label);
  const block: InputBlock = {
    type: 'input',
    block_id: fieldBlockId(at, field.name),
    label: plainText(beginning(label, limits.label)),
    optional: !field.required,
    element,
    ...(hint === null || plain(hint).trim() === ''
      ? {}
      : { hint: plainText(beginning(plain(hint), limits.label)) }),
  };
  return label.length > limits.label ? [...sections([{ text: label }]), block] : [block];
}

function typed(field: FieldOf<'line' | 'text'>, at: number): readonly KnownBlock[] {
  const most = Math.min(field.max, limits.input);
  const value = field.value === undefined || field.value === '' ? null : field.value.toWellFormed();
  const fits = value !== null && value.length <= most;
  const element: PlainTextInput = {
    type: 'plain_text_input',
    action_id: 'in',
    multiline: field.kind === 'text',
    max_length: most,
    ...(fits ? { initial_value: value } : {}),
  };
  const note = field.max > limits.input ? say('up to', { n: limits.input }) : null;
  const hint = [field.hint ?? null, note].filter((one) => one !== null).join(' ');
  return [...(value === null || fits ? [] : quotes(value, null)), ...input(field, at, element, hint)];
}

function picked(
  field: Field,
  at: number,
  options: readonly PlainTextOption[],
  value: string | undefined,
  many: boolean,
): readonly KnownBlock[] {
  if (options.length === 0) return sections([{ text: `${field.label}: ${say('nothing to pick')}` }]);
  return input(field, at, selectOf(options, value, many));
}

function tapped(field: FieldOf<'sentence' | 'word'>, at: number): readonly KnownBlock[] {
  const { options, whole } = optionsOf(
    field.ranges.map(({ start, end }) => ({
      value: `${start}-${end}`,
      label: field.source.slice(start, end),
      beside: field.kind === 'word' ? field.source.slice(Math.max(0, start - 20), end + 25) : null,
    })),
  );
  return [...lists(whole.map((text) => [{ text }])), ...picked(field, at, options, undefined, false)];
}

function fieldBlocks(field: Field, at: number): readonly KnownBlock[] {
  switch (field.kind) {
    case 'line':
    case 'text':
      return typed(field, at);
    case 'pick': {
      const { options, whole } = optionsOf(field.options.map((one) => ({ ...one, beside: null })));
      return [
        ...lists(whole.map((text) => [{ text }])),
        ...picked(field, at, options, field.value, field.many === true),
      ];
    }
    case 'sentence':
    case 'word':
      return tapped(field, at);
    case 'file':
      return input(field, at, {
        type: 'file_input',
        action_id: 'in',
        filetypes: ['txt', 'md'],
        max_files: 1,
      });
    default:
      return field satisfies never;
  }
}

/** A form's fields as input blocks, with what has to stand above them. */
export function inputBlocks(form: FormBlock): readonly KnownBlock[] {
  return form.fields.flatMap(fieldBlocks);
}
