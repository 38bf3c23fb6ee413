import type { Block } from '../../shared/messages.js';
import { missingOf } from '../practice/readiness.js';
import { staff, type Asked } from './asked.js';
import { heading, list, prose } from './blocks.js';

/** What the class still has to set before pupils come in, with the commands; nothing where all is set. */
export function notReady({ state }: Pick<Asked, 'state'>): readonly Block[] {
  const missing = missingOf(state);
  if (missing.length === 0) return [];
  return [
    heading(staff('not ready title')),
    prose(staff('not ready why')),
    ...list(missing.map((need) => staff(`missing ${need}`))),
    prose(staff('try it')),
  ];
}
