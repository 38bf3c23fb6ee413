import { OverwriteType, PermissionFlagsBits } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { BoundPlace, Finding } from '../../../shared/channel.js';
import { asId, type GroupId } from '../../../shared/ids.js';
import { discordChannel } from '../../../src/channels/discord/discord.js';
import type { DiscordOptions } from '../../../src/channels/discord/options.js';
import { bits as own, overwriteFor, permissionsIn } from '../../../src/channels/discord/permissions.js';
import { keepLog } from '../../support/discord-open.js';
import { bits } from '../../support/discord-rooms.js';
import {
  application,
  discordToken,
  openDiscordStandIn,
  server,
  type DiscordStandIn,
} from '../../support/discord-stand-in.js';

const talk: BoundPlace = {
  tenant: server,
  room: '101',
  audience: { to: 'channel', group: asId<GroupId>('g') },
};
const staff: BoundPlace = { tenant: server, room: '102', audience: { to: 'staff', group: null } };

describe('what Discord grants', () => {
  let standIn: DiscordStandIn;
  beforeEach(async () => {
    standIn = await openDiscordStandIn();
    standIn.openRoom('101');
    standIn.openRoom('102');
  });
  afterEach(() => standIn.stop());

  const check = async (
    places: readonly BoundPlace[] = [talk, staff],
    more: Partial<DiscordOptions> = {},
    now = Date.now(),
  ): Promise<readonly Finding[]> => {
    const channel = discordChannel({
      token: discordToken,
      applicationId: application,
      publicKey: null,
      api: standIn.url,
      log: keepLog().log,
      slashCommands: [],
      ...more,
    });
    return (await channel.check?.(places, now)) ?? [];
  };
  const toMend = (found: readonly Finding[]): readonly string[] =>
    found.filter(({ fine }) => !fine).map(({ words }) => words);

  it('is fine where everything is granted, and asks nothing of the gateway', async () => {
    const found = await check();
    expect(toMend(found)).toEqual([]);
    expect(found.map(({ words }) => words)).toEqual([
      'Discord: the token is taken.',
      `Discord: the token belongs to application ${application}.`,
      'Discord: interactions come over the gateway.',
      'Discord: this machine’s clock agrees to within a minute.',
      'Discord: in #room-101 (a group’s channel) the bot may do all that it needs.',
      'Discord: in #room-101 (a group’s channel) pupils reach the talk only through the bot.',
      'Discord: in #room-102 (a staff channel) the bot may do all that it needs.',
    ]);
    expect(standIn.gateway.counts.opened).toBe(0);
  });

  it.each([
    ['see', /hidden from the bot.*View Channel/u],
    ['write', /lacks “Send Messages”.*nothing can be written/u],
    ['read', /lacks “Read Message History”.*stops and asks staff/u],
    ['threads', /lacks “Create Public Threads”.*in the channel itself/u],
    ['write in threads', /lacks “Send Messages in Threads”/u],
  ] as const)('says how to mend that the bot may not %s', async (what, words) => {
    standIn.forbid('101', what, true);
    expect(toMend(await check())).toEqual([expect.stringMatching(words)]);
  });

  it('wants no threads where only staff are', async () => {
    standIn.forbid('102', 'threads', true);
    expect(toMend(await check())).toEqual([]);
  });

  it('says that a class channel in which everybody can write is not moderated; staff may write among themselves', async () => {
    standIn.everybodyWrites(true);
    expect(toMend(await check())).toEqual([
      expect.stringMatching(/#room-101.*everybody can write past the bot.*not moderated.*@everyone/u),
    ]);
  });

  it('names other roles that can write there', async () => {
    standIn.addRole({ id: '55', name: 'Tutors', permissions: String(bits.write) });
    standIn.addRole({ id: '56', name: 'Readers', permissions: '0' });
    const found = await check([talk]);
    expect(toMend(found)).toEqual([]);
    expect(found.at(-1)?.words).toMatch(/these roles can write past the bot: Tutors\. See that no pupil/u);
  });

  it('knows a deleted channel, and a server without the bot', async () => {
    standIn.closeRoom('102');
    expect(toMend(await check())).toEqual([expect.stringMatching(/channel 102.*not there or hidden/u)]);
    standIn.inServer(false);
    const away = toMend(await check());
    expect(away).toHaveLength(2);
    expect(away[0]).toMatch(/not in the server.*client_id=900000000000000001.*permissions=\d+/u);
  });

  it.each([
    ['another application’s id', { applicationId: '12345' }, null, /DISCORD_APPLICATION_ID is 12345/u],
    ['another key', { publicKey: 'ab'.repeat(32) }, 'https://x.example', /not the application’s key/u],
    ['a key without an address', {}, 'no', /Interactions Endpoint URL/u],
    ['an address without a key', { publicKey: null }, 'https://x.example', /DISCORD_PUBLIC_KEY is not set/u],
  ] as const)('finds %s', async (_, more, address, words) => {
    standIn.sendInteractionsTo(address === 'no' ? null : address);
    const key = address === 'no' ? { publicKey: standIn.publicKey } : {};
    expect(toMend(await check([], { ...more, ...key }))).toEqual([expect.stringMatching(words)]);
  });

  it.each([
    [70_000, /7[01] seconds ahead/u],
    [-3_600_000, /(?:3599|3600|3601) seconds behind/u],
  ])('finds a clock that is %s ms off', async (off, words) => {
    expect(toMend(await check([], {}, Date.now() + off))).toEqual([expect.stringMatching(words)]);
    expect(toMend(await check([], {}, Date.now() + 30_000))).toEqual([]);
  });

  it('says one thing where the token is not taken, and never the token', async () => {
    standIn.setToken('another');
    const found = await check();
    expect(found).toHaveLength(1);
    expect(found[0]?.words).toMatch(/not taken.*Reset Token.*DISCORD_TOKEN/u);
    expect(found[0]?.words).not.toContain(discordToken);
  });

  it.each([
    ['answers nothing', 'hang'],
    ['breaks off', 'reset'],
    ['is in trouble', { status: 503 }],
  ] as const)('says one thing where Discord %s', async (_, does) => {
    standIn.trouble('GET', /./u, does, 20);
    const found = await check([talk], { patience: 400 });
    expect(found).toHaveLength(1);
    expect(found[0]?.words).toMatch(/could not be asked \(.+\).*DISCORD_API/u);
  });

  it('says one thing where nobody is there', async () => {
    const found = await check([talk], { api: 'http://127.0.0.1:9' });
    expect(toMend(found)).toEqual([expect.stringMatching(/could not be asked \(ECONNREFUSED\)/u)]);
  });
});

it('calls each permission by the bit that the library knows it by', () => {
  for (const [name, bit] of Object.entries(own))
    expect(PermissionFlagsBits[name as keyof typeof own]).toBe(bit);
  expect(overwriteFor).toEqual({ role: OverwriteType.Role, member: OverwriteType.Member });
});

describe('what somebody may do in a channel', () => {
  const roles = [
    { id: 's', permissions: '3072' },
    { id: 'r', permissions: '0' },
    { id: 'q', permissions: '0' },
    { id: 'a', permissions: '8' },
  ];
  const over = (id: string, type: 0 | 1, allow: string, deny: string) => ({ id, type, allow, deny });
  it.each([
    ['the server’s right', [], ['r'], 3072n],
    ['what the channel takes from everybody', [over('s', 0, '0', '2048')], ['r'], 1024n],
    ['what a role gets back', [over('s', 0, '0', '2048'), over('r', 0, '2048', '0')], ['r'], 3072n],
    [
      'one role’s gain over another’s loss',
      [over('r', 0, '2048', '0'), over('q', 0, '0', '2048')],
      ['r', 'q'],
      3072n,
    ],
    ['the member last', [over('r', 0, '2048', '0'), over('me', 1, '0', '2048')], ['r'], 1024n],
    ['nothing of others', [over('q', 0, '0', '2048'), over('you', 1, '0', '1024')], ['r'], 3072n],
    ['all for who administers', [over('s', 0, '0', '3072')], ['a'], (1n << 64n) - 1n],
  ])('is %s', (_, overwrites, own, expected) => {
    expect(permissionsIn('s', roles, overwrites, { roles: own, user: 'me' })).toBe(expected);
  });
});
