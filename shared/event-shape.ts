import type { Actor } from './moves.js';
import type { Instant } from './time.js';

/** When and by whom; on every event. */
interface Meta {
  readonly at: Instant;
  readonly by: Actor;
}

/** An event by its name, with what it carries. */
export type E<Type extends string, Rest = unknown> = { readonly type: Type } & Meta & Rest;
