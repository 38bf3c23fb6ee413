import { afterEach, describe, expect, it } from 'vitest';
import { seenText } from '../../support/discord-payloads.js';
import { openDiscordSchool, staffRoom, talkRoom, type DiscordSchool } from '../../support/discord-school.js';
import { server } from '../../support/discord-stand-in.js';
import { ask, mustAct, order } from '../../support/posting.js';
import { fixturePassage } from './passage.js';

let school: DiscordSchool;
afterEach(async () => {
  expect(school.standIn.breaches).toEqual([]);
  await school.stop();
});

/** The practice runs and the first part is open. */
const begin = async (more: Parameters<typeof openDiscordSchool>[1] = {}): Promise<void> => {
  school = await openDiscordSchool(true, more);
  await fixturePassage(school);
  const { house, classId, people } = school;
  for (const name of ['Wren', 'Finch', 'Pipit'] as const)
    await mustAct(house, classId, people[name], { type: 'pass-prediction' });
  await school.sent();
};

const texts = ['Why do limpets stop?', 'Why do they go home?', 'How do they find it?'] as const;
const askAll = async (): Promise<void> => {
  const { house, classId, people } = school;
  for (const [at, name] of (['Wren', 'Finch', 'Pipit'] as const).entries())
    await ask(house, classId, people[name], texts[at] ?? '');
};
const said = (room = talkRoom): readonly string[] => order(school.standIn.room(room).map(seenText), texts);
const stuck = async (): Promise<readonly string[]> =>
  (await school.store.stuck(school.classId)).map(({ why }) => why);
/** What the tutor reads in the room. */
const toldStaff = async (): Promise<string> => {
  const { house, classId, people } = school;
  const items = await house.feed({ classId, person: people.Plover }, 0);
  return items.map(({ message }) => message.summary).join('\n');
};
const tie = async (room = talkRoom): Promise<void> => {
  const tutor = school.as('Plover', room);
  const asked = await tutor.command('here', 'group', { group: school.group });
  await tutor.pressLabel(asked, 'Yes, all are old enough');
  await school.sent();
};
/** A path that is in trouble only while `on` says so. */
const pathWhile = (path: RegExp, on: () => boolean): RegExp =>
  Object.assign(new RegExp(path), { test: (text: string) => on() && new RegExp(path).test(text) });

const questionForm = async () => {
  const page = await school.as('Wren').press('l|step|do=question');
  const { modal } = await school.as('Wren').press(page.buttons.find(({ main }) => main)?.id ?? '');
  if (modal === null) throw new Error('no form opened');
  return modal;
};

describe('What Discord does to those who practise', () => {
  it('a form that comes after its part has closed is taken late, and nothing of it is lost', async () => {
    await begin();
    const form = await questionForm();
    const { house, classId, people, group } = school;
    await mustAct(house, classId, people.Plover, { type: 'close-segment', group });
    const seen = await school.as('Wren').send(form, { text: texts[0] });
    expect(seen.hidden).toBe(true);
    expect(seen.text).toContain(texts[0]);
    const posts = Object.values((await house.classes.load(classId)).posts);
    expect(posts.filter(({ person }) => person === people.Wren)).toEqual([
      expect.objectContaining({ stop: 0, late: true }),
    ]);
  });

  it.each([
    ['for its route', { 'retry-after': '0.2', 'x-ratelimit-scope': 'user' }],
    ['for all routes', { 'retry-after': '0.2', 'x-ratelimit-global': 'true' }],
    ['without a header', {}],
  ])('an answer that is asked to slow down, %s, is given once', async (_, headers) => {
    await begin();
    const body = { message: 'slow down', retry_after: 0.2, global: false };
    school.standIn.trouble('POST', /\/callback$/, { status: 429, headers, body });
    const seen = await school.as('Wren').press('l|turn');
    expect(seen.text).toContain('Limpets');
    expect(seen.interaction.answers).toHaveLength(1);
  });

  it('an answer on a line that hangs is given once', async () => {
    await begin({ patience: 300 });
    school.standIn.trouble('POST', /\/callback$/, 'hang');
    const seen = await school.as('Wren').press('l|turn');
    expect(seen.text).toContain('Limpets');
    expect(seen.interaction.answers).toHaveLength(1);
  });

  it('a form that is sent twice before the first is answered, and once more after a restart, is one draft', async () => {
    await begin();
    const form = await questionForm();
    const wren = school.as('Wren');
    const sends = [wren.send(form, { text: texts[0] }), wren.send(form, { text: texts[0] })];
    const [one, two] = await Promise.all(sends);
    await school.restart();
    const three = await school.as('Wren').send(form, { text: texts[0] });
    expect([two?.text, three.text]).toEqual([one?.text, one?.text]);
    expect(Object.values((await school.house.classes.load(school.classId)).posts)).toHaveLength(1);
  });
});

