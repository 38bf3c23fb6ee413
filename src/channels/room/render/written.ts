import type { JSX } from 'hono/jsx/jsx-runtime';

/** An element as HTML; nothing in the room's views waits for anything, so it is there at once. */
export function written(element: JSX.Element): string {
  return (element as { toString(): string }).toString();
}
