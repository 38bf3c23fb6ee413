import { afterEach, describe, expect, it } from 'vitest';
import {
  openDiscordSchool,
  staffRoom,
  talkRoom,
  type DiscordSchool,
  type Name,
} from '../../support/discord-school.js';
import type { Seen } from '../../support/discord-person.js';
import { seenText } from '../../support/discord-payloads.js';

const passage =
  'When the tide goes out, the limpets stop moving. Each one clamps its shell down on its own spot.\n\n' +
  'The spot is called a home scar. The limpet has ground it into the stone.';

let school: DiscordSchool;
afterEach(async () => {
  expect(school.standIn.breaches).toEqual([]);
  await school.stop();
});

const talk = (): string => school.standIn.room(talkRoom).map(seenText).join('\n---\n');
const staff = (): string => school.standIn.room(staffRoom).map(seenText).join('\n---\n');

async function comeIn(name: Name): Promise<void> {
  const { secret } = await school.house.makeSlip(
    { classId: school.classId, person: school.people.Plover },
    school.people[name],
  );
  const person = school.as(name);
  const strange = await person.command('practice', 'where');
  expect(strange.text).toContain('I do not know you here yet');
  const { modal } = await person.pressLabel(strange, 'Put in the code');
  const seen = await person.send(modal ?? {}, { code: secret });
  expect(seen.hidden).toBe(true);
  expect(seen.text).toContain('You are in.');
}

/** Goes from a page that a pupil sees to the form of a step and sends it. */
async function writeStep(
  name: Name,
  page: Seen,
  label: string | RegExp,
  values: Readonly<Record<string, string>>,
): Promise<Seen> {
  const person = school.as(name);
  const step = await person.pressLabel(page, label);
  const opens = step.buttons.find(({ main }) => main);
  const { modal } = await person.press(opens?.id ?? '');
  expect(modal).not.toBeNull();
  return person.send(modal ?? {}, values);
}

describe('a practice on Discord', () => {
  it('goes from coming in to the digest', async () => {
    school = await openDiscordSchool(false);
    const tutor = school.as('Plover', staffRoom);
    for (const name of ['Plover', 'Wren', 'Finch', 'Pipit'] as const) await comeIn(name);

    // A place for pupils is tied only once their age was confirmed.
    await tutor.command('here', 'staff');
    const groups = await school.as('Plover').suggest('here', 'group', 'group', '');
    expect(groups.choices).toHaveLength(1);
    const asked = await school.as('Plover').command('here', 'group', { group: groups.choices[0]?.value });
    expect(asked.text).toContain('at least 13');
    expect(await school.store.places(school.classId)).toHaveLength(1);
    await school.as('Plover').pressLabel(asked, 'Yes, all are old enough');
    expect(await school.store.places(school.classId)).toHaveLength(2);

    // Nothing goes through by itself here.
    await tutor.command('class', 'set', { setting: 'moderation', value: 'hold everything' });

    // A passage comes as a file and is set.
    const url = school.standIn.file('limpets.md', passage);
    const file = { name: 'limpets.md', url, size: passage.length };
    const added = await tutor.command('passages', 'add-file', { title: 'Limpets' }, { text: file });
    expect(added.hidden).toBe(true);
    const { choices } = await tutor.suggest('passages', 'set', 'passage', 'limp');
    expect(choices.map(({ name }) => name)).toEqual(['Limpets']);
    await tutor.command('passages', 'set', { passage: choices[0]?.value, group: school.group });
    await tutor.command('practice', 'start', { group: school.group });
    await school.sent();
    expect(talk()).toContain('Limpets');
    const first = school.standIn.room(talkRoom).at(-1);
    expect(first?.allowed_mentions).toEqual({ parse: [] });

    // Everyone looks first: a guess, or not sure yet.
    for (const name of ['Wren', 'Finch', 'Pipit'] as const) {
      const person = school.as(name);
      const page = await person.press('l|turn');
      expect(page.hidden).toBe(true);
      await person.pressLabel(page, /not sure|Not sure/u);
    }
    await school.pass(60_000);
    await school.sent();
    expect(talk()).toContain('Limpets, part 1');
    expect((await school.as('Pipit').press('l|turn')).text).toContain('When the tide goes out');

    // A pupil asks: the feedback is private, then it is posted, held, and released by an adult.
    const wren = school.as('Wren');
    const feedback = await writeStep('Wren', await wren.press('l|turn'), /question/iu, {
      text: 'Why do limpets stop? @everyone',
    });
    expect(feedback.hidden).toBe(true);
    expect(talk()).not.toContain('Why do limpets stop');
    await wren.pressLabel(feedback, 'Send it');
    await school.sent();
    expect(talk()).not.toContain('Why do limpets stop');
    const waiting = school.standIn.room(staffRoom).at(-1);
    expect(waiting).toBeDefined();
    const list = await tutor.press('l|waiting');
    expect(list.text).toContain('Why do limpets stop? @everyone');
    await tutor.pressLabel(list, /Publish/u);
    await school.sent();
    expect(talk()).toContain('Why do limpets stop? @everyone');

    // Another answers; the digest tells of both.
    const finch = school.as('Finch');
    const answered = await writeStep('Finch', await finch.press('l|turn'), /answer/iu, {
      text: 'They wait for the sea.',
    });
    await finch.pressLabel(answered, 'Send it');
    const digest = await tutor.command('digest', 'now');
    expect(digest.hidden).toBe(true);
    expect(digest.text).toContain('Wren');
    expect(staff()).not.toBe('');
    expect(school.open().logged()).not.toMatch(/limpets|They wait|tide/iu);
  });
});
