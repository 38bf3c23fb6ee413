import { mayMove } from '../../shared/moves.js';
import { mayLook } from '../../shared/looks.js';
import type { Action, Block } from '../../shared/messages.js';
import type { Role } from '../../shared/roles.js';

function may(role: Role, action: Action): boolean {
  const table: Readonly<Record<string, readonly Role[]>> = action.kind === 'move' ? mayMove : mayLook;
  return table[action.name]?.includes(role) === true;
}

/** Blocks without the choices and forms that a role may not use. */
export function allowedBlocks(role: Role, blocks: readonly Block[]): readonly Block[] {
  return blocks.flatMap((block): readonly Block[] => {
    if (block.type === 'form') return may(role, block.action) ? [block] : [];
    if (block.type !== 'choices') return [block];
    const left = block.choices.filter(({ action }) => may(role, action));
    return left.length === 0 ? [] : [{ ...block, choices: left }];
  });
}
