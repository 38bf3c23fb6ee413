import { afterEach, describe, expect, it } from 'vitest';
import { startSender } from '../../../src/app/sender.js';
import { silentLog } from '../../../src/app/log.js';
import { openFakeHouse } from '../../support/fake-house.js';
import { frozenLine, type FrozenLine } from '../../support/frozen-line.js';
import { slackOver } from '../../support/open-slack.js';
import { ask, mustAct, order } from '../../support/posting.js';
import { wordsSeen } from '../../support/slack-limits.js';
import { openSlackClass, type SlackClass } from '../../support/slack-practice.js';
import { SlackStandIn, type SlackFault } from '../../support/slack-stand-in.js';
import type { SlackUser } from '../../support/slack-user.js';

const pupils = ['Wren', 'Finch', 'Pipit'] as const;
const texts = ['Why do limpets stop?', 'Why do they go home?', 'How do they find it?'] as const;
const passage = [
  'Limpets stop when the tide is out. Each one sits on its own spot.',
  'When the sea comes back they graze. Then they go home again.',
].join('\n\n');
const quiet = {
  debug: () => undefined,
  info: () => undefined,
  warn: () => undefined,
  error: () => undefined,
};

let there: SlackClass;
const user = (nickname: string): SlackUser => there.slack.user(`U${nickname.toUpperCase()}`);

/** Everybody is known, C1 is the talk and C2 the staff's, the practice runs and the first part is open. */
const begin = async (): Promise<void> => {
  there = await openSlackClass(pupils);
  const { store, house, classId } = there;
  const state = await house.classes.load(classId);
  const group = Object.values(state.groups)[0]?.id;
  if (group === undefined) throw new Error('no group');
  for (const nickname of ['Plover', ...pupils]) {
    const person = await there.personOf(nickname);
    const one = {
      channel: 'slack',
      tenant: 'T1',
      user: `U${nickname.toUpperCase()}`,
      classId,
      person,
    } as const;
    await store.bindIdentity(one);
  }
  const place = (room: string) => ({ channel: 'slack', tenant: 'T1', room }) as const;
  await store.bindPlace(classId, place('C1'), { to: 'channel', group });
  await store.bindPlace(classId, place('C2'), { to: 'staff', group: null });
  const plover = await there.personOf('Plover');
  await mustAct(house, classId, plover, { type: 'add-passage', title: 'Limpets', text: passage });
  const [shelved] = Object.values((await house.classes.load(classId)).shelf);
  if (!shelved) throw new Error('no passage');
  await mustAct(house, classId, plover, { type: 'set-passage', passage: shelved.id, group });
  await mustAct(house, classId, plover, { type: 'start-practice', group });
  for (const nickname of pupils)
    await mustAct(house, classId, await there.personOf(nickname), { type: 'pass-prediction' });
  await there.sent();
};
afterEach(async () => {
  expect(there.slack.breaches).toEqual([]);
  expect(there.logged()).not.toMatch(/limpet|xoxb/iu);
  await there.stop();
});

const askAll = async (): Promise<void> => {
  for (const [at, nickname] of pupils.entries())
    await ask(there.house, there.classId, await there.personOf(nickname), texts[at] ?? '');
};
const said = (room = 'C1'): readonly string[] =>
  order(
    there.slack.room(room).posts.map((post) => wordsSeen(post)),
    texts,
  );
const stuck = async (): Promise<readonly string[]> =>
  (await there.store.stuck(there.classId)).map(({ why }) => why);
/** What the tutor reads in the room. */
const toldStaff = async (): Promise<string> => {
  const who = { classId: there.classId, person: await there.personOf('Plover') };
  return (await there.house.feed(who, 0)).map(({ message }) => message.summary).join('\n');
};
const tie = async (room = 'C1'): Promise<void> => {
  const tutor = user('Plover');
  tutor.close();
  await tutor.command('/here', room);
  await tutor.press(tutor.buttons[0] ?? '', undefined, room);
  await tutor.press('All are 16 or older', undefined, room);
  await there.sent();
};
const drafts = async (nickname: string) => {
  const person = await there.personOf(nickname);
  const { posts } = await there.house.classes.load(there.classId);
  return Object.values(posts).filter((post) => post.person === person);
};
const openForm = async (): Promise<SlackUser> => {
  const wren = user('Wren');
  await wren.command('/turn');
  await wren.press(wren.buttons.find((label) => /ask|question/iu.test(label)) ?? '');
  expect(wren.views.at(-1)?.view['submit']).toBeDefined();
  return wren;
};

