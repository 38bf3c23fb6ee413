import type { Block } from '../../shared/messages.js';
import type { Turn } from '../practice/turn.js';
import { nameOf, say, type Asked } from './asked.js';
import { prose } from './blocks.js';

/** Who leads, and until when or from when something is open: a day and a time. */
export function whereWeStand(asked: Asked, turn: Turn): readonly Block[] {
  const until = turn.until === null ? null : asked.port.when(turn.until);
  const state = (): string | null => {
    switch (turn.phase) {
      case 'none':
        return say(asked, turn.passage === null ? 'no text yet' : 'have read');
      case 'paused':
        return say(asked, 'paused');
      case 'waiting':
        return until === null ? say(asked, 'opens later') : say(asked, 'opens', { when: until });
      case 'done':
        return say(asked, 'done here');
      case 'look first':
        return say(asked, 'look first');
      case 'open':
        return until === null ? null : say(asked, 'open until', { when: until });
      default:
        return turn.phase satisfies never;
    }
  };
  const leads = (): string | null => {
    if (turn.phase !== 'open' && turn.phase !== 'done') return null;
    if (turn.leads) return say(asked, 'you lead');
    return turn.leader === null ? null : say(asked, 'leads', { leader: nameOf(asked.state, turn.leader) });
  };
  return [leads(), state()].filter((line) => line !== null).map(prose);
}
