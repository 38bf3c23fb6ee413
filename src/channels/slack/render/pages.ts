import type { KnownBlock } from '@slack/types';

/** A block on its way into a payload; where `glue` is set it stays with the next one as far as a page allows. */
export interface Unit {
  readonly block: KnownBlock;
  readonly glue: boolean;
}

export interface PageLimits {
  readonly blocks: number;
  readonly text: number;
}

const unread = new Set(['type', 'style', 'block_id', 'action_id']);

/** Characters of a block that count against a payload's budget: all texts and values. */
export function textSize(value: unknown): number {
  if (Array.isArray(value)) return value.reduce((sum: number, one) => sum + textSize(one), 0);
  if (typeof value !== 'object' || value === null) return 0;
  return Object.entries(value).reduce((sum, [key, one]) => {
    if (typeof one === 'string') return unread.has(key) ? sum : sum + one.length;
    return sum + textSize(one);
  }, 0);
}

/** Blocks that belong together, the last one without glue. */
export function glued(blocks: readonly KnownBlock[], toNext = false): readonly Unit[] {
  return blocks.map((block, at) => ({ block, glue: toNext || at < blocks.length - 1 }));
}

function groupsOf(units: readonly Unit[]): readonly (readonly KnownBlock[])[] {
  const groups: KnownBlock[][] = [[]];
  for (const { block, glue } of units) {
    groups.at(-1)?.push(block);
    if (!glue) groups.push([]);
  }
  return groups.filter((group) => group.length > 0);
}

/** Parts units into pages within the limits, between groups where it can be and between blocks where a group is larger than a page. */
export function pagesOf(
  units: readonly Unit[],
  { blocks: most, text }: PageLimits,
): readonly (readonly KnownBlock[])[] {
  const pages: KnownBlock[][] = [[]];
  let size = 0;
  const add = (some: readonly KnownBlock[]): void => {
    pages.at(-1)?.push(...some);
    size += textSize(some);
  };
  const fits = (some: readonly KnownBlock[]): boolean =>
    (pages.at(-1)?.length ?? 0) + some.length <= most && size + textSize(some) <= text;
  const open = (): void => {
    if ((pages.at(-1)?.length ?? 0) === 0) return;
    pages.push([]);
    size = 0;
  };
  for (const group of groupsOf(units)) {
    if (!fits(group)) open();
    if (fits(group)) {
      add(group);
      continue;
    }
    for (const block of group) {
      if (!fits([block])) open();
      add([block]);
    }
  }
  return pages.filter((page) => page.length > 0);
}
