import { afterEach, describe, expect, it } from 'vitest';
import { slashCommands } from '../../../commands/all.js';
import { registrations } from '../../../src/channels/discord/register.js';
import { mayFetch } from '../../../src/channels/discord/read/fetch-text.js';
import { everybodyMayWrite } from '../../../src/channels/discord/permissions.js';
import { discordPerson } from '../../support/discord-person.js';
import { openDiscordSchool, type DiscordSchool } from '../../support/discord-school.js';
import { fixturePassage } from './passage.js';

interface Shown {
  readonly name: string;
  readonly description: string;
  readonly required?: boolean;
  readonly options?: readonly Shown[];
  readonly choices?: readonly unknown[];
  readonly default_member_permissions?: unknown;
  readonly name_localizations?: unknown;
}

const length = (one: Shown): number =>
  one.name.length +
  one.description.length +
  (one.options ?? []).reduce((sum, option) => sum + length(option), 0);

describe('slash commands on Discord', () => {
  // Discord's API documentation, "application commands", August 2026.
  it.each(registrations(slashCommands).map((one) => [one.name, one as unknown as Shown] as const))(
    'keep /%s within the published limits',
    (_, command) => {
      const all = (one: Shown): readonly Shown[] => [one, ...(one.options ?? []).flatMap(all)];
      for (const one of all(command)) {
        expect(one.name).toMatch(/^[-_a-z0-9]{1,32}$/);
        expect(one.description.length).toBeGreaterThan(0);
        expect(one.description.length).toBeLessThanOrEqual(100);
        expect((one.options ?? []).length).toBeLessThanOrEqual(25);
        expect((one.choices ?? []).length).toBeLessThanOrEqual(25);
        const required = (one.options ?? []).map((option) => option.required === true);
        expect(required).toEqual(required.toSorted((a, b) => Number(b) - Number(a)));
      }
      expect(length(command)).toBeLessThanOrEqual(8000);
      expect(command.default_member_permissions).toBeUndefined();
    },
  );

  it('cut no words of a command', () => {
    const described = new Map(
      registrations(slashCommands).map(({ name, description }) => [name, description]),
    );
    for (const { name, words } of slashCommands) expect(described.get(name)).toBe(words);
  });

  it('can be called by other names in other languages', () => {
    const named = registrations(slashCommands, { digest: { de: 'bericht' }, 'digest now': { de: 'jetzt' } });
    const digest = named.find(({ name }) => name === 'digest') as unknown as Shown;
    expect(digest.name_localizations).toEqual({ de: 'bericht' });
    expect(digest.options?.[0]?.name_localizations).toEqual({ de: 'jetzt' });
  });
});

it.each([
  ['https://cdn.discordapp.com/attachments/1/2/a.md', null, true],
  ['https://cdn.discordapp.com.example.test/a.md', null, false],
  ['http://cdn.discordapp.com/a.md', null, false],
  ['file:///etc/passwd', null, false],
  ['http://127.0.0.1:99/a.md', null, false],
  ['http://127.0.0.1:99/a.md', 'http://127.0.0.1:99/api', true],
  ['http://127.0.0.1:98/a.md', 'http://127.0.0.1:99/api', false],
  ['nothing', null, false],
])('fetches a file at %s with the base address %s: %s', (url, api, may) => {
  expect(mayFetch(url, api)).toBe(may);
});

it.each([
  ['nobody by default', '0', undefined, false],
  ['everybody by the server', '2048', undefined, true],
  ['everybody but not here', '2048', { allow: '0', deny: '2048' }, false],
  ['only here', '0', { allow: '2048', deny: '0' }, true],
])('sees who may write past the bot: %s', (_, permissions, own, expected) => {
  const overwrites = own ? [{ id: 's', type: 0, ...own }] : [];
  expect(everybodyMayWrite('s', [{ id: 's', permissions }], overwrites)).toBe(expected);
});

