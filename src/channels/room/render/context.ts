/** What was typed into a form whose move was refused, so that nothing is lost. */
export interface Kept {
  readonly kind: 'move' | 'look' | 'command';
  readonly name: string;
  readonly fields: Readonly<Record<string, string>>;
}

/** What the blocks of one region of a page need to become HTML. */
export interface RenderContext {
  /** Guards each form. */
  readonly token: string;
  /** The page to come back to, path and query. */
  readonly back: string;
  /** A fresh update id for each form, so that a double press is done once. */
  readonly newId: () => string;
  /** An element id that is unique on the page. */
  readonly newName: () => string;
  readonly kept: Kept | null;
  /** Whether a grown-up may type for who is here, and says so. */
  readonly scribe: boolean;
  /** The heading level at which headings of a message stand. */
  readonly headings: 2 | 3;
  /** What heads the page, so that a form needn't say it again. */
  readonly title: string | null;
  /** Whether there is one next thing to do here, drawn large; what came earlier has none. */
  readonly mains: boolean;
  /** Told which of what was kept found its form again. */
  readonly found: () => void;
}

/** A context for one region; the prefix keeps element ids apart when regions are swapped one by one. */
export function openContext(
  prefix: string,
  rest: Pick<RenderContext, 'token' | 'back' | 'kept' | 'scribe' | 'headings'> &
    Partial<Pick<RenderContext, 'title' | 'mains'>> & {
      readonly found?: () => void;
    },
): RenderContext {
  let count = 0;
  return {
    title: null,
    mains: true,
    ...rest,
    found: rest.found ?? (() => undefined),
    newId: () => crypto.randomUUID(),
    newName: () => `${prefix}-${(count += 1)}`,
  };
}
