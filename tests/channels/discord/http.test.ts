import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { interactionsPath } from '../../../src/channels/discord/discord.js';
import { openDiscord, type OpenDiscord } from '../../support/discord-open.js';
import { discordPerson, until } from '../../support/discord-person.js';
import { openDiscordStandIn, server, type DiscordStandIn } from '../../support/discord-stand-in.js';
import { openFakeHouse } from '../../support/fake-house.js';
import type { DiscordOptions } from '../../../src/channels/discord/options.js';
import type { AnyPayload } from '../../support/discord-limits.js';
import { seenText } from '../../support/discord-payloads.js';
import { slips } from '../../support/fake-class.js';
import type { House } from '../../../shared/channel.js';

let standIn: DiscordStandIn;
let open: OpenDiscord;
let looks = 0;
let wait = 0;

const begin = async (more: Partial<DiscordOptions> = {}): Promise<void> => {
  const house = openFakeHouse();
  looks = wait = 0;
  const known: House = {
    ...house,
    identify: async () => slips['WREN-2345-67'] ?? null,
    async look(who, look, fields) {
      looks += 1;
      await new Promise((done) => setTimeout(done, wait));
      return house.look(who, look, fields);
    },
  };
  open = await openDiscord(known, { publicKey: standIn.publicKey, ...more }, standIn);
};
beforeEach(async () => {
  standIn = await openDiscordStandIn();
  await begin();
});
afterEach(async () => {
  await open.stop();
  await standIn.stop();
});

const post = async (body: string, headers: Record<string, string>): Promise<Response> => {
  const guest = open.channel.guests?.[interactionsPath];
  if (!guest) throw new Error('no guest');
  return guest(new Request(`http://127.0.0.1${interactionsPath}`, { method: 'POST', body, headers }));
};
const postSigned = (raw: Readonly<Record<string, unknown>>): Promise<Response> => {
  const { body, headers } = standIn.signed(JSON.stringify(raw));
  return post(body, headers);
};
const pressTurn = () => {
  const person = discordPerson(standIn, '21', '101');
  return standIn.begin(person.rawPress('l|turn'), false);
};

describe('interactions over HTTP', () => {
  it('answers a ping with a pong, and registers without the gateway', async () => {
    const response = await postSigned({ id: '1', token: 't', type: 1 });
    expect(response.status).toBe(200);
    expect(await response.json()).toEqual({ type: 1 });
    await until(() => standIn.commands.has(server));
    expect(standIn.gateway.counts.opened).toBe(0);
  });

  it.each([
    ['nothing signed', {}],
    ['a signature of another', { 'x-signature-ed25519': 'ab'.repeat(64) }],
    ['a signature that is none', { 'x-signature-ed25519': 'not hex' }],
    ['another time', { 'x-signature-timestamp': '1' }],
  ])('refuses %s', async (_, wrong) => {
    const { body, headers } = standIn.signed(JSON.stringify({ id: '1', token: 't', type: 1 }));
    const sent = Object.keys(wrong).length === 0 ? {} : { ...headers, ...wrong };
    expect((await post(body, sent)).status).toBe(401);
    expect((await post(`${body} `, headers)).status).toBe(401);
  });

  it('answers what was signed and can be read no more with 400, not with a crash', async () => {
    const { body, headers } = standIn.signed('not json');
    expect((await post(body, headers)).status).toBe(400);
  });

  it('answers a press in the response, and a replay with the same', async () => {
    const { raw } = pressTurn();
    const [one, two] = await Promise.all([postSigned(raw), postSigned(raw)]);
    const first = (await one.json()) as { type: number; data: { flags: number } };
    expect(first.type).toBe(4);
    expect(first.data.flags & 64).toBe(64);
    expect(await two.json()).toEqual(first);
    expect(looks).toBe(1);
  });

  it('says "in a moment" to who comes while as many as may be are answered, and does nothing for them', async () => {
    await open.stop();
    await begin({ mostInFlight: 2 });
    wait = 300;
    const all = Array.from({ length: 4 }, () => postSigned(pressTurn().raw));
    const answers = (await Promise.all(all.map(async (one) => (await one).json()))) as { data: AnyPayload }[];
    const busy = answers.filter(({ data }) => seenText(data).includes('Try again in a moment'));
    expect(busy).toHaveLength(2);
    expect(busy.every(({ data }) => ((data.flags ?? 0) & 64) !== 0)).toBe(true);
    expect(looks).toBe(2);
    wait = 0;
    const later = (await (await postSigned(pressTurn().raw)).json()) as { data: AnyPayload };
    expect(seenText(later.data)).not.toContain('Try again in a moment');
  });

  it('defers what takes its time and edits the original', async () => {
    wait = 1800;
    const interaction = pressTurn();
    const first = (await (await postSigned(interaction.raw)).json()) as {
      type: number;
      data: { flags: number };
    };
    expect(first).toEqual({ type: 5, data: { flags: 64 } });
    interaction.answers.push(first);
    await until(() => interaction.edits.length === 1);
    expect(seenText(interaction.edits[0] ?? {})).not.toBe('');
  });
});
