import type { PersonId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { said, wordsOf } from '../../shared/said.js';
import { openPractice, settle } from './advance.js';
import { actorOf, add, groupAt, mint, personAt, refuse, type Deciding } from './deciding.js';
import { leadsNow } from './duty.js';
import { groupsOf, pupilsOf } from './lookup.js';
import { passLead } from './leading.js';

type PeopleMove = MoveOf<
  | 'add-person'
  | 'rename-person'
  | 'move-pupil'
  | 'remove-person'
  | 'erase-person'
  | 'reset-second-key'
  | 'set-goal'
  | 'set-help'
>;

/** More pupils than this are offered a split. */
const largestGroup = 6;
const longestNickname = 40;

/** Moves about the people of the class. */
export function decidePeople(d: Deciding, move: PeopleMove): void {
  switch (move.type) {
    case 'add-person':
      return addPerson(d, move);
    case 'rename-person':
      personAt(d, move.person);
      checkNickname(d, move.nickname, move.person);
      return add(d, {
        type: 'person-renamed',
        person: move.person,
        nickname: said(move.person, move.nickname),
      });
    case 'move-pupil':
      return movePupil(d, move);
    case 'remove-person':
      return removePerson(d, move.person);
    case 'erase-person':
      if (d.state.people[move.person]?.removed === false) removePerson(d, move.person);
      if (!d.state.people[move.person]) personAt(d, move.person);
      return add(d, { type: 'person-erased', person: move.person });
    case 'reset-second-key':
      return resetSecondKey(d, move.person);
    case 'set-goal':
      pupilAt(d, move.person);
      return add(d, { type: 'goal-set', person: move.person, strategy: move.strategy });
    case 'set-help':
      pupilAt(d, move.person);
      return add(d, {
        type: 'help-changed',
        person: move.person,
        strategy: move.strategy,
        help: move.help,
        why: 'set by staff',
      });
    default:
      return move satisfies never;
  }
}

/** A pupil's pictures are taken back by whoever runs the class, an adult's passphrase by an administrator alone. */
function resetSecondKey(d: Deciding, id: PersonId): void {
  if (personAt(d, id).role !== 'pupil' && actorOf(d).role !== 'administrator') {
    refuse(
      'not allowed',
      'Cannot reset this passphrase, expected an administrator, got another role',
      'Ask an administrator of the class.',
    );
  }
  add(d, { type: 'second-key-reset', person: id });
}

function pupilAt(d: Deciding, id: PersonId): void {
  if (personAt(d, id).role === 'pupil') return;
  refuse('bad input', 'Cannot do that, expected a pupil, got an adult', 'Pick a pupil.');
}

function checkNickname(d: Deciding, nickname: string, except: PersonId | null): void {
  if (nickname.length > longestNickname) {
    refuse(
      'too long',
      `Cannot take this nickname, expected at most ${longestNickname} characters, got ${nickname.length}`,
      'Take a shorter one.',
    );
  }
  const used = Object.values(d.state.people).some(
    (person) =>
      person.id !== except &&
      !person.removed &&
      wordsOf(person.nickname)?.toLowerCase() === nickname.toLowerCase(),
  );
  if (used)
    refuse(
      'in use',
      'Cannot take this nickname, expected a new one, got one that is used',
      'Take another one.',
    );
}

function addPerson(d: Deciding, move: MoveOf<'add-person'>): void {
  checkNickname(d, move.nickname, null);
  const groups = groupsOf(d.state);
  const only = groups.length === 1 ? groups[0]?.id : undefined;
  const group =
    move.group === undefined ? (move.role === 'pupil' ? only : undefined) : groupAt(d, move.group).id;
  if (move.role === 'pupil' && group === undefined) {
    refuse('bad input', 'Cannot add a pupil, expected a group, got none', 'Pick a group for the pupil.');
  }
  const person = mint<PersonId>(d, 'u');
  add(d, {
    type: 'person-added',
    person,
    nickname: said(person, move.nickname),
    role: move.role,
    group: group ?? null,
    register: move.register ?? null,
  });
  if (move.role === 'pupil' && group !== undefined && pupilsOf(d.state, group).length === largestGroup + 1) {
    add(d, { type: 'staff-reminded', group, of: 'split' });
  }
}

function movePupil(d: Deciding, move: MoveOf<'move-pupil'>): void {
  pupilAt(d, move.person);
  const to = groupAt(d, move.group);
  const from = personAt(d, move.person).group;
  if (from === to.id) {
    refuse(
      'bad input',
      'Cannot move this pupil, expected another group, got the same',
      'Pick another group.',
    );
  }
  handOver(d, move.person);
  add(d, { type: 'pupil-moved', person: move.person, group: to.id });
  settle(d, from);
}

function removePerson(d: Deciding, id: PersonId): void {
  const person = personAt(d, id);
  const admins = Object.values(d.state.people).filter((one) => one.role !== 'pupil' && !one.removed);
  if (person.role !== 'pupil' && admins.length === 1) {
    refuse(
      'wrong time',
      'Cannot remove the last adult, expected another one to stay',
      'Add another adult first.',
    );
  }
  handOver(d, id);
  add(d, { type: 'person-removed', person: id });
  settle(d, person.group);
}

/** Who goes hands the lead on. */
function handOver(d: Deciding, id: PersonId): void {
  for (const group of groupsOf(d.state)) {
    const practice = openPractice(d, group.id);
    if (practice !== null && leadsNow(practice, id)) passLead(d, group.id, 'away', [id]);
  }
}