describe('a slash command that is typed', () => {
  let school: DiscordSchool;
  afterEach(async () => {
    expect(school.standIn.breaches).toEqual([]);
    await school.stop();
  });
  const shelf = async () => Object.values((await school.house.classes.load(school.classId)).shelf);

  it('asks for a long text in a form, and does it once', async () => {
    school = await openDiscordSchool();
    const tutor = school.as('Plover');
    const { modal } = await tutor.command('passages', 'add', { title: 'Limpets', grade: 5 });
    const text = 'When the tide goes out, the limpets stop moving.\n\nThe spot is a home scar.';
    await Promise.all([tutor.send(modal ?? {}, { text }), tutor.send(modal ?? {}, { text })]);
    expect((await shelf()).map(({ reading }) => reading.title)).toEqual(['Limpets']);
  });

  it.each([
    ['of another kind', 'limpets.exe', 10],
    ['too long', 'limpets.md', 1_000_000],
  ])('refuses a file %s with words', async (_, name, size) => {
    school = await openDiscordSchool();
    const url = school.standIn.file(name, 'x');
    const seen = await school.as('Plover').command('passages', 'add-file', {}, { text: { name, url, size } });
    expect(seen.text).toContain('Take a .txt or .md file');
    expect(await shelf()).toEqual([]);
  });

  it('fetches no file from elsewhere', async () => {
    school = await openDiscordSchool();
    const file = { name: 'a.md', url: 'http://127.0.0.1:9/a.md', size: 3 };
    const seen = await school.as('Plover').command('passages', 'add-file', {}, { text: file });
    expect(seen.text).toContain('Take a .txt or .md file');
  });

  it('is refused in words to whoever may not', async () => {
    school = await openDiscordSchool();
    const seen = await school.as('Wren').command('held', 'list');
    expect(seen.hidden).toBe(true);
    expect(seen.text).toContain('expected tutor or teacher');
  });

  it('suggests what fits while it is typed, and nothing to strangers', async () => {
    school = await openDiscordSchool();
    const found = await school.as('Plover').suggest('roster', 'goal', 'person', 'wr');
    expect(found.choices).toEqual([{ name: 'Wren', value: school.people.Wren }]);
    const stranger = discordPerson(school.standIn, '99', '101');
    expect((await stranger.suggest('roster', 'goal', 'person', 'wr')).choices).toEqual([]);
  });

  it('carries a form of six fields in two parts', async () => {
    school = await openDiscordSchool();
    await fixturePassage(school);
    const tutor = school.as('Plover');
    const table = await tutor.command('practice', 'table');
    const { modal } = await tutor.pressLabel(table, /note/iu);
    expect(modal?.components).toHaveLength(5);
    const values = { person: school.people.Wren, do: 'question', level: '2', given: 'said', help: 'guided' };
    const next = await tutor.send(modal ?? {}, values);
    const second = await tutor.pressLabel(next, 'Go on');
    expect(second.modal?.components).toHaveLength(1);
    await tutor.send(second.modal ?? {}, { text: 'Why do limpets stop?' });
    const rows = await school.store.evidence({ classId: school.classId, person: school.people.Wren });
    expect(rows.map(({ given }) => given)).toEqual(['said']);
  });

  it('leads through an answer that is longer than a message', async () => {
    school = await openDiscordSchool();
    const { house, classId, people } = school;
    for (let n = 0; n < 40; n += 1) {
      const move = {
        type: 'add-passage',
        title: `A text with the number ${n} and a long name`,
        text: 'The tide.',
      } as const;
      await house.act({ classId, by: people.Plover, at: house.now(), move });
    }
    const tutor = school.as('Plover');
    let page = await tutor.command('passages', 'list');
    let all = page.text;
    while (page.buttons.some(({ label }) => label === 'More')) {
      page = await tutor.pressLabel(page, 'More');
      all += page.text;
    }
    for (let n = 0; n < 40; n += 1) expect(all).toContain(`the number ${n} and`);
  });
});
