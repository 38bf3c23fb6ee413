import type { GroupId, PersonId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { said } from '../../shared/said.js';
import { settle } from './advance.js';
import { shuffled } from './chance.js';
import { actorOf, add, groupAt, mint, personAt, refuse, type Deciding } from './deciding.js';
import { groupsOf, pupilsOf } from './lookup.js';
import { settingDefaults, withSetting } from './settings.js';

type ClassMove = MoveOf<
  'make-class' | 'change-setting' | 'open-strategy' | 'close-strategy' | 'make-group' | 'split-group'
>;

/** Moves about the class itself and its groups. */
export function decideClass(d: Deciding, move: ClassMove): void {
  switch (move.type) {
    case 'make-class':
      return makeClass(d, move);
    case 'change-setting':
      if (move.setting === 'staff passphrase' && actorOf(d).role !== 'administrator') {
        refuse(
          'not allowed',
          'Cannot set staff passphrase, expected an administrator, got another role',
          'Ask an administrator of the class.',
        );
      }
      withSetting(d.state.settings, move.setting, move.value, d.tools.calendar);
      return add(d, { type: 'setting-changed', setting: move.setting, value: move.value });
    case 'open-strategy':
    case 'close-strategy':
      return changeStrategy(d, move);
    case 'make-group':
      if (groupsOf(d.state).some(({ name }) => name === move.name)) {
        refuse(
          'in use',
          'Cannot make that group, expected a new name, got one that is used',
          'Take another name.',
        );
      }
      return add(d, { type: 'group-made', group: mint<GroupId>(d, 'g'), name: move.name });
    case 'split-group':
      return splitGroup(d, move);
    default:
      return move satisfies never;
  }
}

/** A new class has its founder as the tutor, and one group. */
function makeClass(d: Deciding, move: MoveOf<'make-class'>): void {
  if (d.state.made) {
    refuse(
      'in use',
      'Cannot make this class, expected a new one, got one that is made',
      'Make another class.',
    );
  }
  if (!d.tools.calendar.knows(move.zone)) {
    refuse(
      'bad input',
      'Cannot make this class, expected the name of a time zone',
      'Write it like this: Europe/Paris',
    );
  }
  add(d, {
    type: 'class-made',
    name: move.name,
    zone: move.zone,
    register: move.register ?? '8-10',
    moderation: settingDefaults.moderation,
  });
  add(d, { type: 'group-made', group: mint<GroupId>(d, 'g'), name: 'Group 1' });
  const person = mint<PersonId>(d, 'u');
  const nickname = said(person, move.nickname);
  add(d, { type: 'person-added', person, nickname, role: 'tutor', group: null, register: null });
}

function changeStrategy(d: Deciding, move: MoveOf<'open-strategy' | 'close-strategy'>): void {
  if (move.group !== undefined) groupAt(d, move.group);
  if (move.pupil !== undefined) personAt(d, move.pupil);
  const { strategy } = move;
  const group = move.pupil === undefined ? (move.group ?? null) : null;
  const pupil = move.pupil ?? null;
  const type = move.type === 'open-strategy' ? 'strategy-opened' : 'strategy-closed';
  add(d, { type, strategy, group, pupil });
  for (const { id } of groupsOf(d.state)) settle(d, id);
}

/** Half of the pupils, by lot, go to a new group. */
function splitGroup(d: Deciding, move: MoveOf<'split-group'>): void {
  const { name } = groupAt(d, move.group);
  const pupils = pupilsOf(d.state, move.group);
  if (pupils.length < 4) {
    refuse(
      'wrong time',
      `Cannot split this group, expected at least 4 pupils, got ${pupils.length}`,
      'Keep them together.',
    );
  }
  const group = mint<GroupId>(d, 'g');
  add(d, { type: 'group-made', group, name: freeName(d, name) });
  const moved = shuffled(pupils, d.chance).slice(0, Math.floor(pupils.length / 2));
  for (const { id } of moved) add(d, { type: 'pupil-moved', person: id, group });
}

function freeName(d: Deciding, name: string): string {
  const used = groupsOf(d.state).map((group) => group.name);
  let number = 2;
  while (used.includes(`${name} ${number}`)) number += 1;
  return `${name} ${number}`;
}
