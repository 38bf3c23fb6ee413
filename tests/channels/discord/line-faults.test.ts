import { describe, expect, it, type TestContext } from 'vitest';
import { discordChannel } from '../../../src/channels/discord/discord.js';
import { keepLog, openDiscord, type OpenDiscord } from '../../support/discord-open.js';
import { discordPerson, seenBy, until } from '../../support/discord-person.js';
import {
  application,
  discordToken,
  openDiscordStandIn,
  type DiscordStandIn,
} from '../../support/discord-stand-in.js';
import { openFakeHouse } from '../../support/fake-house.js';

/** The channel over a stand-in of its own, since these tests mostly wait and do so side by side. */
const begin = async (
  { onTestFinished }: TestContext,
  heartbeat?: number,
): Promise<{ standIn: DiscordStandIn; open: OpenDiscord }> => {
  const standIn = await openDiscordStandIn(heartbeat === undefined ? {} : { heartbeat });
  const open = await openDiscord(openFakeHouse(), {}, standIn);
  onTestFinished(async () => {
    await open.stop();
    await standIn.stop();
  });
  return { standIn, open };
};

/** Whether a stranger is answered. */
const answers = async (at: DiscordStandIn): Promise<void> => {
  const seen = await discordPerson(at, '99', '101').press('l|turn');
  expect(seen.text).toContain('I do not know you here yet');
};

describe.concurrent('the line to Discord', () => {
  it('resumes after it broke, and what was missed is answered', async (test) => {
    const { standIn: at } = await begin(test);
    await answers(at);
    at.gateway.cut();
    const person = discordPerson(at, '99', '101');
    const missed = person.start(person.rawPress('l|turn'));
    expect((await seenBy(missed)).text).toContain('I do not know you');
    expect(at.gateway.counts).toMatchObject({ identified: 1, resumed: 1 });
  });

  it('begins a new session where the old one is not taken any more', async (test) => {
    const { standIn: at } = await begin(test);
    at.gateway.invalidate(false);
    await until(() => at.gateway.counts.identified === 2, 15_000);
    await answers(at);
  });

  it('resumes where Discord says that it can', async (test) => {
    const { standIn: at } = await begin(test);
    at.gateway.invalidate(true);
    await until(() => at.gateway.counts.resumed === 1, 15_000);
    await answers(at);
  });

  it('leaves a line on which nobody answers any more', async (test) => {
    const { standIn: at } = await begin(test, 300);
    at.gateway.deaf(true);
    await until(() => at.gateway.counts.opened > 1, 15_000);
    at.gateway.deaf(false);
    await until(() => at.gateway.connected(), 15_000);
    await answers(at);
  });

  it('comes back after the network was away', async (test) => {
    const { standIn: at } = await begin(test);
    at.gateway.away(true);
    at.trouble('GET', /gateway\/bot$/, 'reset', 50);
    at.gateway.cut();
    await new Promise((done) => setTimeout(done, 3000));
    expect(at.gateway.connected()).toBe(false);
    at.gateway.away(false);
    await until(() => at.gateway.connected(), 30_000);
    await answers(at);
  });

  it('lets the room start where Discord is not there, and comes in later', async (test) => {
    const first = await openDiscordStandIn();
    const { port } = new URL(first.url);
    await first.stop();
    const { log, logged } = keepLog();
    const channel = discordChannel({
      token: discordToken,
      applicationId: application,
      publicKey: null,
      api: first.url,
      log,
      slashCommands: [],
    });
    const began = Date.now();
    await channel.start(openFakeHouse());
    expect(Date.now() - began).toBeLessThan(1000);
    await until(() => logged().includes('trying again'));
    const at = await openDiscordStandIn({ port: Number(port) });
    test.onTestFinished(() => at.stop());
    await until(() => at.gateway.connected(), 20_000);
    await answers(at);
    await channel.stop();
  });

  it('says what to do where the token is not taken, at the start and later', async (test) => {
    const { standIn: at, open: one } = await begin(test);
    at.setToken('another');
    at.gateway.cut(4004);
    await until(() => one.logged().includes('DISCORD_TOKEN'), 15_000);
    await one.stop();
    const { log, logged } = keepLog();
    const options = {
      token: discordToken,
      applicationId: null,
      publicKey: null,
      api: at.url,
      log,
      slashCommands: [],
    };
    const channel = discordChannel(options);
    await channel.start(openFakeHouse());
    await until(() => logged().includes('trying again'), 15_000);
    await channel.stop();
    expect(logged()).not.toContain(discordToken);
  });

  it('is not ended by a packet that cannot be read', async (test) => {
    const { standIn: at, open: one } = await begin(test);
    at.gateway.dispatch('GUILD_UPDATE', null);
    at.gateway.dispatch('CHANNEL_UPDATE', { id: 7 });
    at.gateway.dispatch('INTERACTION_CREATE', { id: '1', token: 't', type: 77 });
    at.gateway.dispatch('INTERACTION_CREATE', null);
    await answers(at);
    expect(one.logged()).toContain('could not be read');
  });
});
