import type { LookName } from '../../shared/looks.js';
import type { Action, Block, Choice, Field, FieldOption } from '../../shared/messages.js';
import type { MoveName } from '../../shared/moves.js';

type Args = Readonly<Record<string, string>>;
type FormBlock = Extract<Block, { type: 'form' }>;

/** What pressing makes happen. */
export function move(name: MoveName, args: Args = {}): Action {
  return { kind: 'move', name, args };
}

/** What pressing shows. */
export function look(name: LookName, args: Args = {}): Action {
  return { kind: 'look', name, args };
}

export function heading(text: string): Block {
  return { type: 'heading', text };
}

export function prose(text: string): Block {
  return { type: 'prose', prose: [{ text }] };
}

/** A line that begins with a strong word. */
export function strongProse(strong: string, text: string): Block {
  return { type: 'prose', prose: [{ text: strong, strong: true }, { text: ` ${text}` }] };
}

export function quotation(text: string, by: string | null): Block {
  return { type: 'quotation', text, by };
}

/** The text that is read: large, and listened to. */
export function reading(text: string): Block {
  return { type: 'quotation', text, by: null, reading: true };
}

/** A list, or nothing where there are no items. */
export function list(items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [{ type: 'list', items: items.map((text) => [{ text }]) }];
}

export function choice(label: string, action: Action, main = false): Choice {
  return main ? { label, action, main } : { label, action };
}

/** Choices, or nothing where there are none. */
export function choices(prompt: string | null, all: readonly Choice[]): readonly Block[] {
  return all.length === 0 ? [] : [{ type: 'choices', prompt, choices: all }];
}

/** A form; `main` marks the one next thing. */
export function form(
  title: string,
  action: Action,
  fields: readonly Field[],
  submit: string,
  main = false,
): FormBlock {
  const made = { type: 'form', title, action, fields, submit } as const;
  return main ? { ...made, main } : made;
}

export function pick(
  name: string,
  label: string,
  options: readonly FieldOption[],
  required = true,
  value?: string,
): Field {
  const made = { kind: 'pick', name, label, options, required } as const;
  return value === undefined ? made : { ...made, value };
}

/** A typed field: `line` is one line of at most 200 characters, `text` more. */
export function typed(
  kind: 'line' | 'text',
  name: string,
  label: string,
  more: {
    readonly required?: boolean;
    readonly max?: number;
    readonly value?: string;
    readonly hint?: string;
  } = {},
): Field {
  const { required = true, max = kind === 'line' ? 200 : 1000, value, hint } = more;
  return {
    kind,
    name,
    label,
    required,
    max,
    ...(value === undefined ? {} : { value }),
    ...(hint === undefined ? {} : { hint }),
  };
}

/** Options whose value is also their label. */
export function sameOptions(values: readonly string[]): readonly FieldOption[] {
  return values.map((value) => ({ value, label: value }));
}
