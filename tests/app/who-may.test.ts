import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Who } from '../../shared/channel.js';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import { lookShapes, mayLook, type LookName } from '../../shared/looks.js';
import { mayMove, moveShapes, type MoveName } from '../../shared/moves.js';
import { roles, type Role } from '../../shared/roles.js';
import type { FieldShape, Shape } from '../../shared/shape.js';
import { calendar } from '../../src/app/calendar.js';
import { foundClass, mustMove } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { silentLog } from '../../src/app/log.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { fakeJudges } from '../support/fake-judges.js';

/** A value that a field's shape takes; ids point at nothing that is there. */
function sample(shape: FieldShape): string {
  if (typeof shape !== 'string') return shape[0] ?? '';
  if (shape === 'number') return '1';
  if (shape === 'place') return '0-1';
  if (shape === 'flag') return 'yes';
  return shape === 'line' || shape === 'text' || shape === 'page' ? 'words' : 'x1';
}

function samples(shape: Shape): Record<string, string> {
  return Object.fromEntries(
    Object.entries(shape).map(([name, field]) => [name.replace('?', ''), sample(field)]),
  );
}

const notAllowed = /expected somebody (who may|of the class)/;

describe('Who may do what', () => {
  let store: Store;
  let house: OpenHouse;
  let classId: ClassId;
  const people = new Map<Role, PersonId>();
  let updates = 0;

  beforeAll(async () => {
    const now = Date.parse('2026-11-25T09:00:00Z');
    store = await memoryStore({ now: () => now });
    house = openHouse({
      store,
      judges: fakeJudges,
      calendar,
      clock: { now: () => now },
      log: silentLog,
      key: 'a key of at least thirty-two letters',
      baseUrl: () => 'http://127.0.0.1',
      seed: () => 7,
    });
    const founded = await foundClass(house, { name: 'Who', zone: 'UTC', nickname: 'Plover' });
    classId = founded.classId;
    const state = await mustMove(
      house,
      classId,
      founded.tutor,
      roles.map((role) => ({ type: 'add-person', nickname: `One ${role}`, role }) as const),
    );
    for (const { id, role } of Object.values(state.people)) people.set(role, id);
  });
  afterAll(() => store.close());

  const whoIs = (role: Role): Who => ({ classId, person: people.get(role) ?? asId<PersonId>('') });

  async function tells(who: Who, name: MoveName): Promise<string> {
    updates += 1;
    const reply = await house.move({
      id: `walk-${updates}`,
      who,
      move: name,
      fields: samples(moveShapes[name]),
    });
    return reply.done ? 'done' : (reply.why ?? '');
  }

  for (const role of roles) {
    it.each(Object.keys(moveShapes) as MoveName[])(`a ${role} and the move %s`, async (name) => {
      const told = await tells(whoIs(role), name);
      if (mayMove[name].includes(role)) expect(told).not.toMatch(notAllowed);
      else expect(told).toMatch(notAllowed);
    });

    it.each(Object.keys(lookShapes) as LookName[])(`a ${role} and the look %s`, async (name) => {
      const reply = await house.look(whoIs(role), name, samples(lookShapes[name]));
      const told = reply.done ? 'done' : (reply.why ?? '');
      if (mayLook[name].includes(role)) expect(told).not.toMatch(/expected somebody who may see it/);
      else expect(told).toMatch(/expected somebody who may see it/);
    });
  }

  it.each(Object.keys(moveShapes) as MoveName[])('nobody at all and the move %s', async (name) => {
    expect(await tells({ classId, person: asId<PersonId>('u999') }, name)).not.toBe('done');
  });

  it.each(Object.keys(lookShapes) as LookName[])(
    'somebody of another class and the look %s',
    async (name) => {
      const other = await foundClass(house, { name: 'Other', zone: 'UTC', nickname: 'Dunnock' });
      // Their id means somebody else here, or nobody: ids hold within one class, and the session says which.
      const state = await house.classes.load(classId);
      const stranger = { classId, person: asId<PersonId>(`${other.tutor}-of-${other.classId}`) };
      expect(state.people[stranger.person]).toBeUndefined();
      expect((await house.look(stranger, name, samples(lookShapes[name]))).done).toBe(false);
    },
  );
});
