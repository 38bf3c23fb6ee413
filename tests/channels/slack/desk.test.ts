import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Reply } from '../../../shared/channel.js';
import { everyField, messageOf, proseOf } from '../../contracts/channel-messages.js';
import { own, slips } from '../../support/fake-class.js';
import { openFakeHouse, type FakeHouse } from '../../support/fake-house.js';
import { openSlack, type OpenSlack } from '../../support/open-slack.js';
import type { StandingPost } from '../../support/slack-stand-in.js';
import type { SlackUser } from '../../support/slack-user.js';

const people = { UWREN: slips['WREN-2345-67'], UPLOVER: slips['PLOVER-LINK'] } as const;

/** The fake house in which Slack's Wren and Plover are known. */
function knownHouse(): FakeHouse {
  const house = openFakeHouse();
  house.identify = (_channel, tenant, user) =>
    Promise.resolve(tenant === 'T1' ? (people[user as keyof typeof people] ?? null) : null);
  return house;
}

let house: FakeHouse;
let there: OpenSlack;
let wren: SlackUser;
let plover: SlackUser;
beforeEach(async () => {
  house = knownHouse();
  there = await openSlack(house);
  wren = there.slack.user('UWREN');
  plover = there.slack.user('UPLOVER');
});
afterEach(async () => {
  expect(there.slack.breaches).toEqual([]);
  await there.stop();
});

/** Makes the next moves take this long. */
function slow(milliseconds: number): void {
  const move = house.move.bind(house);
  house.move = async (update) => {
    if (update.move !== 'visit') await new Promise((settle) => setTimeout(settle, milliseconds));
    return move(update);
  };
}

/** A message of the channel with buttons, as the bot posts it. */
async function posted(): Promise<StandingPost> {
  await there.channel.deliver?.({
    tenant: 'T1',
    room: 'C1',
    telling: {
      do: 'say',
      key: 'k',
      message: messageOf([
        proseOf('A new part is open.'),
        {
          type: 'choices',
          prompt: null,
          choices: [
            { label: 'Quiet pass', action: { kind: 'move', name: 'quiet-pass', args: {} } },
            { label: 'Ask', action: { kind: 'look', name: 'step', args: { do: 'question' } } },
          ],
        },
      ]),
    },
    before: null,
    nonce: 'n'.padEnd(25, '0'),
  });
  const post = there.slack.room('C1').posts.at(-1);
  if (!post) throw new Error('nothing was posted');
  return post;
}

async function openForm(): Promise<void> {
  await wren.press('Ask', await posted());
  expect(wren.views).toHaveLength(1);
}

describe('Who somebody is', () => {
  it('is asked of a stranger, whatever they do, and nothing is done', async () => {
    const stranger = there.slack.user('UNOBODY');
    await stranger.command('/turn');
    expect(stranger.note).toContain('/join code:');
    await stranger.command('/held list');
    expect(stranger.note).toContain('/join code:');
    await stranger.press('Quiet pass', await posted());
    expect(stranger.sees).toContain('/join code:');
    expect(house.updates).toEqual([]);
  });

  it('is said with a code, under the name that Slack leaves free too', async () => {
    const codes: string[] = [];
    house.join = (_channel, _tenant, _user, code) => {
      codes.push(code);
      return Promise.resolve(
        code === 'K7QM'
          ? { classId: people.UWREN!.classId, person: people.UWREN!.person }
          : { refused: 'This code opens nothing.' },
      );
    };
    const new_ = there.slack.user('UNEW');
    await new_.command('/join');
    expect(new_.note).toContain('/join code:K7QM');
    await new_.command('/turnstone-join code:wrong');
    expect(new_.note).toContain('opens nothing');
    await new_.command('/join K7QM');
    expect(new_.note).toContain('You are Wren');
    expect(new_.buttons).toEqual(['My page']);
    expect(codes).toEqual(['wrong', 'K7QM']);
  });
});