describe('What Slack does to those who practise', () => {
  it('a form that comes after its part has closed is taken late, and nothing of it is lost', async () => {
    await begin();
    const wren = await openForm();
    const group = Object.keys((await there.house.classes.load(there.classId)).groups)[0] as never;
    const plover = await there.personOf('Plover');
    await mustAct(there.house, there.classId, plover, { type: 'close-segment', group });
    const { body } = await wren.submit({ text: texts[0] });
    expect(body).toMatchObject({ response_action: 'update' });
    expect(await drafts('Wren')).toEqual([expect.objectContaining({ stop: 0, late: true })]);
  });

  it('presses that come out of order: what is over is refused in words, and stays as it was', async () => {
    await begin();
    const wren = await openForm();
    await wren.submit({ text: texts[0] });
    const send = wren.pressPayload(wren.buttons.find((label) => /^send/iu.test(label)) ?? '');
    await wren.press(wren.buttons.find((label) => /^leave/iu.test(label)) ?? '');
    const before = wren.seenCount;
    await there.slack.update('interactive', send);
    await wren.sawMoreThan(before);
    expect((await drafts('Wren')).map(({ stage }) => stage.stage)).toEqual(['left']);
    expect(wren.sees).not.toBe('');
  });

  it('a form that is sent three times at once, and once more after a restart, is one draft', async () => {
    await begin();
    const wren = await openForm();
    const payload = wren.submitPayload({ text: texts[0] });
    const again = () => there.slack.update('interactive', { ...payload, trigger_id: there.slack.next('t') });
    const answers = await Promise.all([again(), again(), again()]);
    there.house.classes.drop(there.classId);
    answers.push(await again());
    for (const { body } of answers) expect(body).toMatchObject({ response_action: 'update' });
    expect(await drafts('Wren')).toHaveLength(1);
  });

  it.each<[string, SlackFault]>([
    ['fails', { status: 500 }],
    ['is not there', { status: 502 }],
    ['asks to wait', { status: 429, headers: { 'retry-after': '30' } }],
    ['asks to wait and does not say how long', { status: 429 }],
    ['breaks', 'reset'],
    ['says that the trigger has expired', { error: 'expired_trigger_id' }],
  ])('where opening a view %s, the pupil is told privately and nothing is changed', async (_, fault) => {
    await begin();
    const wren = user('Wren');
    await wren.command('/turn');
    there.slack.fail('views.open', fault);
    await wren.press(wren.buttons.find((label) => /ask|question/iu.test(label)) ?? '');
    expect(wren.note).not.toBe('');
    expect(await drafts('Wren')).toEqual([]);
    await wren.command('/turn');
    expect(wren.note).toContain('Limpets');
  });
});

