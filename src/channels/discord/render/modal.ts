import { ComponentType, TextInputStyle } from 'discord.js';
import type { Action, Block, Field, FieldOption } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { writeSubmitted } from '../submitted-id.js';
import { plain, short } from './plain.js';

export type Form = Extract<Block, { type: 'form' }>;

/** A form as Discord opens it. */
export interface Modal {
  readonly custom_id: string;
  readonly title: string;
  readonly components: readonly LabelPart[];
}

interface LabelPart {
  readonly type: ComponentType.Label;
  readonly label: string;
  readonly description?: string;
  readonly component: Readonly<Record<string, unknown>>;
}

/** What is needed to open a part of a form. */
export interface Opening {
  readonly form: Form;
  /** The look that shows the form, to find it again after a restart. */
  readonly origin: Action | null;
  /** Tells one opening from another, so that the same form sent twice is done once. */
  readonly opening: string;
  readonly page: number;
  /** What was typed before, by name. */
  readonly kept: Readonly<Record<string, string>>;
}

const radioMost = 10;

/** Fields that a part of a form holds; a word to tap among too many is left to the field beside it in which it is typed. */
export function fieldsOf(form: Form): readonly (readonly Field[])[] {
  const typed = form.fields.some(({ kind, required }) => kind === 'line' && !required);
  const fields = form.fields.filter(
    (field) =>
      !(field.kind === 'word' && !field.required && typed && field.ranges.length > limits.selectOptions),
  );
  return Array.from({ length: Math.ceil(fields.length / limits.modalParts) }, (_, at) =>
    fields.slice(at * limits.modalParts, (at + 1) * limits.modalParts),
  );
}

/** The options of a field that is picked; null for what is typed. */
export function optionsOf(field: Field): readonly FieldOption[] | null {
  switch (field.kind) {
    case 'pick':
      return field.options;
    case 'sentence':
    case 'word':
      return field.ranges.map(({ start, end }) => ({
        value: `${start}-${end}`,
        label: field.source.slice(start, end),
      }));
    case 'line':
    case 'text':
    case 'file':
      return null;
    default:
      return field satisfies never;
  }
}

function input(field: Field, name: string, value: string | undefined): Readonly<Record<string, unknown>> {
  const most = Math.min('max' in field ? field.max : 200, limits.textInput);
  const hint =
    'hint' in field && field.hint !== undefined
      ? { placeholder: short(field.hint, limits.inputPlaceholder) }
      : {};
  return {
    type: ComponentType.TextInput,
    custom_id: name,
    style: field.kind === 'text' ? TextInputStyle.Paragraph : TextInputStyle.Short,
    required: field.required,
    max_length: most,
    ...hint,
    ...(value === undefined || value === '' || value.length > most ? {} : { value }),
  };
}

function option({ value, label }: FieldOption, chosen: readonly string[], described: boolean) {
  const text = plain(label).replace(/\s+/gu, ' ').trim();
  const rest =
    described && text.length > limits.optionText ? text.slice(short(text, limits.optionText).length - 1) : '';
  return {
    value,
    label: short(text, limits.optionText),
    ...(rest.trim() === '' ? {} : { description: short(`… ${rest.trim()}`, limits.optionText) }),
    ...(chosen.includes(value) ? { default: true } : {}),
  };
}

function picked(
  field: Field,
  name: string,
  options: readonly FieldOption[],
  value: string | undefined,
): Readonly<Record<string, unknown>> {
  const many = field.kind === 'pick' && field.many === true;
  const chosen = value === undefined ? [] : many ? value.split(',') : [value];
  const shown = options.map((one) => option(one, chosen, true));
  if (field.kind === 'pick' && !many && field.required && options.length > 1 && options.length <= radioMost) {
    return { type: ComponentType.RadioGroup, custom_id: name, required: true, options: shown };
  }
  return {
    type: ComponentType.StringSelect,
    custom_id: name,
    required: field.required,
    min_values: field.required ? 1 : 0,
    max_values: many ? options.length : 1,
    options: shown,
  };
}

function component(field: Field, name: string, kept: string | undefined): Readonly<Record<string, unknown>> {
  if (field.kind === 'file') {
    const least = field.required ? 1 : 0;
    return {
      type: ComponentType.FileUpload,
      custom_id: name,
      required: field.required,
      min_values: least,
      max_values: 1,
    };
  }
  const value = kept ?? ('value' in field ? field.value : undefined);
  const options = optionsOf(field);
  if (options === null || options.length === 0 || options.length > limits.selectOptions)
    return input(field, name, value);
  return picked(field, name, options, value);
}

/** A label that is too long stands whole in the description, as far as that goes; so does a hint. */
function labelPart(field: Field, name: string, kept: string | undefined): LabelPart {
  const label = plain(field.label).replace(/\s+/gu, ' ').trim();
  const hint = 'hint' in field ? field.hint : undefined;
  const description = label.length > limits.fieldLabel ? label : hint;
  return {
    type: ComponentType.Label,
    label: short(label, limits.fieldLabel),
    ...(description === undefined ? {} : { description: short(description, limits.fieldDescription) }),
    component: component(field, name, kept),
  };
}

/** One part of a form as a modal. Names that occur twice are told apart by "#2". */
export function modalOf({ form, origin, opening, page, kept }: Opening): Modal {
  const names = new Map<string, number>();
  const fields = fieldsOf(form)[page] ?? [];
  return {
    custom_id: writeSubmitted({ opening, page, action: form.action, origin }),
    title: short(form.title, limits.modalTitle),
    components: fields.map((field) => {
      const count = (names.get(field.name) ?? 0) + 1;
      names.set(field.name, count);
      const name = count === 1 ? field.name : `${field.name}#${count}`;
      return labelPart(field, name, kept[field.name]);
    }),
  };
}