describe('Tying a place', () => {
  it('is open to a named adult for calls alone, whatever they name, and to no pupil', async () => {
    const bound: unknown[] = [];
    house.profile = (who) =>
      Promise.resolve({
        ...who,
        nickname: 'Owl',
        role: who.person === people.UPLOVER?.person ? 'safeguarding lead' : 'pupil',
        register: '8-10',
        group: null,
        className: 'Class',
      });
    house.bindPlace = (_who, channel, tenant, room, audience) => {
      bound.push([channel, tenant, room, audience]);
      return Promise.resolve({ done: true, messages: [] });
    };
    await plover.command('/here');
    await wren.command('/here staff');
    expect(bound).toEqual([['slack', 'T1', 'C1', { to: 'staff', group: null }]]);
  });
});

describe('A slash command', () => {
  it('is answered privately by its acknowledgement, hostile words inert', async () => {
    house.show('turn', (who) => [
      { ...messageOf([proseOf('<!channel> *limpet* @everyone')]), audience: own(who) },
    ]);
    const { body, status } = await wren.command('/turn');
    expect(status).toBe(200);
    expect(body).toMatchObject({ response_type: 'ephemeral' });
    expect(wren.note).toContain('<!channel> *limpet* @everyone');
    expect(there.slack.called('chat.postMessage')).toEqual([]);
  });

  it('that is typed wrongly is answered with what there is', async () => {
    await plover.command('/practice fly');
    expect(plover.note).toContain('expected one of start');
    await plover.command('/nothing');
    expect(plover.note).toContain('/passages');
  });

  it('with what it needs is done, with Slack’s escapes and curled marks undone', async () => {
    await plover.command('/groups make name:“Limpets & <eels>”');
    expect(house.commands).toEqual([
      { name: 'groups', action: 'make', options: { name: 'Limpets & <eels>' } },
    ]);
  });

  it('that lacks what it needs opens a form, and what was typed is kept', async () => {
    await plover.command('/roster goal person:Wren');
    expect(plover.views).toHaveLength(1);
    const { body } = await plover.submit({ strategy: 'question' });
    expect(body).toMatchObject({ response_action: 'update' });
    expect(house.commands).toEqual([
      { name: 'roster', action: 'goal', options: { person: 'Wren', strategy: 'question' } },
    ]);
  });

  it('takes a passage as a file', async () => {
    there.slack.files.set('tide.md', '# The tide\n\nThe tide is out.');
    await plover.command('/passages add-file');
    await plover.submit({ text: `${there.slack.base}/files/tide.md` });
    expect(house.commands).toMatchObject([
      { action: 'add-file', options: { text: '# The tide\n\nThe tide is out.' } },
    ]);
  });

  it('never sends the bot’s token to a file elsewhere', async () => {
    await plover.command('/passages add-file');
    const { body } = await plover.submit({ text: 'https://files.example.test/tide.md' });
    expect(body).toMatchObject({ response_action: 'errors' });
    expect(house.commands).toEqual([]);
  });

  it('that takes long is said to be worked on, never to be kept, and then answered in the same place', async () => {
    const command = house.command.bind(house);
    house.command = async (...all) => {
      await new Promise((settle) => setTimeout(settle, 1800));
      return command(...all);
    };
    const sent = Date.now();
    const { body } = await plover.command('/groups make name:Eels');
    expect(Date.now() - sent).toBeLessThan(2500);
    expect(JSON.stringify(body)).toContain('Working on it');
    expect(JSON.stringify(body)).not.toMatch(/kept|done/iu);
    await expect.poll(() => plover.note).toContain('Done: /groups make');
    expect(plover.notes).toHaveLength(1);
  });

  it('whose keeping fails says that nothing was kept', async () => {
    house.command = () => Promise.reject(new Error('disk full'));
    await plover.command('/groups make name:Eels');
    expect(plover.note).toContain('nothing was kept');
    expect(there.logged()).not.toContain('Eels');
  });

  it('with a form whose trigger has died says so', async () => {
    there.slack.triggersDie = true;
    await plover.command('/roster goal person:Wren');
    expect(plover.note).toContain('could not be opened');
  });
});

