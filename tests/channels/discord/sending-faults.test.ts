import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Delivery } from '../../../shared/channel.js';
import { messageOf, proseOf } from '../../contracts/channel-messages.js';
import { openDiscord, type OpenDiscord } from '../../support/discord-open.js';
import { seenText } from '../../support/discord-payloads.js';
import { discordToken, server } from '../../support/discord-stand-in.js';
import { openFakeHouse, type FakeHouse } from '../../support/fake-house.js';

const toRoom = /\/channels\/101\/messages$/;

describe('a message on its way to Discord', () => {
  let house: FakeHouse;
  let discord: OpenDiscord;
  beforeEach(async () => {
    house = openFakeHouse();
    discord = await openDiscord(house, { patience: 400 });
    discord.standIn.openRoom('101');
    discord.standIn.openRoom('103');
  });
  afterEach(async () => {
    expect(discord.standIn.breaches).toEqual([]);
    await discord.stop();
  });

  const delivery = (more: Partial<Delivery> = {}): Delivery => ({
    tenant: server,
    room: '101',
    telling: { do: 'say', key: 'k', message: messageOf([proseOf('The tide is out.')]) },
    before: null,
    nonce: 'n'.repeat(25),
    ...more,
  });
  const deliver = (more: Partial<Delivery> = {}) => {
    if (!discord.channel.deliver) throw new Error('the channel does not deliver');
    return discord.channel.deliver(delivery(more));
  };
  const standing = (room = '101') => discord.standIn.room(room).map(seenText);
  const error = (status: number, code: number) => ({ status, body: { code, message: 'no' } });

  it.each([
    ['with headers', { 'retry-after': '3', 'x-ratelimit-scope': 'user', 'x-ratelimit-bucket': 'b' }, 3000],
    [
      'for all routes',
      { 'retry-after': '4', 'x-ratelimit-global': 'true', 'x-ratelimit-scope': 'global' },
      4000,
    ],
    ['without headers', {}, 5000],
  ])('waits as long as Discord says where it slows down, %s', async (_, headers, wait) => {
    const body = { message: 'slow down', retry_after: 3, global: false };
    discord.standIn.trouble('POST', toRoom, { status: 429, headers, body });
    const outcome = await deliver();
    expect(outcome).toMatchObject({ again: expect.any(Number) as number });
    const again = 'again' in outcome ? outcome.again - house.now() : 0;
    expect(again).toBeGreaterThanOrEqual(wait);
    expect(again).toBeLessThanOrEqual(wait + 1000);
  });

  it('lets another room speak while one is slowed down', async () => {
    discord.standIn.trouble(
      'POST',
      toRoom,
      { status: 429, headers: { 'retry-after': '60', 'x-ratelimit-scope': 'shared' } },
      9,
    );
    expect(await deliver()).toHaveProperty('again');
    expect(await deliver({ room: '103', nonce: 'm'.repeat(25) })).toHaveProperty('sent');
    expect(standing('103')).toHaveLength(1);
  });

  it.each([
    ['500', { status: 500 }],
    ['502', { status: 502 }],
    ['a line that breaks', 'reset'],
    ['a line that breaks after it arrived', 'reset after'],
    ['no answer at all', 'hang'],
  ] as const)('tries again after %s, and says it once', async (_, does) => {
    discord.standIn.trouble('POST', toRoom, does);
    expect(await deliver()).toHaveProperty('again');
    expect(await deliver()).toHaveProperty('sent');
    expect(standing()).toHaveLength(1);
  });

  it('waits longer after each failure in a row', async () => {
    discord.standIn.trouble('POST', toRoom, { status: 500 }, 3);
    const waits: number[] = [];
    for (let tries = 0; tries < 3; tries += 1) {
      const outcome = await deliver();
      waits.push('again' in outcome ? outcome.again - house.now() : 0);
    }
    expect(waits).toEqual([2000, 4000, 8000]);
  });

  it('asks history before it repeats what Discord may have forgotten', async () => {
    discord.standIn.trouble('POST', toRoom, 'reset after');
    expect(await deliver()).toHaveProperty('again');
    house.pass(150_000);
    const before = discord.standIn.requests.length;
    expect(await deliver()).toHaveProperty('sent');
    expect(discord.standIn.requests.slice(before).map(({ method }) => method)).toEqual(['GET']);
    expect(standing()).toHaveLength(1);
  });

  it('asks history before long for what an earlier process began, though Discord goes on failing', async () => {
    await deliver();
    discord.standIn.trouble('POST', toRoom, { status: 500 });
    expect(await deliver({ again: true })).toHaveProperty('again');
    house.pass(60_000);
    const before = discord.standIn.requests.length;
    expect(await deliver()).toHaveProperty('sent');
    expect(discord.standIn.requests.slice(before).map(({ method }) => method)).toEqual(['GET']);
    expect(standing()).toHaveLength(1);
  });

  it.each([
    ['the channel was deleted', error(404, 10003), /deleted.*\/here/u],
    ['the bot was taken out', error(403, 50001), /Invite it again/u],
    ['the permission was withdrawn', error(403, 50013), /Send Messages/u],
    ['something it does not know', error(400, 50035), /400\/50035/u],
  ])('stops with words for staff where %s', async (_, does, words) => {
    discord.standIn.trouble('POST', toRoom, does);
    expect(await deliver()).toMatchObject({ stuck: expect.stringMatching(words) as string });
  });

  it('stops with words for staff where the token was revoked, also the second time', async () => {
    discord.standIn.setToken('another');
    const stuck = { stuck: expect.stringMatching(/DISCORD_TOKEN/u) as string };
    expect(await deliver()).toMatchObject(stuck);
    expect(await deliver()).toMatchObject(stuck);
    expect(discord.logged()).not.toContain(discordToken);
  });

  it('says anew what was to be replaced and was deleted, and is content where it was to be withdrawn', async () => {
    const first = await deliver();
    const id = 'sent' in first ? first.sent : null;
    discord.standIn.deleteMessage('101', id ?? '');
    const telling = { do: 'replace', key: 'k', message: messageOf([proseOf('The sea is back.')]) } as const;
    const second = await deliver({ telling, before: id, nonce: 'o'.repeat(25) });
    expect(standing()).toHaveLength(1);
    expect(standing()[0]).toContain('The sea is back.');
    const sent = 'sent' in second ? second.sent : null;
    discord.standIn.deleteMessage('101', sent ?? '');
    const withdraw = { do: 'withdraw', key: 'k', audience: messageOf([]).audience } as const;
    expect(await deliver({ telling: withdraw, before: sent })).toEqual({ sent: null });
  });

  it('knows that it cannot know where history is hidden', async () => {
    await deliver();
    discord.standIn.forbid('101', 'read', true);
    expect(await discord.channel.stands?.(delivery())).toBe('unknown');
    discord.standIn.forbid('101', 'see', true);
    expect(await discord.channel.stands?.(delivery())).toBe('unknown');
    expect(await discord.channel.stands?.(delivery({ room: '103' }))).toBeNull();
  });

  it('finds all parts of a long message', async () => {
    const blocks = Array.from({ length: 40 }, (_, n) => proseOf(`Line ${n} ${'of the tide. '.repeat(20)}`));
    const telling = { do: 'say', key: 'k', message: messageOf(blocks) } as const;
    const outcome = await deliver({ telling });
    const id = 'sent' in outcome ? outcome.sent : null;
    expect(discord.standIn.room('101').length).toBeGreaterThan(1);
    expect(await discord.channel.stands?.(delivery({ telling }))).toEqual({ id });
    const short = { do: 'replace', key: 'k', message: messageOf([proseOf('All gone.')]) } as const;
    expect(await deliver({ telling: short, before: id, nonce: 'o'.repeat(25) })).toHaveProperty('sent');
    expect(standing()).toHaveLength(1);
  });
});
