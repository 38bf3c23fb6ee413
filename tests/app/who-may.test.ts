import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { slashCommands } from '../../commands/all.js';
import type { Who } from '../../shared/channel.js';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import { lookShapes, mayLook, type LookName } from '../../shared/looks.js';
import { mayMove, moveShapes, type MoveName } from '../../shared/moves.js';
import type { CommandAction } from '../../shared/slash-command.js';
import { namedAdults, roles, type Role } from '../../shared/roles.js';
import type { FieldShape, Shape } from '../../shared/shape.js';
import { foundClass, mustMove } from '../../src/app/founding.js';
import type { OpenHouse } from '../../src/app/house.js';
import type { Store } from '../../src/store/store.js';
import { openBareHouse } from '../support/bare-house.js';

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

const actions = slashCommands.flatMap((command) =>
  command.actions.map((action) => [`/${command.name} ${action.name}`, command.name, action] as const),
);

const notAllowed = /expected somebody (who may|of the class)/;

describe('Who may do what', () => {
  let store: Store;
  let house: OpenHouse;
  let classId: ClassId;
  const people = new Map<Role, PersonId>();
  let updates = 0;

  beforeAll(async () => {
    const now = Date.parse('2026-11-25T09:00:00Z');
    ({ store, house } = await openBareHouse(() => now));
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

  async function types(who: Who, command: string, action: CommandAction): Promise<string> {
    updates += 1;
    const options = Object.fromEntries(action.options.map(({ name }) => [name, 'x1']));
    const reply = await house.command(who, `type-${updates}`, {
      name: command,
      action: action.name,
      options,
    });
    return reply.done ? 'done' : (reply.why ?? '');
  }

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

  for (const role of roles) {
    it.each(actions)(`a ${role} and the command %s`, async (_, command, action) => {
      const told = await types(whoIs(role), command, action);
      if (action.who.includes(role))
        expect(told).not.toMatch(/^Cannot do \/[a-z-]+ [a-z-]+, expected (pupil|tutor|adm)/u);
      else
        expect(told).toContain(`Cannot do /${command} ${action.name}, expected ${action.who.join(' or ')}`);
    });
  }

  it.each(actions)('nobody at all and the command %s', async (_, command, action) => {
    const told = await types({ classId, person: asId<PersonId>('u999') }, command, action);
    expect(told).toContain(`Cannot do /${command} ${action.name}, expected`);
  });

  it('what a command may is never more than its move or look may', () => {
    for (const [name, , { does, who }] of actions) {
      if ('door' in does) expect([name, who]).toEqual([name, ['tutor', 'teacher', 'administrator']]);
      else {
        const may: readonly Role[] = 'move' in does ? mayMove[does.move] : mayLook[does.look];
        expect([name, who.filter((role) => !may.includes(role))]).toEqual([name, []]);
      }
    }
  });

  it('the lead’s own are nobody else’s: no other role inherits them', () => {
    expect(mayLook['alarm-words']).toEqual(namedAdults);
    for (const role of ['administrator', 'pupil'] as const)
      for (const may of [mayLook.alarms, mayLook['alarm-words'], mayMove['acknowledge-alarm']])
        expect(may).not.toContain(role);
  });

  describe('Somebody of another class', () => {
    const secret = 'Oystercatcher-of-the-first-class';
    const others = new Map<Role, Who>();
    beforeAll(async () => {
      const group = Object.values((await house.classes.load(classId)).groups)[0]!.id;
      await mustMove(house, classId, people.get('tutor')!, [
        { type: 'rename-person', person: people.get('pupil')!, nickname: `${secret} pupil`.slice(0, 40) },
        { type: 'add-passage', text: `# ${secret}\n\n${secret} waits. It waits on.`, title: secret },
        { type: 'add-person', nickname: `${secret} 2`, role: 'pupil', group },
      ]);
      const tell = { type: 'tell-grown-up', text: secret } as const;
      await mustMove(house, classId, people.get('pupil')!, [tell]);
      const other = await foundClass(house, { name: 'Other', zone: 'UTC', nickname: 'Dunnock' });
      const state = await mustMove(
        house,
        other.classId,
        other.tutor,
        roles.map((role) => ({ type: 'add-person', nickname: `Other ${role}`, role }) as const),
      );
      for (const { id, role } of Object.values(state.people))
        others.set(role, { classId: other.classId, person: id });
    });

    it.each(roles)('as %s sees nothing of this one in any look, feed, suggestion or name', async (role) => {
      const who = others.get(role)!;
      const theirs = Object.keys((await house.classes.load(classId)).shelf)[0] ?? '';
      const alarm = Object.keys((await house.classes.load(classId)).alarms)[0] ?? '';
      const shown: unknown[] = [await house.feed(who, 0), await house.profile(who)];
      for (const name of Object.keys(lookShapes) as LookName[]) {
        shown.push(await house.look(who, name, samples(lookShapes[name])));
        shown.push(await house.look(who, name, { ...samples(lookShapes[name]), passage: theirs, alarm }));
      }
      for (const source of ['passages', 'groups', 'people', 'pupils', 'stops', 'held'] as const)
        shown.push(await house.suggest(who, source, ''));
      expect(JSON.stringify(shown)).not.toContain(secret);
      expect(JSON.stringify(await house.look(whoIs('tutor'), 'passages', {}))).toContain(secret);
    });

    it.each(roles)('as %s changes nothing of this one by any move or command', async (role) => {
      const before = (await house.classes.load(classId)).version;
      const state = await house.classes.load(classId);
      const ids = {
        person: people.get('pupil')!,
        passage: Object.keys(state.shelf)[0] ?? '',
        alarm: Object.keys(state.alarms)[0] ?? '',
        group: Object.keys(state.groups)[0] ?? '',
      };
      for (const name of Object.keys(moveShapes) as MoveName[]) {
        updates += 1;
        const fields = samples(moveShapes[name]);
        const known = Object.fromEntries(Object.entries(ids).filter(([key]) => key in fields));
        const update = { id: `other-${updates}`, who: others.get(role)!, move: name };
        await house.move({ ...update, fields: { ...fields, ...known } });
      }
      for (const [, command, action] of actions) await types(others.get(role)!, command, action);
      expect((await house.classes.load(classId)).version).toBe(before);
    });

    it('holds no slip of this one’s people: a slip is made in the maker’s own class', async () => {
      const theirs = others.get('tutor')!;
      const { secret: code } = await house.makeSlip(theirs, theirs.person);
      const found = await house.doors.signIn(code, 'desk');
      expect('who' in found && found.who.classId).toBe(theirs.classId);
    });

    it('has an export of its own and no more; what is exported of one person names no other class', async () => {
      const { person } = others.get('pupil')!;
      const own = await store.exportPerson(others.get('pupil')!.classId, person);
      expect(JSON.stringify(own)).not.toContain(secret);
      const wren = await store.exportPerson(classId, people.get('pupil')!);
      expect(JSON.stringify(wren)).toContain(secret);
      expect(JSON.stringify(wren)).not.toContain('Other ');
    });
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
