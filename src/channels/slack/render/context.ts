import type { FormBlock, LookRef } from '../press-code.js';

/** What rendering knows besides the blocks. */
export interface RenderContext {
  /** The look that was answered, null for a reply or a message that was told. */
  readonly look: LookRef | null;
  /** The form that stands open in this view. */
  readonly open: FormBlock | null;
  /** A name for a block or an action, unique in its payload. */
  readonly newName: () => string;
}

/** A fresh context. */
export function renderContext(look: LookRef | null, open: FormBlock | null = null): RenderContext {
  let names = 0;
  return {
    look,
    open,
    newName: () => {
      names += 1;
      return `n${names}`;
    },
  };
}
