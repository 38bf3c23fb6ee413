import type { Action, Block } from '../../../../shared/messages.js';
import { say } from '../words.js';
import { encodingOf, postPath } from './choices.js';
import type { Kept, RenderContext } from './context.js';
import { FieldView } from './field.js';
import { Heading } from './heading.js';
import { Hidden } from './hidden.js';
import { plain } from './plain.js';

/** Moves whose text an adult may type for a child, and say so. */
const scribable: readonly string[] = ['send-draft', 'improve-draft'];

function keptFor(kept: Kept | null, action: Action): Readonly<Record<string, string>> | null {
  if (kept === null || kept.kind !== action.kind || kept.name !== action.name) return null;
  return Object.entries(action.args).every(([name, value]) => kept.fields[name] === value)
    ? kept.fields
    : null;
}

/** A form of labelled fields; what was typed into it before a refusal stands in it again. */
export function FormView({
  block,
  context,
}: {
  readonly block: Extract<Block, { type: 'form' }>;
  readonly context: RenderContext;
}) {
  const id = context.newName();
  const kept = keptFor(context.kept, block.action);
  if (kept) context.found();
  const large = block.fields.some((field) => field.kind === 'file' || ('max' in field && field.max > 5000));
  const main = block.main && context.mains;
  const names = new Set(block.fields.map(({ name }) => name));
  const args = Object.fromEntries(Object.entries(block.action.args).filter(([name]) => !names.has(name)));
  return (
    <form
      method="post"
      action={postPath(block.action)}
      class={main ? 'form form-main' : 'form'}
      aria-labelledby={id}
      {...(large ? { enctype: 'multipart/form-data' } : encodingOf(args))}
      {...(kept ? { id: 'kept' } : {})}
    >
      <Heading at={context.headings} id={id} unseen={block.title === context.title}>
        {plain(block.title)}
      </Heading>
      <Hidden context={context} args={args} />
      {block.fields.map((field) => (
        <FieldView field={field} kept={kept?.[field.name]} context={context} />
      ))}
      {context.scribe && scribable.includes(block.action.name) ? (
        <label class="pick">
          <input type="checkbox" name="_given" value="scribed" />
          <span>{say('scribed')}</span>
        </label>
      ) : null}
      <button type="submit" class={main ? 'button main' : 'button'}>
        {plain(block.submit)}
      </button>
    </form>
  );
}
