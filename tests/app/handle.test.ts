import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ClassId, PersonId } from '../../shared/ids.js';
import { calendar } from '../../src/app/calendar.js';
import { foundClass } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { silentLog } from '../../src/app/log.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { fakeJudges } from '../support/fake-judges.js';

let store: Store;
let house: OpenHouse;
let classId: ClassId;
let tutor: PersonId;
beforeEach(async () => {
  store = await memoryStore();
  const clock = { now: () => Date.UTC(2026, 9, 6, 9) };
  const key = 'a key for tests only, long enough to sign';
  const baseUrl = () => 'http://127.0.0.1';
  house = openHouse({
    store,
    judges: fakeJudges,
    calendar,
    clock,
    log: silentLog,
    key,
    baseUrl,
    seed: () => 7,
  });
  ({ classId, tutor } = await foundClass(house, { name: 'Readers', zone: 'UTC', nickname: 'Plover' }));
});
afterEach(() => store.close());

const make = (id: string, name: string) =>
  house.move({ id, who: { classId, person: tutor }, move: 'make-group', fields: { name } });
const groups = async () => Object.values((await house.classes.load(classId)).groups).map(({ name }) => name);

describe('An update that comes more than once', () => {
  it('is answered as the first time, though by now it would be refused', async () => {
    const first = await make('one', 'Eels');
    expect(first.done).toBe(true);
    expect((await make('two', 'Eels')).done).toBe(false);
    expect(await make('one', 'Eels')).toEqual(first);
    house.classes.drop(classId);
    expect(await make('one', 'Eels')).toEqual(first);
    expect((await groups()).filter((name) => name === 'Eels')).toHaveLength(1);
  });

  it('is done once and answered alike where three come at once', async () => {
    const [first, ...others] = await Promise.all([1, 2, 3].map(() => make('one', 'Eels')));
    expect(others).toEqual([first, first]);
    expect((await groups()).filter((name) => name === 'Eels')).toHaveLength(1);
  });

  it('leaves the class as it was where it would be done anew, and what follows is not confused by it', async () => {
    const { version } = await house.classes.load(classId);
    const visit = (id: string) =>
      house.move({
        id,
        who: { classId, person: tutor },
        move: 'change-setting',
        fields: { setting: 'idle minutes', value: '45' },
      });
    await visit('one');
    await make('two', 'Eels');
    await visit('one');
    await make('three', 'Crabs');
    const state = await house.classes.load(classId);
    expect(await store.events(classId)).toHaveLength(state.version);
    house.classes.drop(classId);
    expect(await house.classes.load(classId)).toEqual(state);
    expect(state.version).toBe(version + 3);
  });

  it('is refused again in the same words where it was refused', async () => {
    await make('one', 'Eels');
    const refused = await make('two', 'Eels');
    expect(await make('two', 'Eels')).toEqual(refused);
    expect(await store.reply(classId, 'two')).toBe(JSON.stringify(refused));
  });
});
