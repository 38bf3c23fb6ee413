import type { JSX } from 'hono/jsx/jsx-runtime';
import type { Block } from '../../../../shared/messages.js';
import { Choices } from './choices.js';
import type { RenderContext } from './context.js';
import { FormView } from './form.js';
import { Heading } from './heading.js';
import { Bar, PictureView } from './picture.js';
import { plain } from './plain.js';
import { Spans } from './prose.js';

type Handler<T extends Block['type']> = (
  block: Extract<Block, { type: T }>,
  context: RenderContext,
) => JSX.Element;

/** How each kind of block becomes HTML. */
const handlers: { readonly [T in Block['type']]: Handler<T> } = {
  heading: ({ text }, { headings }) => <Heading at={headings}>{plain(text)}</Heading>,
  prose: ({ prose }) => (
    <p class="prose" dir="auto">
      <Spans prose={prose} />
    </p>
  ),
  quotation: ({ text, by, reading }) => (
    <figure class={reading ? 'reading' : 'quotation'}>
      <blockquote dir="auto" {...(reading ? { 'data-reading': 'yes' } : {})}>
        {plain(text)}
      </blockquote>
      {by === null ? null : (
        <figcaption>
          <bdi>{plain(by)}</bdi>
        </figcaption>
      )}
    </figure>
  ),
  list: ({ items }) => (
    <ul class="list">
      {items.map((prose) => (
        <li dir="auto">
          <Spans prose={prose} />
        </li>
      ))}
    </ul>
  ),
  measure: ({ label, value, of, words }) => (
    <p class="measure">
      <span class="measure-label">
        <bdi>{plain(label)}</bdi>
      </span>{' '}
      {of === null || of === 0 ? null : <Bar part={value / of} />} <span>{plain(words)}</span>
    </p>
  ),
  picture: ({ picture }) => <PictureView picture={picture} />,
  choices: (block, context) => <Choices block={block} context={context} />,
  form: (block, context) => <FormView block={block} context={context} />,
};

/** One block as HTML. */
export function BlockView({ block, context }: { readonly block: Block; readonly context: RenderContext }) {
  const handle = handlers[block.type] as (block: Block, context: RenderContext) => JSX.Element;
  return handle(block, context);
}
