import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Who } from '../../shared/channel.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import type { OpenHouse } from '../../src/app/house.js';
import type { Store } from '../../src/store/store.js';
import { openBareHouse } from '../support/bare-house.js';
import { readyMoves } from '../support/ready-moves.js';

let store: Store;
let house: OpenHouse;
let classId: ClassId;
let tutor: PersonId;
let wren: Who;
const now = Date.parse('2026-11-25T09:00:00Z');

beforeEach(async () => {
  ({ store, house } = await openBareHouse(() => now));
  ({ classId, tutor } = await foundClass(house, { name: 'Reeds', zone: 'UTC', nickname: 'Plover' }));
  await mustMove(house, classId, tutor, [
    ...readyMoves,
    { type: 'add-person', nickname: 'Wren', role: 'pupil' },
    { type: 'change-setting', setting: 'moderation', value: 'hold everything' },
    { type: 'add-passage', text: 'The tide is out.\n\nA crab hides under a stone.', title: 'The tide' },
  ]);
  const { groups, shelf, people } = await house.classes.load(classId);
  const [group] = Object.values(groups);
  const [passage] = Object.values(shelf);
  wren = { classId, person: personNamed(await house.classes.load(classId), 'Wren')! };
  expect(people[wren.person]?.role).toBe('pupil');
  await mustMove(house, classId, tutor, [
    { type: 'set-passage', passage: passage!.id, group: group!.id },
    { type: 'start-practice', group: group!.id },
  ]);
});
afterEach(() => store.close());

const ask = (who: Who, text: string) =>
  house.move({ id: text, who, move: 'send-draft', fields: { do: 'question', text } });

describe('A class in several places', () => {
  it('knows one pupil by the slip in the room and by a second one on each platform, in one journal', async () => {
    const first = await house.makeSlip({ classId, person: tutor }, wren.person);
    const discord = await house.join('discord', 'guild', 'user-1', first.secret);
    const second = await house.makeSlip({ classId, person: tutor }, wren.person);
    const slack = await house.join('slack', 'team', 'U1', second.secret);
    const room = await house.signIn(second.secret, 'laptop');
    expect(discord).toEqual(wren);
    expect(slack).toEqual(wren);
    expect(room).toMatchObject({ who: wren });
    // The second slip took the first one's place, and the ties made with it hold.
    expect(await house.identify('discord', 'guild', 'user-1')).toEqual(wren);
    expect(await house.identify('slack', 'team', 'U1')).toEqual(wren);
    for (const [at, who] of [discord, slack, wren].entries())
      if ('person' in who) await ask(who, `Why do crabs hide? ${at} #3`);
    const asked = (await store.events(classId)).filter(({ type }) => type === 'draft-judged');
    expect(asked.map((event) => 'person' in event && event.person)).toEqual(Array(3).fill(wren.person));
  });

  it('brings what waits from pupils in the room to staff in their place on a platform, and to no pupil’s place', async () => {
    await house.bindPlace({ classId, person: tutor }, 'slack', 'team', 'C-staff', {
      to: 'staff',
      group: null,
    });
    await ask(wren, 'Why do crabs hide? #3');
    const [draft] = Object.values((await house.classes.load(classId)).posts).slice(-1);
    const sent = await house.move({ id: 'p', who: wren, move: 'post-draft', fields: { post: draft!.id } });
    expect(sent.done).toBe(true);
    const rows = await store.outbox('slack', 50);
    expect(rows.map(({ place }) => place.room)).toContain('C-staff');
    const told = JSON.stringify(rows.map(({ telling }) => telling));
    expect(told).toContain('Posts that wait for you');
    expect((await store.outbox('discord', 50)).length).toBe(0);
  });
});
