import type { Block, FieldOption, Message } from '../../shared/messages.js';
import { roles } from '../../shared/roles.js';
import { helps, registers, strategies } from '../../shared/strategies.js';
import { groupsOf } from '../practice/lookup.js';
import type { Person } from '../practice/state.js';
import { strategyWords } from '../progress/doing-words.js';
import { isLocked } from '../practice/second-key.js';
import type { Slip } from '../store/store.js';
import { answer, nameOf, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, list, move, pick, prose, sameOptions, typed } from './blocks.js';
import { allowedBlocks } from './allowed-blocks.js';
import { notReady } from './not-ready.js';

/** Above this many pupils a group is offered a split; 3 to 6 is common practice, no source. */
const largest = 6;

function slipWords(asked: Asked, person: Person, slips: readonly Slip[]): string {
  const good = slips.filter(
    (slip) => slip.person === person.id && !slip.revoked && slip.expiresAt > asked.at,
  );
  const until = Math.max(...good.map(({ expiresAt }) => expiresAt));
  return good.length === 0 ? staff('no slip') : staff('slip until', { when: asked.port.when(until) });
}

function personLine(asked: Asked, person: Person, slips: readonly Slip[]): string {
  const group = person.group === null ? null : asked.state.groups[person.group];
  return [
    `${nameOf(asked.state, person.id)}: ${person.role}`,
    ...(group == null ? [] : [group.name]),
    ...(person.role === 'pupil' ? [person.register ?? asked.state.settings.register] : []),
    ...(person.goal === null ? [] : [staff('goal is', { strategy: strategyWords(person.goal) })]),
    slipWords(asked, person, slips),
    person.lastSeen === null
      ? staff('never seen')
      : staff('last seen', { when: asked.port.when(person.lastSeen) }),
  ].join(' · ');
}

function strategyOptions(): readonly FieldOption[] {
  return strategies.map((value) => ({ value, label: strategyWords(value) }));
}

function forms(asked: Asked, people: readonly Person[]): readonly Block[] {
  const option = ({ id }: Person): FieldOption => ({ value: id, label: nameOf(asked.state, id) });
  const groups = groupsOf(asked.state).map(({ id, name }) => ({ value: id, label: name }));
  const who = pick('person', staff('person label'), people.map(option));
  const pupil = pick(
    'person',
    staff('pupil label'),
    people.filter(({ role }) => role === 'pupil').map(option),
  );
  const strategy = pick('strategy', staff('strategy label'), strategyOptions());
  return [
    form(
      staff('add person'),
      move('add-person'),
      [
        typed('line', 'nickname', staff('nickname label'), { max: 40, hint: staff('nickname hint') }),
        pick('role', staff('role label'), sameOptions(roles), true, 'pupil'),
        pick('group', staff('group label'), groups, false),
        pick('register', staff('register label'), sameOptions(registers), false),
      ],
      staff('add'),
    ),
    form(
      staff('move pupil'),
      move('move-pupil'),
      [pupil, pick('group', staff('group label'), groups)],
      staff('move'),
    ),
    form(
      staff('rename'),
      move('rename-person'),
      [who, typed('line', 'nickname', staff('nickname label'), { max: 40 })],
      staff('save'),
    ),
    form(staff('set goal'), move('set-goal'), [pupil, strategy], staff('save')),
    form(
      staff('set help'),
      move('set-help'),
      [pupil, strategy, pick('help', staff('help label'), sameOptions(helps))],
      staff('save'),
    ),
    form(
      staff('make group'),
      move('make-group'),
      [typed('line', 'name', staff('group name'), { max: 40 })],
      staff('add'),
    ),
    form(staff('remove person'), move('remove-person'), [who], staff('remove person')),
    form(staff('erase person'), move('erase-person'), [who], staff('erase person')),
  ];
}

function splits(asked: Asked, people: readonly Person[]): readonly Block[] {
  const large = groupsOf(asked.state).filter(
    ({ id }) => people.filter(({ role, group }) => role === 'pupil' && group === id).length > largest,
  );
  return choices(
    staff('split why'),
    large.map(({ id, name }) => choice(staff('split', { group: name }), move('split-group', { group: id }))),
  );
}

/** One tap takes back somebody's second key, for whom the looker may: a pupil's pictures, or an adult's passphrase by an administrator. */
async function resets(asked: Asked, people: readonly Person[]): Promise<readonly Block[]> {
  const { store } = asked.port;
  const mine = people.filter(({ role }) => role === 'pupil' || asked.by.role === 'administrator');
  const found = await Promise.all(
    mine.map(async ({ id }) => ({ id, key: await store.secondKey(asked.state.id, id) })),
  );
  return choices(
    staff('second keys'),
    found.flatMap(({ id, key }) => {
      if (key === null) return [];
      const words = staff(`reset ${key.kind}${isLocked(key) ? ' locked' : ''}`, {
        who: nameOf(asked.state, id),
      });
      return [choice(words, move('reset-second-key', { person: id }))];
    }),
  );
}

/** Who is in the class, who has a slip, and forms for what a role may change. */
export async function roster(asked: Asked): Promise<readonly Message[]> {
  const people = Object.values(asked.state.people).filter(({ removed }) => !removed);
  const slips = await asked.port.store.slipsOf(asked.state.id);
  const title = staff('roster title', { name: asked.state.name });
  return [
    answer(asked, title, [
      heading(title),
      ...notReady(asked),
      ...list(people.map((person) => personLine(asked, person, slips))),
      prose(staff('slip how')),
      prose(staff('slip sheet how')),
      ...(await resets(asked, people)),
      ...allowedBlocks(asked.by.role, [...splits(asked, people), ...forms(asked, people)]),
    ]),
  ];
}
