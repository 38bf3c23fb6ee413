import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { nonceOf } from '../../../src/app/sender.js';
import { seenBy, until } from '../../support/discord-person.js';
import { seenText } from '../../support/discord-payloads.js';
import { openDiscordSchool, staffRoom, talkRoom, type DiscordSchool } from '../../support/discord-school.js';
import { server } from '../../support/discord-stand-in.js';
import { fixturePassage } from './passage.js';

let school: DiscordSchool;
beforeEach(async () => {
  school = await openDiscordSchool();
});
afterEach(async () => {
  expect(school.standIn.breaches).toEqual([]);
  await school.stop();
});

const talk = (): readonly string[] => school.standIn.room(talkRoom).map(seenText);
const stuck = async (): Promise<readonly string[]> =>
  (await school.store.stuck(school.classId)).map(({ why }) => why);
const tieAgain = async (): Promise<void> => {
  const tutor = school.as('Plover');
  const asked = await tutor.command('here', 'group', { group: school.group });
  await tutor.pressLabel(asked, 'Yes, all are old enough');
  await school.sent();
};

describe('a place on Discord', () => {
  it.each([
    ['write', /Send Messages/u],
    ['see', /Invite it again/u],
  ] as const)(
    'stops alone where the bot may not %s there, and goes on where it is tied again',
    async (what, words) => {
      school.standIn.forbid(talkRoom, what, true);
      await fixturePassage(school);
      await school.sent();
      expect(await stuck()).toEqual([expect.stringMatching(words)]);
      const { house, classId, people } = school;
      await house.act({
        classId,
        by: people.Wren,
        at: house.now(),
        move: { type: 'tell-grown-up', text: 'I need you.' },
      });
      await school.sent();
      expect(school.standIn.room(staffRoom)).not.toEqual([]);
      school.standIn.forbid(talkRoom, what, false);
      await tieAgain();
      expect(await stuck()).toEqual([]);
      expect(talk()[0]).toContain('Limpets');
    },
  );

  it('registers its commands again where the bot was taken out and is invited again', async () => {
    school.standIn.commands.clear();
    school.standIn.gateway.dispatch('GUILD_DELETE', { id: server });
    school.standIn.gateway.dispatch('GUILD_CREATE', {
      id: server,
      name: 'A school',
      channels: [],
      roles: [],
      members: [],
      emojis: [],
      stickers: [],
      threads: [],
      voice_states: [],
      presences: [],
      stage_instances: [],
      features: [],
    });
    await until(() => school.standIn.commands.has(server));
    const again = await school.as('Wren').press('l|turn');
    expect(again.text).not.toBe('');
  });

  it('says once what was sent but not noted when the process ended, soon after', async () => {
    await fixturePassage(school);
    school.standIn.trouble('POST', /channels\/101\/messages$/, 'reset after');
    await school.restart();
    await until(() => talk().length >= 1);
    await school.sent();
    await new Promise((done) => setTimeout(done, 200));
    const titles = talk().filter((text) => text.includes('A new text: Limpets'));
    expect(titles).toHaveLength(1);
  });

  it('finds in history what was sent but not noted, long after', async () => {
    const { store, standIn, house, open } = school;
    standIn.trouble('POST', /channels\/101\/messages$/, { status: 500 });
    await fixturePassage(school);
    await until(() => open().logged().includes('did not go out'));
    const row = (await store.outbox('discord', 10)).find(({ place }) => place.room === talkRoom);
    if (row === undefined || row.telling.do !== 'say') throw new Error('nothing waits');
    // As a crash leaves it: sent, marked as being sent five minutes ago, never noted.
    const { tenant, room } = row.place;
    const delivery = { tenant, room, telling: row.telling, before: null, nonce: nonceOf(row.key) };
    expect(await open().channel.deliver?.(delivery)).toHaveProperty('sent');
    expect(await store.outboxSending(row.key, house.now() - 300_000)).toBe(true);
    const posts = (): number =>
      standIn.requests.filter(({ method, path }) => method === 'POST' && path.endsWith('/messages')).length;
    const before = posts();
    await school.restart();
    await school.sent();
    await until(() => talk().length >= 1);
    expect(talk().filter((text) => text.includes('A new text: Limpets'))).toHaveLength(1);
    expect(posts() - before).toBe(talk().length - 1);
    expect(await stuck()).toEqual([]);
  });

  it('asks staff where history is hidden and nobody can know', async () => {
    const { store, standIn, house, open } = school;
    standIn.trouble('POST', /channels\/101\/messages$/, { status: 500 });
    await fixturePassage(school);
    await until(() => open().logged().includes('did not go out'));
    const row = (await store.outbox('discord', 10)).find(({ place }) => place.room === talkRoom);
    if (row === undefined || row.telling.do !== 'say') throw new Error('nothing waits');
    const { tenant, room } = row.place;
    const delivery = { tenant, room, telling: row.telling, before: null, nonce: nonceOf(row.key) };
    await open().channel.deliver?.(delivery);
    await store.outboxSending(row.key, house.now() - 300_000);
    standIn.forbid(talkRoom, 'read', true);
    await school.restart();
    await school.sent();
    expect(await stuck()).toEqual([expect.stringMatching(/history can’t be read/u)]);
    expect(talk()).toHaveLength(1);
  });

  it('warns who ties a place where pupils can write past the bot, and where it may not write', async () => {
    school.standIn.everybodyWrites(true);
    const tutor = school.as('Plover');
    const asked = await tutor.command('here', 'group', { group: school.group });
    const tied = await tutor.pressLabel(asked, 'Yes, all are old enough');
    expect(tied.text).toContain('Everybody can write in this place past me');
    const press = tutor.rawPress(`b|${school.group}`);
    const blind = await seenBy(tutor.start({ ...press, app_permissions: '0' }));
    expect(blind.text).toContain('I may not write here yet');
  });

  it('keeps the talk about a text in a thread, where pupils press and staff withdraw as ever', async () => {
    await fixturePassage(school);
    await school.pass(60_000);
    for (const name of ['Wren', 'Finch', 'Pipit'] as const) {
      const page = await school.as(name).press('l|turn');
      await school.as(name).pressLabel(page, /not sure/iu);
    }
    await school.pass(60_000);
    await school.sent();
    const [thread] = school.standIn.rooms.threads(talkRoom);
    expect(thread?.name).toBe('Limpets');
    expect(school.standIn.rooms.only(talkRoom).map(seenText)).toEqual([
      expect.stringContaining('A new text: Limpets'),
    ]);
    expect(
      school.standIn.rooms
        .only(thread?.id ?? '')
        .map(seenText)
        .join(),
    ).toContain('Limpets, part 1');
    // After a restart it is known by the first message.
    await school.restart();
    await school.house.act({
      classId: school.classId,
      by: school.people.Plover,
      at: school.house.now(),
      move: { type: 'pause-practice', group: school.group },
    });
    await school.sent();
    expect(school.standIn.rooms.threads(talkRoom)).toHaveLength(1);
    expect(school.standIn.rooms.only(talkRoom)).toHaveLength(1);
  });

  it('tells staff once, where they read, that no thread can be opened', async () => {
    school.standIn.forbid(talkRoom, 'threads', true);
    await fixturePassage(school);
    for (let hours = 0; hours < 30; hours += 1) await school.pass(3_600_000);
    await school.restart();
    await school.house.act({
      classId: school.classId,
      by: school.people.Plover,
      at: school.house.now(),
      move: { type: 'pause-practice', group: school.group },
    });
    await school.sent();
    expect(school.standIn.rooms.only(talkRoom).length).toBeGreaterThan(1);
    const told = school.standIn.room(staffRoom).map(seenText);
    expect(told.filter((text) => text.includes('“Create Public Threads”'))).toHaveLength(1);
  });

  it('is tied by staff only', async () => {
    const before = await school.store.places(school.classId);
    const refused = await school.as('Wren', '103').command('here', 'staff');
    expect(refused.text).toContain('expected a tutor, teacher or administrator');
    expect(await school.store.places(school.classId)).toEqual(before);
  });

  it('gets the digest when it is told, as staff see it', async () => {
    await fixturePassage(school);
    for (let days = 0; days < 12; days += 1) await school.pass(24 * 3_600_000);
    await school.sent();
    const all = school.standIn.room(staffRoom).map(seenText).join('\n');
    expect(all).toMatch(/digest/iu);
  });
});
