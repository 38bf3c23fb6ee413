import type { Child } from 'hono/jsx';
import type { FeedItem } from '../../../../shared/channel.js';
import type { Message } from '../../../../shared/messages.js';
import { openContext, type RenderContext } from '../render/context.js';
import { withoutStanding } from '../render/standing.js';
import { MessageView } from '../render/message.js';
import { say } from '../words.js';
import { backOf, type Ask } from './page.js';

/** What blocks of one region of a page need; `name` keeps its element ids apart from those of others. */
export function contextFor(
  ask: Ask,
  name: string,
  headings: 2 | 3 = 2,
  more: { readonly title?: string | null; readonly mains?: boolean } = {},
): RenderContext {
  return openContext(name, {
    token: ask.visitor.token,
    back: backOf(ask.url),
    kept: ask.kept,
    scribe: ask.visitor.profile.role === 'pupil',
    headings,
    found: ask.found,
    mains: headings === 2,
    ...more,
  });
}

/** Messages one under the other. */
export function Messages({
  messages,
  context,
}: {
  readonly messages: readonly Message[];
  readonly context: RenderContext;
}) {
  return (
    <>
      {messages.map((message) => (
        <MessageView message={message} context={context} />
      ))}
    </>
  );
}

/** Stored messages of a feed, oldest first. */
export function FeedView({
  items,
  context,
}: {
  readonly items: readonly FeedItem[];
  readonly context: RenderContext;
}) {
  return (
    <>
      {items.map(({ message, seq, at }) => (
        <MessageView
          message={context.scribe ? withoutStanding(message) : message}
          context={context}
          seq={seq}
          at={at}
        />
      ))}
    </>
  );
}

/** A part of a page that the script swaps when something changed; it works as it is without one. */
export function Region({
  name,
  title,
  quiet,
  children,
}: {
  readonly name: string;
  readonly title?: string;
  /** Not swapped: what is in it is being filled in. */
  readonly quiet?: boolean;
  readonly children?: Child;
}) {
  const live = quiet ? {} : { 'data-live': say('something new') };
  return (
    <section
      class={`region region-${name}`}
      id={name}
      {...live}
      {...(title === undefined ? {} : { 'aria-labelledby': `${name}-title` })}
    >
      {title === undefined ? null : <h2 id={`${name}-title`}>{title}</h2>}
      {children}
    </section>
  );
}
