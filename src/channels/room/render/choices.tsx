import type { Block, Choice } from '../../../../shared/messages.js';
import { pathOfLook } from '../paths.js';
import type { RenderContext } from './context.js';
import { Hidden } from './hidden.js';
import { plain } from './plain.js';

/** Where an action is posted to. */
export function postPath(action: { readonly kind: 'move' | 'look'; readonly name: string }): string {
  return `/${action.kind}/${encodeURIComponent(action.name.toWellFormed())}`;
}

/** Long arguments are sent apart, since an address-like encoding makes them up to three times as long. */
export function encodingOf(args: Readonly<Record<string, string>>): {
  readonly enctype?: 'multipart/form-data';
} {
  return Object.values(args).some((value) => value.length > 5000) ? { enctype: 'multipart/form-data' } : {};
}

function OneChoice({ choice, context }: { readonly choice: Choice; readonly context: RenderContext }) {
  const { action } = choice;
  const look = choice.main && context.mains ? 'button main' : 'button';
  const path = action.kind === 'look' ? pathOfLook(action.name, action.args) : null;
  if (path !== null) {
    return (
      <a class={look} href={path}>
        {plain(choice.label)}
      </a>
    );
  }
  return (
    <form method="post" action={postPath(action)} class="choice" {...encodingOf(action.args)}>
      <Hidden context={context} args={action.args} />
      <button type="submit" class={look}>
        {plain(choice.label)}
      </button>
    </form>
  );
}

/** The one next thing first. */
function inOrder(choices: readonly Choice[]): readonly Choice[] {
  return choices.toSorted((a, b) => Number(b.main ?? false) - Number(a.main ?? false));
}

/** Things to press: a link for a look, a small form of its own for a move, so that each works without script. */
export function Choices({
  block,
  context,
}: {
  readonly block: Extract<Block, { type: 'choices' }>;
  readonly context: RenderContext;
}) {
  const id = context.newName();
  const list = (
    <ul class="choices" {...(block.prompt === null ? {} : { 'aria-labelledby': id })}>
      {inOrder(block.choices).map((choice) => (
        <li class={choice.main && context.mains ? 'choices-main' : undefined}>
          <OneChoice choice={choice} context={context} />
        </li>
      ))}
    </ul>
  );
  if (block.prompt === null) return list;
  return (
    <div>
      <p class="prompt" id={id}>
        {plain(block.prompt)}
      </p>
      {list}
    </div>
  );
}
