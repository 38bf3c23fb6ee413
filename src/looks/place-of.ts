import type { PassageId } from '../../shared/ids.js';
import { leadsNow } from '../practice/duty.js';
import { hasRead } from '../practice/has-read.js';
import { runningOf } from '../practice/lookup.js';
import type { Group } from '../practice/state.js';
import type { Asked } from './asked.js';

/** A segment of a passage, counted from 0; -1 is the card before the first. */
export interface Where {
  readonly passage: PassageId | null;
  readonly stop: number;
}

/** The group that somebody writes in: a pupil's own; an adult's is the one that they lead, else the only one. */
function groupOf({ state, by }: Pick<Asked, 'state' | 'by'>): Group | undefined {
  if (by.group !== null) return state.groups[by.group];
  const groups = Object.values(state.groups);
  const led = groups.find(({ practice }) => practice.phase === 'open' && leadsNow(practice, by.id));
  return led ?? (groups.length === 1 ? groups[0] : undefined);
}

/**
 * Where somebody reads: the open segment, or what comes before it for a pupil who has not looked first yet, since a
 * prediction belongs to the segment before the one that it is about. From the start all may ask and clarify: whoever opens
 * such a form (`looksFirst` false) reads the open segment.
 */
export function placeOf(asked: Pick<Asked, 'state' | 'by'>, looksFirst = true): Where {
  const group = groupOf(asked);
  const running = group === undefined ? null : runningOf(group.practice);
  if (group === undefined || running === null) return { passage: null, stop: -1 };
  if (running.phase === 'waiting') return { passage: running.passage, stop: running.nextStop - 1 };
  const reads = !looksFirst || asked.by.role !== 'pupil' || hasRead(asked.state, group, asked.by.id);
  return { passage: running.passage, stop: running.segment.stop - (reads ? 0 : 1) };
}
