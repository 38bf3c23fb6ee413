import { createHmac } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import { strategies } from '../../shared/strategies.js';
import { missingOf } from '../practice/readiness.js';
import type { ClassState } from '../practice/state.js';
import type { School } from './school.js';
import { doorLimits } from './doors.js';
import { foundClass, mustMove, personNamed } from './founding.js';

/** The invented class: nicknames of shore birds, one group of four. */
const people = {
  tutor: 'Plover',
  teacher: 'Heron',
  administrator: 'Curlew',
  lead: 'Egret',
  deputy: 'Knot',
  pupils: ['Wren', 'Finch', 'Pipit', 'Dunlin'],
} as const;

export interface DemoLinks {
  readonly tutor: string;
  readonly teacher: string;
  readonly administrator: string;
  readonly pupils: readonly string[];
}

/** A passage of the fixtures as text. */
export function fixtureText(path: string): string {
  return readFileSync(fileURLToPath(import.meta.resolve(`#fixtures/${path}`)), 'utf8');
}

/** The passages of the invented class, in the order in which they are set. */
export const demoPassages = [
  'passages/demo/the-tide-clock.md',
  'passages/demo/why-shingle-sings.md',
] as const;

/** Makes the invented class on a fresh data folder, its practice started. */
export async function makeDemoClass(school: School): Promise<ClassId> {
  const { house, store } = school;
  const { classId, tutor } = await foundClass(house, {
    name: 'Harbour Readers',
    zone: 'Europe/London',
    nickname: people.tutor,
  });
  const made = await mustMove(house, classId, tutor, [
    { type: 'add-person', nickname: people.administrator, role: 'administrator' },
    { type: 'add-person', nickname: people.teacher, role: 'teacher' },
    { type: 'add-person', nickname: people.lead, role: 'safeguarding lead' },
    { type: 'add-person', nickname: people.deputy, role: 'safeguarding deputy' },
    {
      type: 'change-setting',
      setting: 'alarm text',
      value: 'Somebody is in the library at every break. You can go there.',
    },
    { type: 'change-setting', setting: 'alarm number', value: '000 000 (an invented number)' },
  ]);
  const group = Object.values(made.groups)[0]?.id;
  if (group === undefined) throw new Error('Cannot make the invented class, expected a group, got none');
  let state = await mustMove(house, classId, tutor, [
    ...people.pupils.map((nickname) => ({ type: 'add-person', nickname, role: 'pupil', group }) as const),
    ...strategies
      .filter((one) => !made.groups[group]?.open.includes(one))
      .map((strategy) => ({ type: 'open-strategy', strategy }) as const),
  ]);
  for (const path of demoPassages) {
    const before = new Set(Object.keys(state.shelf));
    state = await mustMove(house, classId, tutor, [
      { type: 'add-passage', text: fixtureText(path), grade: 5 },
    ]);
    const passage = Object.values(state.shelf).find(({ id }) => !before.has(id));
    if (passage)
      state = await mustMove(house, classId, tutor, [{ type: 'set-passage', passage: passage.id, group }]);
  }
  await mustMove(house, classId, tutor, [{ type: 'start-practice', group }]);
  await store.setNote('demo class', classId);
  return classId;
}

/** The invented class with a deputy, also where an older version made it without. */
async function settled(house: School['house'], classId: ClassId): Promise<ClassState> {
  const state = await house.classes.load(classId);
  const tutor = personNamed(state, people.tutor);
  if (tutor === null || !missingOf(state).includes('deputy')) return state;
  return mustMove(house, classId, tutor, [
    { type: 'add-person', nickname: people.deputy, role: 'safeguarding deputy' },
  ]);
}

/** The links of the invented class: made from the key, so that they stay the same at every start. Real classes' links are random and shown once. */
export async function demoLinks(school: School, classId: ClassId, base: string): Promise<DemoLinks> {
  const { house, key } = school;
  const state = await settled(house, classId);
  const linkOf = async (nickname: string): Promise<string> => {
    const person = personNamed(state, nickname) ?? asId<PersonId>('');
    const secret = createHmac('sha256', key)
      .update(`demo ${classId} ${nickname}`)
      .digest('base64url')
      .slice(0, 24);
    const staff = state.people[person]?.role !== 'pupil';
    await house.doors.keepSlip(classId, person, secret, staff ? doorLimits.staffLink : doorLimits.pupilSlip);
    return `${base}/in/${secret}`;
  };
  return {
    tutor: await linkOf(people.tutor),
    teacher: await linkOf(people.teacher),
    administrator: await linkOf(people.administrator),
    pupils: await Promise.all(people.pupils.slice(0, 3).map(linkOf)),
  };
}
