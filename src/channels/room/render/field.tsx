import type { Field } from '../../../../shared/messages.js';
import { say } from '../words.js';
import type { RenderContext } from './context.js';
import { plain } from './plain.js';
import { Tap } from './tap.js';

interface Shown<F extends Field = Field> {
  readonly field: F;
  readonly value: string | undefined;
  readonly context: RenderContext;
}
type FieldOf<K extends Field['kind']> = Extract<Field, { kind: K }>;

/** From how many options on a list is shorter than buttons in a row. */
const longPick = 8;

function Label({ of, field }: { readonly of: string; readonly field: Field }) {
  return (
    <label for={of}>
      {plain(field.label)} {field.required ? null : <span class="optional">{say('may be empty')}</span>}
    </label>
  );
}

function Typed({ field, value, context }: Shown<FieldOf<'line' | 'text'>>) {
  const id = context.newName();
  const hint = field.hint === undefined ? null : `${id}-hint`;
  const common = {
    id,
    name: field.name,
    required: field.required,
    maxlength: field.max,
    autocomplete: 'off',
    dir: 'auto' as const,
    // A browser's checker may send words out, and spelling doesn't count here.
    spellcheck: false,
    ...(hint === null ? {} : { 'aria-describedby': hint }),
  };
  return (
    <div class="field">
      <Label of={id} field={field} />
      {hint === null ? null : (
        <p class="hint" id={hint}>
          {plain(field.hint ?? '')}
        </p>
      )}
      {field.kind === 'line' ? (
        <input type="text" {...common} value={plain(value ?? '')} />
      ) : (
        <textarea {...common} rows={field.max > 5000 ? 12 : 4}>
          {`\n${plain(value ?? '')}`}
        </textarea>
      )}
    </div>
  );
}

function Pick({ field, value, context }: Shown<FieldOf<'pick'>>) {
  const id = context.newName();
  if (field.many || field.options.length < longPick) {
    const picked = field.many ? (value ?? '').split(',') : [value ?? ''];
    return (
      <fieldset class="field">
        <legend>
          {plain(field.label)} {field.required ? null : <span class="optional">{say('may be empty')}</span>}
        </legend>
        {field.options.map((option) => (
          <label class="pick">
            <input
              type={field.many ? 'checkbox' : 'radio'}
              name={field.name}
              value={option.value}
              required={field.required && !field.many}
              checked={picked.includes(option.value)}
            />
            <span>
              <bdi>{plain(option.label)}</bdi>
            </span>
          </label>
        ))}
        {field.required || field.many ? null : (
          <label class="pick">
            <input type="radio" name={field.name} value="" checked={(value ?? '') === ''} />
            <span>{say('no pick')}</span>
          </label>
        )}
      </fieldset>
    );
  }
  return (
    <div class="field">
      <Label of={id} field={field} />
      <select id={id} name={field.name} required={field.required}>
        <option value="">{say('pick from list')}</option>
        {field.options.map((option) => (
          <option value={option.value} selected={option.value === value}>
            {plain(option.label)}
          </option>
        ))}
      </select>
    </div>
  );
}

function FilePick({ field, context }: Shown<FieldOf<'file'>>) {
  const id = context.newName();
  return (
    <div class="field">
      <Label of={id} field={field} />
      <input
        type="file"
        id={id}
        name={field.name}
        required={field.required}
        accept=".txt,.md,text/plain,text/markdown"
      />
    </div>
  );
}

/** A labelled field of a form; `kept` is what was typed before. */
export function FieldView({
  field,
  kept,
  context,
}: {
  readonly field: Field;
  readonly kept: string | undefined;
  readonly context: RenderContext;
}) {
  switch (field.kind) {
    case 'line':
    case 'text':
      return <Typed field={field} value={kept ?? field.value} context={context} />;
    case 'pick':
      return <Pick field={field} value={kept ?? field.value} context={context} />;
    case 'sentence':
    case 'word':
      return <Tap field={field} value={kept} />;
    case 'file':
      return <FilePick field={field} value={undefined} context={context} />;
    default:
      return field satisfies never;
  }
}