describe('A press', () => {
  it('of “For you” in the channel opens the tray to who pressed, and to nobody else', async () => {
    await wren.press('For you', await posted());
    expect(wren.views).toHaveLength(1);
    expect(there.slack.called('chat.postMessage')).toHaveLength(1);
    expect(there.slack.called('chat.update')).toEqual([]);
  });

  it('is done before it is acknowledged, and twice the same press is done once', async () => {
    const post = await posted();
    const payload = wren.pressPayload('Quiet pass', post);
    await there.slack.update('interactive', payload);
    await there.slack.update('interactive', { ...payload, trigger_id: 'again' });
    const [first, second] = house.updates;
    expect(first).toMatchObject({ move: 'quiet-pass', fields: {} });
    expect(second?.id).toBe(first?.id);
    expect(house.done.get(first?.id ?? '')).toBe(1);
  });

  it('whose keeping fails isn’t acknowledged, and says so', async () => {
    const post = await posted();
    house.failNext(new Error('disk full'));
    const { status } = await wren.press('Quiet pass', post);
    expect(status).toBe(500);
    expect(wren.note).toContain('nothing was kept');
  });

  it('whose trigger has died is answered in the channel, privately', async () => {
    const post = await posted();
    there.slack.triggersDie = true;
    await wren.press('For you', post);
    expect(wren.views).toEqual([]);
    expect(wren.notes).toHaveLength(1);
  });

  it('that takes long is said to be worked on, and never replaces what stands in the channel', async () => {
    const post = await posted();
    slow(1800);
    await wren.press('Quiet pass', post);
    expect(wren.notes[0] && JSON.stringify(wren.notes[0].body)).toContain('Working on it');
    await expect.poll(() => wren.notes.length + wren.views.length).toBe(2);
    expect(there.slack.room('C1').posts).toEqual([post]);
  });

  it('of a button from another time is answered with a way on', async () => {
    const payload = wren.pressPayload('Quiet pass', await posted());
    const [action] = payload['actions'] as Record<string, unknown>[];
    for (const value of ['nonsense', '~AAAA', '["x"]', '[]', '{"a":1}', '']) {
      const { status } = await there.slack.update('interactive', {
        ...payload,
        trigger_id: value,
        actions: [{ ...action, value }],
      });
      expect(status).toBe(200);
    }
    await expect.poll(() => wren.note).toContain('earlier time');
    expect(house.updates).toEqual([]);
  });

  it('in a view that has changed meanwhile changes nothing and loses nothing', async () => {
    const choice = { label: 'My page', action: { kind: 'look', name: 'turn', args: {} } } as const;
    house.show('for-you', (who) => [
      { ...messageOf([{ type: 'choices', prompt: null, choices: [choice] }]), audience: own(who) },
    ]);
    await wren.press('For you', await posted());
    const payload = wren.pressPayload('My page');
    const view = wren.views.at(-1);
    wren.replaceView(view?.id ?? '', undefined, view?.view ?? {});
    const { status } = await there.slack.update('interactive', payload);
    expect(status).toBe(200);
    expect(wren.views).toHaveLength(1);
  });
});