describe('What Slack does to what is said', () => {
  it('a network that is out for a full minute: nothing is lost, said twice or out of order', async () => {
    await begin();
    const breakAll = (): void => {
      for (const method of ['chat.postMessage', 'conversations.history', 'conversations.replies'])
        there.slack.fail(method, 'reset', 'reset');
    };
    breakAll();
    await askAll();
    for (let seconds = 0; seconds < 60; seconds += 5) {
      breakAll();
      await there.sent();
      await there.pass(5000);
    }
    expect(said()).toEqual([]);
    for (let tries = 0; tries < 80; tries += 1) {
      await there.pass(5000);
      await there.sent();
    }
    expect(said()).toEqual(texts);
    expect(await stuck()).toEqual([]);
  });

  it('slowed down, failing and breaking in turn: all is said once, in order', async () => {
    await begin();
    there.slack.fail(
      'chat.postMessage',
      { status: 429, headers: { 'retry-after': '2' } },
      { status: 500 },
      'reset after',
      { status: 429 },
      { status: 502 },
      { error: 'internal_error' },
    );
    await askAll();
    for (let tries = 0; tries < 10; tries += 1) {
      await there.sent();
      await there.pass(30_000);
    }
    await there.sent();
    expect(said()).toEqual(texts);
  });

  it('a channel that is deleted under us: staff are told, and what waited is said in the one that is tied then', async () => {
    await begin();
    there.slack.rooms.delete('C1');
    await askAll();
    await there.sent();
    expect(await stuck()).toEqual([expect.stringContaining('channel_not_found') as string]);
    expect(await toldStaff()).toMatch(/Slack could not be sent.*\/here/u);
    expect(there.slack.room('C2').posts.map(wordsSeen).join()).toContain('channel_not_found');
    there.slack.room('C3');
    await tie('C3');
    expect(said('C3')).toEqual(texts);
    expect(await stuck()).toEqual([]);
    expect(await toldStaff()).not.toContain('could not be sent');
  });

  it('a permission that is withdrawn: staff are told which, and given back all is said', async () => {
    await begin();
    there.slack.fail('chat.postMessage', { error: 'restricted_action' });
    await askAll();
    await there.sent();
    expect(await toldStaff()).toMatch(/Slack could not be sent.*restricted_action/u);
    await tie();
    expect(said()).toEqual(texts);
  });

  it('a bot that is taken out and invited again: staff are told, and all is said', async () => {
    await begin();
    there.slack.room('C1').member = false;
    await askAll();
    await there.sent();
    expect(await toldStaff()).toMatch(/Slack could not be sent.*not_in_channel.*Invite it/u);
    there.slack.room('C1').member = true;
    await tie();
    expect(said()).toEqual(texts);
  });

  it('a token that is revoked: staff are told in the room, and with another all is said', async () => {
    await begin();
    // For the talk, and for the word to staff that follows.
    there.slack.fail('chat.postMessage', { error: 'token_revoked' }, { error: 'token_revoked' });
    await askAll();
    await there.sent();
    expect(await toldStaff()).toMatch(/Slack could not be sent.*token_revoked/u);
    await tie();
    expect(said()).toEqual(texts);
  });

  it('a crash between sending and noting: the next process finds what stands and says it no second time', async () => {
    await begin();
    const { store, house, slack, classId } = there;
    await ask(house, classId, await there.personOf('Wren'), texts[0]);
    const row = (await store.outbox('slack', 10)).find(({ place }) => place.room === 'C1');
    // It arrives, and the process ends before that is noted: the mark that it is being sent is all that is left.
    slack.fail('chat.postMessage', 'reset after');
    await there.sent();
    await store.outboxAgain(row?.key ?? '');
    await store.outboxSending(row?.key ?? '', house.now() - 300_000);
    const channel = slackOver(slack, quiet);
    await channel.start(house);
    const clock = { now: () => house.now() };
    const answer = () => Promise.reject(new Error('no look is told here'));
    const next = startSender({ store, house, channel, clock, log: silentLog, answer });
    await next.idle();
    await next.stop();
    await channel.stop();
    expect(said()).toEqual([texts[0]]);
  });
});

describe('What a network does to the socket', () => {
  it('a line on which nobody answers any more is left, and another is opened', async () => {
    await begin();
    const slack = await SlackStandIn.open();
    const line: FrozenLine = await frozenLine(Number(new URL(slack.base).port));
    Object.defineProperty(slack, 'base', { get: () => `http://127.0.0.1:${line.port}` });
    const channel = slackOver(slack, quiet, { appToken: 'xapp-of-the-tests', signingSecret: null });
    await channel.start(openFakeHouse());
    await expect.poll(() => slack.sockets).toBe(1);
    const opened = slack.called('apps.connections.open').length;
    line.freeze();
    await expect
      .poll(() => slack.called('apps.connections.open').length, { timeout: 20_000 })
      .toBeGreaterThan(opened);
    const one = slack.user('UWREN');
    // The stand-in holds the dead line for open too, and may ask there.
    await expect.poll(() => slack.sockets).toBeGreaterThanOrEqual(1);
    await expect
      .poll(() => one.command('/turn').then(() => one.note), { timeout: 20_000 })
      .toContain('/join');
    await channel.stop();
    await line.stop();
    await slack.stop();
  });
});
