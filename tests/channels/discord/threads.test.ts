import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Delivered, Delivery } from '../../../shared/channel.js';
import { asId, type PracticeId } from '../../../shared/ids.js';
import { messageOf, proseOf } from '../../contracts/channel-messages.js';
import { openDiscord, type OpenDiscord } from '../../support/discord-open.js';
import { seenText } from '../../support/discord-payloads.js';
import { server } from '../../support/discord-stand-in.js';
import { openFakeHouse, type FakeHouse } from '../../support/fake-house.js';

const talk = { practice: asId<PracticeId>('p1'), title: 'Limpets' };

describe('the talk about a text on Discord', () => {
  let house: FakeHouse;
  let discord: OpenDiscord;
  let count = 0;
  beforeEach(async () => {
    house = openFakeHouse();
    discord = await openDiscord(house, { patience: 400 });
    discord.standIn.openRoom('101');
  });
  afterEach(async () => {
    expect(discord.standIn.breaches).toEqual([]);
    await discord.stop();
  });

  const nonce = (): string => String((count += 1)).padEnd(25, 'n');
  const say = (text: string, more: Partial<Delivery> = {}): Delivery => ({
    tenant: server,
    room: '101',
    telling: { do: 'say', key: text, message: messageOf([proseOf(text)]), talk },
    before: null,
    nonce: nonce(),
    ...more,
  });
  const deliver = async (delivery: Delivery): Promise<Delivered> => {
    if (!discord.channel.deliver) throw new Error('the channel does not deliver');
    return discord.channel.deliver(delivery);
  };
  const sent = async (delivery: Delivery): Promise<string> => {
    const outcome = await deliver(delivery);
    if (!('sent' in outcome) || outcome.sent === null) throw new Error(JSON.stringify(outcome));
    return outcome.sent;
  };
  const inChannel = () => discord.standIn.rooms.only('101').map(seenText);
  const thread = () => discord.standIn.rooms.threads('101')[0]?.id ?? '';
  const inThread = () => discord.standIn.rooms.only(thread()).map(seenText);

  it('stands in one thread, begun from the first message, which is all that the channel gets', async () => {
    const opening = await sent(say('A new text'));
    await sent(say('Part one', { opening }));
    await sent(say('A question', { opening }));
    expect(inChannel()).toEqual([expect.stringContaining('A new text')]);
    expect(discord.standIn.rooms.threads('101')).toMatchObject([{ id: opening, name: 'Limpets' }]);
    expect(inThread()).toEqual([expect.stringContaining('Part one'), expect.stringContaining('A question')]);
  });

  it('is replaced and withdrawn where it stands', async () => {
    const opening = await sent(say('A new text'));
    const before = await sent(say('Part one', { opening }));
    const changed = { do: 'replace', key: 'k', message: messageOf([proseOf('More time')]), talk } as const;
    const again = await sent(say('', { opening, before, telling: changed }));
    expect(inThread()).toEqual([expect.stringContaining('More time')]);
    const { audience } = changed.message;
    await deliver(say('', { before: again, telling: { do: 'withdraw', key: 'k', audience } }));
    expect(inThread()).toEqual([]);
    expect(inChannel()).toHaveLength(1);
  });

  it('begins the thread later where the line broke after the first message', async () => {
    discord.standIn.trouble('POST', /\/threads$/, 'reset');
    const opening = await sent(say('A new text'));
    expect(discord.standIn.rooms.threads('101')).toEqual([]);
    await sent(say('Part one', { opening }));
    expect(inThread()).toEqual([expect.stringContaining('Part one')]);
  });

  it.each(['threads', 'write in threads'] as const)(
    'goes on in the channel where the bot has no right to “%s”, which staff hear once',
    async (what) => {
      discord.standIn.forbid('101', what, true);
      const first = await deliver(say('A new text'));
      const opening = 'sent' in first ? (first.sent ?? '') : '';
      const next = await deliver(say('Part one', { opening }));
      const last = await deliver(say('Part two', { opening }));
      expect(inChannel()).toHaveLength(3);
      const told = [first, next, last].flatMap((one) => ('tell' in one && one.tell ? [one.tell] : []));
      expect(told).toEqual([
        expect.stringMatching(/“Create Public Threads” and “Send Messages in Threads”/u),
      ]);
      // Given back, the thread is used again after a while.
      discord.standIn.forbid('101', what, false);
      house.pass(700_000);
      await sent(say('Part three', { opening }));
      expect(inThread()).toEqual([expect.stringContaining('Part three')]);
    },
  );

  it('opens an archived thread again, to write and to change', async () => {
    const opening = await sent(say('A new text'));
    const before = await sent(say('Part one', { opening }));
    discord.standIn.rooms.archive(thread(), false);
    const changed = { do: 'replace', key: 'k', message: messageOf([proseOf('More time')]), talk } as const;
    await sent(say('', { opening, before, telling: changed }));
    discord.standIn.rooms.archive(thread(), false);
    await sent(say('Part two', { opening }));
    expect(inThread()).toEqual([expect.stringContaining('More time'), expect.stringContaining('Part two')]);
  });

  it('stops with words for staff where somebody locked the thread', async () => {
    const opening = await sent(say('A new text'));
    discord.standIn.rooms.archive(thread(), true);
    expect(await deliver(say('Part one', { opening }))).toEqual({
      stuck: expect.stringMatching(/archived.*Open it again/u) as string,
    });
  });

  it('goes on in the channel where first message and thread were deleted', async () => {
    const opening = await sent(say('A new text'));
    discord.standIn.closeRoom(thread());
    discord.standIn.deleteMessage('101', opening);
    const outcome = await deliver(say('Part one', { opening }));
    expect(outcome).toMatchObject({
      tell: expect.stringMatching(/can’t be found or opened again/u) as string,
    });
    expect(inChannel()).toEqual([expect.stringContaining('Part one')]);
  });

  it('needs no thread in a place that is a thread itself', async () => {
    const opening = await sent(say('A new text'));
    const room = thread();
    const own = await deliver(say('Another text', { room }));
    expect(own).not.toHaveProperty('tell');
    const first = 'sent' in own ? (own.sent ?? '') : '';
    await sent(say('Part one', { room, opening: first }));
    expect(discord.standIn.rooms.only(room)).toHaveLength(2);
    expect(opening).toBe(room);
  });

  it('is found in its thread after a crash, and in the channel where it had to stand there', async () => {
    const opening = await sent(say('A new text'));
    const delivery = say('Part one', { opening });
    expect(await discord.channel.stands?.(delivery)).toBeNull();
    const id = await sent(delivery);
    expect(await discord.channel.stands?.(delivery)).toEqual({ id });
    discord.standIn.forbid('101', 'write in threads', true);
    const second = say('Part two', { opening });
    const fallen = await sent(second);
    discord.standIn.forbid('101', 'write in threads', false);
    house.pass(700_000);
    expect(await discord.channel.stands?.(second)).toEqual({ id: fallen });
    discord.standIn.forbid('101', 'read', true);
    expect(await discord.channel.stands?.(second)).toBe('unknown');
  });

  it('never says again what may stand where history is hidden', async () => {
    const opening = await sent(say('A new text'));
    const delivery = say('Part one', { opening });
    discord.standIn.trouble('POST', /\/messages$/, 'reset after');
    expect(await deliver(delivery)).toHaveProperty('again');
    discord.standIn.forbid('101', 'read', true);
    house.pass(150_000);
    expect(await deliver(delivery)).toEqual({
      stuck: expect.stringMatching(/Cannot tell whether a message arrived/u) as string,
    });
    expect(inThread()).toHaveLength(1);
  });

  it('may change a message twice, also where history is hidden', async () => {
    const before = await sent(say('Part one'));
    discord.standIn.forbid('101', 'read', true);
    const changed = { do: 'replace', key: 'k', message: messageOf([proseOf('More time')]), talk } as const;
    const delivery = say('', { before, telling: changed });
    expect(await discord.channel.stands?.(delivery)).toBeNull();
    await sent(delivery);
    await sent(delivery);
    expect(inChannel()).toEqual([expect.stringContaining('More time')]);
  });

  it('is named within the limits whatever the title', async () => {
    const long = { ...talk, title: 'On limpets '.repeat(20) };
    await sent(
      say('', { telling: { do: 'say', key: 'k', message: messageOf([proseOf('One')]), talk: long } }),
    );
    const none = { ...talk, title: '  ' };
    await sent(
      say('', { telling: { do: 'say', key: 'l', message: messageOf([proseOf('Two')]), talk: none } }),
    );
    expect(discord.standIn.rooms.threads('101').map(({ name }) => name)).toEqual([
      long.title.slice(0, 100).trim(),
      'Our text',
    ]);
  });
});