describe('A form', () => {
  it('opens from a look, and its feedback comes in its place', async () => {
    await openForm();
    const { body } = await wren.submit({ text: 'Why do limpets go home?' });
    expect(body).toMatchObject({ response_action: 'update' });
    expect(house.updates).toMatchObject([
      { move: 'send-draft', fields: { do: 'question', text: 'Why do limpets go home?' } },
    ]);
  });

  it('that is sent twice is done once', async () => {
    await openForm();
    const payload = wren.submitPayload({ text: 'Why do limpets go home?' });
    await Promise.all([
      wren.sendSubmission(payload),
      there.slack.update('interactive', { ...payload, trigger_id: 'pressed twice' }),
    ]);
    expect(house.updates.map(({ id }) => id)).toEqual([house.updates[0]?.id, house.updates[0]?.id]);
    expect([...house.done.values()]).toEqual([1]);
  });

  it('that is refused says why in itself; mended and sent again from the same view it is a new update', async () => {
    await openForm();
    const refused = await wren.submit({ text: 'refuse me' });
    expect(refused.body).toMatchObject({
      response_action: 'errors',
      errors: { 'f0:text': expect.stringContaining('closed') as string },
    });
    const fine = await wren.submit({ text: 'Why do limpets go home?' });
    expect(fine.body).toMatchObject({ response_action: 'update' });
  });

  it('whose keeping fails keeps what was typed, and is sent again with the same id', async () => {
    await openForm();
    house.failNext(new Error('disk full'));
    const { body } = await wren.submit({ text: 'Why do limpets go home?' });
    expect(JSON.stringify(body)).toContain('nothing was kept');
    await wren.submit({ text: 'Why do limpets go home?' });
    expect([...house.done.values()]).toEqual([1]);
    expect(there.logged()).not.toContain('limpet');
  });

  it('that takes long is worked on; refused then, it comes back as it was filled in', async () => {
    await openForm();
    slow(1800);
    const { body } = await wren.submit({ text: 'refuse me, please' });
    expect(JSON.stringify(body)).toContain('Working on it');
    await expect.poll(() => wren.sees).toContain('This part has closed');
    expect(JSON.stringify(wren.views.at(-1)?.view)).toContain('"initial_value":"refuse me, please"');
    house.move = (): Promise<Reply> => Promise.resolve({ done: true, messages: [] });
    const again = await wren.submit({});
    expect(again.body).toMatchObject({ response_action: 'update' });
  });

  it('keeps what is typed beneath what is asked for beside it', async () => {
    const back = { label: 'Back', action: { kind: 'look', name: 'turn', args: {} } } as const;
    house.show('step', (who) => [
      {
        ...messageOf([
          { ...everyField, main: true },
          { type: 'choices', prompt: null, choices: [back] },
        ]),
        audience: own(who),
      },
    ]);
    await openForm();
    await wren.press('Back');
    expect(wren.views).toHaveLength(2);
    const [form] = wren.views;
    expect(JSON.stringify(form?.view)).toContain('A hard word');
  });
});

describe('A pupil', () => {
  it('goes on from what is done to their page without leaving the view', async () => {
    await wren.press('Quiet pass', await posted());
    expect(wren.sees).toContain('It is kept');
    expect(wren.buttons).toEqual(['My page']);
    await wren.press('My page');
    expect(wren.views).toHaveLength(1);
    expect(wren.sees).not.toContain('It is kept');
  });
});

describe('Slack in trouble', () => {
  it.each([
    ['token_revoked', { error: 'token_revoked' }],
    ['500', { status: 500 }],
    ['429', { status: 429, headers: { 'retry-after': '60' } }],
    ['a broken connection', 'reset'],
  ] as const)('%s: an answer that can be no view comes as a private message', async (_, fault) => {
    const post = await posted();
    there.slack.fail('views.open', fault);
    await wren.press('For you', post);
    expect(wren.views).toEqual([]);
    expect(wren.notes).toHaveLength(1);
  });
});

describe('A long answer', () => {
  it.each(['a private message', 'a view'])(
    'goes on page by page in %s, whole and in order',
    async (surface) => {
      const blocks = Array.from({ length: 150 }, (_, n) =>
        proseOf(`Line ${n}. ${'The tide is out. '.repeat(12)}`),
      );
      house.show('turn', (who) => [{ ...messageOf(blocks), audience: own(who) }]);
      await wren.command('/turn');
      if (surface === 'a view') await wren.press('My page', await posted());
      const numbers: number[] = [];
      const read = (): void => {
        for (const found of wren.sees.matchAll(/Line (\d+)\./gu)) numbers.push(Number(found[1]));
      };
      read();
      for (let pages = 0; pages < 20 && wren.buttons.includes('Go on'); pages += 1) {
        const before = numbers.length;
        await wren.press('Go on');
        read();
        expect(numbers.length).toBeGreaterThan(before);
      }
      expect(numbers).toEqual(Array.from({ length: 150 }, (_, n) => n));
    },
  );
});
