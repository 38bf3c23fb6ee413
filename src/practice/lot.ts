import type { PersonId } from '../../shared/ids.js';
import { shuffled, type Chance } from './chance.js';
import { pupilsOf } from './lookup.js';
import type { ClassState, Group } from './state.js';

/** Pupils of a group who aren't away. */
export function activeOf(state: ClassState, group: Group): readonly PersonId[] {
  return pupilsOf(state, group.id)
    .filter(({ away }) => !away)
    .map(({ id }) => id);
}

/** One leader by lot: who led least, never twice running unless nobody else is there; null where nobody is. */
export function drawLeader(
  candidates: readonly PersonId[],
  led: Readonly<Record<PersonId, number>>,
  last: PersonId | null,
  chance: Chance,
): PersonId | null {
  const others = candidates.filter((person) => person !== last);
  const pool = others.length > 0 ? others : candidates;
  const least = Math.min(...pool.map((person) => led[person] ?? 0));
  return (
    shuffled(
      pool.filter((person) => (led[person] ?? 0) === least),
      chance,
    )[0] ?? null
  );
}

/** Leaders for each segment of a leg; the counts run on over passages. */
export function drawLeaders(
  state: ClassState,
  group: Group,
  segments: number,
  chance: Chance,
): readonly PersonId[] {
  const candidates = activeOf(state, group);
  const led: Record<PersonId, number> = { ...group.led };
  let last = group.lastLeader;
  const drawn: PersonId[] = [];
  for (let nth = 0; nth < segments; nth += 1) {
    const leader = drawLeader(candidates, led, last, chance);
    if (leader === null) break;
    drawn.push(leader);
    led[leader] = (led[leader] ?? 0) + 1;
    last = leader;
  }
  return drawn;
}
