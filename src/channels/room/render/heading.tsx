import type { Child } from 'hono/jsx';

/** A heading at the level that its place in the page asks for. */
export function Heading({
  at,
  id,
  unseen,
  children,
}: {
  readonly at: 2 | 3;
  readonly id?: string;
  /** Read aloud only, where the page shows the same words already. */
  readonly unseen?: boolean;
  readonly children?: Child;
}) {
  const attributes = { ...(id === undefined ? {} : { id }), ...(unseen ? { class: 'unseen' } : {}) };
  return at === 2 ? <h2 {...attributes}>{children}</h2> : <h3 {...attributes}>{children}</h3>;
}
