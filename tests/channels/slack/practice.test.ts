import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Json, SlackUser } from '../../support/slack-user.js';
import { wordsSeen } from '../../support/slack-limits.js';
import { openSlackClass, type SlackClass } from '../../support/slack-practice.js';

const passage = [
  '# The home of the limpet',
  '',
  'Limpets stop when the tide is out. Each one sits on its own spot.',
  '',
  'When the sea comes back they graze. Then they go home again.',
].join('\n');

describe.each([
  ['signed requests', false],
  ['a socket', true],
])('A class practises on Slack over %s', (_, overSocket) => {
  let there: SlackClass;
  const user = (nickname: string): SlackUser => there.slack.user(`U${nickname.toUpperCase()}`);
  const talk = (): string =>
    there.slack
      .room('C1')
      .posts.map((post) => wordsSeen(post))
      .join('\n---\n');
  const staff = (): string =>
    there.slack
      .room('C2')
      .posts.map((post) => wordsSeen(post))
      .join('\n---\n');

  beforeEach(async () => {
    there = await openSlackClass(
      ['Wren', 'Finch'],
      overSocket ? { appToken: 'xapp-of-the-tests', signingSecret: null } : {},
    );
    if (overSocket) await expect.poll(() => there.slack.sockets).toBe(1);
  });
  afterEach(async () => {
    expect(there.slack.breaches).toEqual([]);
    expect(there.logged()).not.toMatch(/limpet|tide|rude|xoxb|xapp/iu);
    await there.stop();
  });

  /** Everybody in, both places bound, a passage set, the practice running: all by slash commands. */
  async function begin(): Promise<void> {
    for (const nickname of ['Plover', 'Wren', 'Finch']) {
      await user(nickname).command(`/join code:${there.codeOf(nickname)}`);
      expect(user(nickname).note).toContain(`You are ${nickname} in Tuesday readers`);
    }
    const tutor = user('Plover');
    await tutor.command('/here', 'C1');
    const [group = ''] = tutor.buttons;
    await tutor.press(group);
    expect(tutor.note).toContain('16 or older');
    await tutor.press('All are 16 or older');
    expect(tutor.note).toContain('This channel is for');
    await tutor.command('/here staff', 'C2');
    expect(tutor.note).toContain('no pupil is in this channel');
    await tutor.command('/passages add', 'C2');
    await tutor.submit({ text: passage, title: 'The home of the limpet' });
    tutor.close();
    await tutor.command(`/passages set passage:The home group:${group}`, 'C2');
    expect(tutor.note).not.toContain('Cannot');
    await tutor.command(`/practice start group:${group}`, 'C2');
    expect(tutor.note).not.toContain('Cannot');
    await there.sent();
  }

  /** Presses the one big button of a pupil's page until something is done; what it was. */
  async function pressMain(nickname: string, words: string): Promise<string | null> {
    const one = user(nickname);
    one.close();
    await one.command('/turn');
    for (let steps = 0; steps < 4; steps += 1) {
      const top = one.views.at(-1)?.view;
      if (top?.['submit'] !== undefined) {
        await one.submit(sample(top, words));
        return 'sent';
      }
      const label = mainOf(top ?? one.notes.at(-1)?.body);
      if (label === null) return null;
      const before = one.sees;
      await one.press(label);
      if (one.views.at(-1)?.view['submit'] === undefined) return one.sees === before ? null : label;
    }
    return null;
  }

  it('from the command to the post, with private feedback, and to the digest', async () => {
    await begin();
    expect(talk()).toMatch(/leads/u);
    const wren = user('Wren');
    const seen: string[] = [];
    for (let rounds = 0; rounds < 30; rounds += 1) {
      for (const nickname of ['Wren', 'Finch']) {
        const done = await pressMain(nickname, `Why does the limpet go home ${rounds}?`);
        if (done !== null) seen.push(done);
      }
      await there.pass(1_800_000);
      await there.sent();
    }
    expect(seen.filter((one) => one === 'sent').length).toBeGreaterThanOrEqual(4);
    expect(talk()).toContain('Why does the limpet go home');
    // Feedback is seen by nobody but who it is for.
    expect(talk()).not.toMatch(/improve/iu);
    expect(wren.notes.length).toBeGreaterThan(3);
    const tutor = user('Plover');
    tutor.close();
    await tutor.command('/digest now', 'C2');
    expect(tutor.sees).toContain('Wren');
    expect(tutor.sees).toContain('Finch');
  });

  it('feedback comes in place of the form, and the draft is posted from there', async () => {
    await begin();
    const wren = user('Wren');
    await wren.command('/turn');
    await there.house.move({
      id: 'look',
      who: { classId: there.classId, person: await there.personOf('Wren') },
      move: 'pass-prediction',
      fields: {},
    });
    await wren.command('/turn');
    const ask = wren.buttons.find((label) => /ask|question/iu.test(label)) ?? '';
    await wren.press(ask);
    const answer = await wren.submit({ text: 'Why do limpets go home?' });
    expect(answer.body).toMatchObject({ response_action: 'update' });
    expect(
      there.slack.called('chat.postMessage').some((args) => JSON.stringify(args).includes('Why do limpets')),
    ).toBe(false);
    const post = wren.buttons.find((label) => /post|send/iu.test(label)) ?? '';
    await wren.press(post);
    await there.sent();
    expect(talk()).toContain('Why do limpets go home?');
  });

  it('a held post is published by an adult from the staff’s channel and comes to the talk only then', async () => {
    await begin();
    const wren = user('Wren');
    await there.house.move({
      id: 'look',
      who: { classId: there.classId, person: await there.personOf('Wren') },
      move: 'pass-prediction',
      fields: {},
    });
    await wren.command('/turn');
    await wren.press(wren.buttons.find((label) => /ask|question/iu.test(label)) ?? '');
    await wren.submit({ text: 'Why is the limpet rude?' });
    await there.sent();
    expect(talk()).not.toContain('rude');
    const tutor = user('Plover');
    await tutor.command('/held list', 'C2');
    expect(tutor.sees).toContain('Why is the limpet rude?');
    const publish = tutor.buttons.find((label) => /publish/iu.test(label)) ?? '';
    await tutor.press(publish, undefined, 'C2');
    await there.sent();
    expect(talk()).toContain('Why is the limpet rude?');
    expect(staff().length + talk().length).toBeGreaterThan(0);
  });

  it('a form that is refused says why in itself and keeps what was typed; sent again it is done once', async () => {
    await begin();
    const tutor = user('Plover');
    await tutor.command('/roster add', 'C2');
    const refused = await tutor.submit({ nickname: 'Wren', role: 'pupil' });
    expect(refused.body).toMatchObject({
      response_action: 'errors',
      errors: { 'f0:nickname': expect.stringContaining('Cannot') as string },
    });
    const fine = tutor.submitPayload({ nickname: 'Dunlin', role: 'pupil' });
    const [first, second] = await Promise.all([
      tutor.sendSubmission(fine),
      there.slack.update('interactive', { ...fine, trigger_id: 'pressed twice' }),
    ]);
    expect(first.body).toMatchObject({ response_action: 'update' });
    expect(second.body).toMatchObject({ response_action: 'update' });
    const people = Object.values((await there.house.classes.load(there.classId)).people);
    expect(people.filter(({ nickname }) => 'text' in nickname && nickname.text === 'Dunlin')).toHaveLength(1);
  });

  it('a form that comes when the practice has paused is answered in itself, and what was typed stays', async () => {
    await begin();
    const wren = user('Wren');
    await there.house.move({
      id: 'look',
      who: { classId: there.classId, person: await there.personOf('Wren') },
      move: 'pass-prediction',
      fields: {},
    });
    await wren.command('/turn');
    await wren.press(wren.buttons.find((label) => /ask|question/iu.test(label)) ?? '');
    await user('Plover').command('/practice pause group:Group 1', 'C2');
    const { body } = await wren.submit({ text: 'Why do limpets go home?' });
    expect(body).toMatchObject({ response_action: 'errors' });
    expect(wren.views.at(-1)?.view['submit']).toBeDefined();
    await there.sent();
    expect(talk()).not.toContain('Why do limpets go home?');
  });

  it('three of the same update do one thing, also after a restart', async () => {
    await begin();
    const tutor = user('Plover');
    const payload = tutor.commandPayload('/groups', 'make name:Eels', 'C2');
    // Slack signs a repeat anew, with the time at which it is sent.
    const answers = [];
    for (let times = 0; times < 3; times += 1) {
      answers.push(there.slack.update('slash_commands', payload));
      if (!overSocket) await there.pass(1000);
    }
    for (const { status } of await Promise.all(answers)) expect(status).toBe(200);
    there.house.classes.drop(there.classId);
    await there.pass(1000);
    await there.slack.update('slash_commands', payload);
    const groups = Object.values((await there.house.classes.load(there.classId)).groups);
    expect(groups.filter(({ name }) => name === 'Eels')).toHaveLength(1);
  });
});

function mainOf(shown: Json | undefined): string | null {
  for (const block of (shown?.['blocks'] as readonly Json[] | undefined) ?? []) {
    for (const one of (block['elements'] as readonly Json[] | undefined) ?? [])
      if (one['type'] === 'button' && one['style'] === 'primary')
        return String((one['text'] as Json)['text']);
  }
  return null;
}

/** The first thing to pick in each field that must be filled, and the words in each that is typed. */
function sample(view: Json, words: string): Record<string, string> {
  const values: Record<string, string> = {};
  for (const block of view['blocks'] as readonly Json[]) {
    if (block['type'] !== 'input' || block['optional'] === true) continue;
    const name = String(block['block_id']).replace(/^f\d+:/u, '');
    const element = block['element'] as Json;
    const [first] = (element['options'] as readonly Json[] | undefined) ?? [];
    values[name] = element['type'] === 'plain_text_input' ? words : String(first?.['value']);
  }
  return values;
}