describe('What Discord does to what is said', () => {
  it('a network that is out for a full minute: nothing is lost, said twice or out of order', async () => {
    await begin();
    let away = true;
    for (const method of ['GET', 'POST', 'PATCH'])
      school.standIn.trouble(
        method,
        pathWhile(/\/channels\//u, () => away),
        'reset',
        10_000,
      );
    await askAll();
    for (let seconds = 0; seconds < 60; seconds += 5) {
      await school.sent();
      await school.pass(5000);
    }
    expect(said()).toEqual([]);
    away = false;
    await school.pass(61_000);
    await school.sent();
    expect(said()).toEqual(texts);
    expect(await stuck()).toEqual([]);
  });

  it('slowed down, failing and breaking in turn: all is said once, in order', async () => {
    await begin();
    const toRoom = /\/messages$/u;
    const { standIn } = school;
    standIn.trouble('POST', toRoom, {
      status: 429,
      headers: { 'retry-after': '2' },
      body: { retry_after: 2 },
    });
    standIn.trouble('POST', toRoom, { status: 500 });
    standIn.trouble('POST', toRoom, 'reset after');
    standIn.trouble('POST', toRoom, { status: 502 });
    await askAll();
    for (let tries = 0; tries < 8; tries += 1) {
      await school.sent();
      await school.pass(30_000);
    }
    expect(said()).toEqual(texts);
  });

  it('a channel that is deleted under us: staff are told, and what waited is said in the one that is tied then', async () => {
    await begin();
    school.standIn.closeRoom(talkRoom);
    await askAll();
    await school.sent();
    expect(await stuck()).toEqual([expect.stringMatching(/deleted.*\/here/u)]);
    expect(await toldStaff()).toMatch(/Discord could not be sent.*deleted/u);
    expect(school.standIn.room(staffRoom).map(seenText).join()).toContain('deleted');
    school.standIn.openRoom('103');
    await tie('103');
    expect(said('103')).toEqual(texts);
    expect(await stuck()).toEqual([]);
    expect(await toldStaff()).not.toContain('could not be sent');
  });

  it('a permission that is withdrawn: staff are told which, and given back all is said', async () => {
    await begin();
    school.standIn.forbid(talkRoom, 'write', true);
    school.standIn.forbid(talkRoom, 'write in threads', true);
    await askAll();
    await school.sent();
    expect(await toldStaff()).toMatch(/Discord could not be sent.*“Send Messages/u);
    school.standIn.forbid(talkRoom, 'write', false);
    school.standIn.forbid(talkRoom, 'write in threads', false);
    await tie();
    expect(said()).toEqual(texts);
  });

  it('a bot that is taken out and invited again: staff are told, commands are there again, and all is said', async () => {
    await begin();
    const { standIn } = school;
    for (const room of [talkRoom, staffRoom]) standIn.forbid(room, 'see', true);
    standIn.commands.clear();
    standIn.gateway.dispatch('GUILD_DELETE', { id: server });
    await askAll();
    await school.sent();
    expect(await toldStaff()).toMatch(/Discord could not be sent.*Invite it again/u);
    for (const room of [talkRoom, staffRoom]) standIn.forbid(room, 'see', false);
    await school.restart();
    expect(standIn.commands.has(server)).toBe(true);
    await tie();
    expect(said()).toEqual(texts);
  });

  it('a token that is revoked: staff are told in the room, and with another all is said', async () => {
    await begin();
    const { standIn } = school;
    const token = 'stand-in.token.of-nobody';
    standIn.setToken('another');
    await askAll();
    await school.sent();
    expect(await toldStaff()).toMatch(/Discord could not be sent.*DISCORD_TOKEN/u);
    standIn.setToken(token);
    await school.restart();
    await tie();
    expect(said()).toEqual(texts);
    expect(school.open().logged()).not.toContain(token);
  });
});
