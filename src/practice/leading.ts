import type { EventOf } from '../../shared/events.js';
import type { GroupId, PersonId } from '../../shared/ids.js';
import { openPractice } from './advance.js';
import { add, groupAt, type Deciding } from './deciding.js';
import { drawLeader } from './lot.js';

/** Hands the lead of the open segment to another by lot; whoever passes keeps the place in the lot. */
export function passLead(
  d: Deciding,
  id: GroupId,
  why: EventOf<'leader-changed'>['why'],
  not: readonly PersonId[],
): void {
  const practice = openPractice(d, id);
  if (practice === null) return;
  const group = groupAt(d, id);
  const { active, leader, stop } = practice.segment;
  const others = active.filter((person) => !not.includes(person) && person !== leader);
  const drawn = drawLeader(others, group.led, group.lastLeader, d.chance);
  add(d, { type: 'leader-changed', group: id, stop, leader: drawn, partner: null, from: leader, why });
}
