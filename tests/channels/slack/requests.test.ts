import { verifySlackRequest } from '@slack/bolt';
import { createHmac } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { guestReceiver } from '../../../src/channels/slack/receiver.js';
import { openVerifier, signatureOf } from '../../../src/channels/slack/verify.js';
import type { House } from '../../../shared/channel.js';
import { openFakeHouse } from '../../support/fake-house.js';
import { openSlack, type OpenSlack } from '../../support/open-slack.js';

describe('Many who come at once', () => {
  it('are told "in a moment" past the bound, in each way in which they can come, and nothing is done for them', async () => {
    let release: () => void = () => undefined;
    const gate = new Promise<void>((settle) => (release = settle));
    let asked = 0;
    const house: House = {
      ...openFakeHouse(),
      async identify() {
        asked += 1;
        await gate;
        return null;
      },
    };
    const open = await openSlack(house, { mostInFlight: 1 });
    const { slack } = open;
    const working = slack.user('UWREN').command('/turn');
    await expect.poll(() => asked).toBe(1);
    const finch = slack.user('UFINCH');
    await finch.command('/turn');
    expect(finch.note).toContain('try again in a moment');
    const person = { team: { id: 'T1' }, user: { id: 'UFINCH', team_id: 'T1' }, api_app_id: 'A1' };
    const blocks = [{ type: 'input', block_id: 'f0:text' }];
    const view = {
      id: 'V1',
      hash: 'h',
      callback_id: 'c',
      private_metadata: '',
      state: { values: {} },
      blocks,
    };
    const sent = await slack.update('interactive', { type: 'view_submission', ...person, view });
    expect(sent.body).toEqual({
      response_action: 'errors',
      errors: { 'f0:text': expect.stringContaining('try again in a moment') as string },
    });
    let seen = '';
    await slack.update('interactive', {
      type: 'block_actions',
      ...person,
      response_url: slack.responseUrl((body) => (seen = JSON.stringify(body))),
      actions: [{ type: 'button', block_id: 'b', action_id: 'a', action_ts: '1', value: '["l","turn",{}]' }],
    });
    await expect.poll(() => seen).toContain('try again in a moment');
    expect(asked).toBe(1);
    release();
    await working;
    await finch.command('/turn');
    expect(finch.note).toContain('I don’t know you here yet');
    expect(slack.breaches).toEqual([]);
    await open.stop();
  });
});

const timestamp = '1790000000';
const secret = 'a secret of our own';
const body = 'command=%2Fturn&text=&team_id=T1&user_id=UWREN&channel_id=C1';
const request = {
  secret,
  timestamp,
  body,
  signature: `v0=${createHmac('sha256', secret).update(`v0:${timestamp}:${body}`).digest('hex')}`,
} as const;

describe('A signature', () => {
  it('of ours is one that Slack’s own library takes', () => {
    const signature = signatureOf(secret, timestamp, body);
    const headers = { 'x-slack-signature': signature, 'x-slack-request-timestamp': Number(timestamp) };
    const nowMilliseconds = Number(timestamp) * 1000;
    const check = (signed: string): void =>
      verifySlackRequest({ signingSecret: secret, body: signed, headers, nowMilliseconds });
    expect(() => check(body)).not.toThrow();
    expect(() => check(`${body}x`)).toThrow();
    expect(signature).toBe(request.signature);
  });

  const at = Number(request.timestamp) * 1000;
  it.each([
    ['at its time', 0, null],
    ['after nearly five minutes', 299_000, null],
    ['after more than five minutes', 301_000, 'old'],
    ['from a clock a few seconds ahead of ours', -20_000, null],
    ['from the future', -31_000, 'ahead'],
    ['from an hour ahead', -3_600_000, 'ahead'],
  ] as const)('%s', (_, later, refused) => {
    expect(openVerifier(request.secret, () => at + later)(request)).toBe(refused);
  });

  it.each([
    ['of another body', { body: `${request.body}x` }, 'forged'],
    ['of another time', { timestamp: String(Number(request.timestamp) + 1) }, 'forged'],
    ['of another version', { signature: request.signature.replace('v0', 'v1') }, 'forged'],
    ['that is short', { signature: 'v0=' }, 'forged'],
    ['that is missing', { signature: null }, 'unsigned'],
    ['without a time', { timestamp: null }, 'unsigned'],
    ['with a time that is none', { timestamp: '1e99' }, 'unsigned'],
  ] as const)('%s is refused', (_, other, refused) => {
    expect(openVerifier(request.secret, () => at)({ ...request, ...other })).toBe(refused);
  });

  it('counts once, for as long as its time would let it pass, and is forgotten then', () => {
    let now = at;
    const verify = openVerifier(request.secret, () => now);
    expect(verify(request)).toBeNull();
    expect(verify(request)).toBe('replayed');
    now = at + 299_000;
    expect(verify(request)).toBe('replayed');
    now = at + 301_000;
    expect(verify(request)).toBe('old');
  });
});

describe('A request', () => {
  let there: OpenSlack;
  beforeEach(async () => {
    there = await openSlack(openFakeHouse());
  });
  afterEach(() => there.stop());

  const form = 'application/x-www-form-urlencoded';
  const command = (): string =>
    new URLSearchParams(
      there.slack.user('UWREN').commandPayload('/turn', '', 'C1') as Record<string, string>,
    ).toString();

  it('is taken once; the same signed request again is refused', async () => {
    const body = command();
    const at = Date.now();
    expect((await there.slack.post(there.slack.signed(body, form, at))).status).toBe(200);
    expect((await there.slack.post(there.slack.signed(body, form, at))).status).toBe(401);
  });

  it.each([
    ['old', -301_000, undefined],
    ['from the future', 60_000, undefined],
    ['signed by another', 0, 'another secret'],
  ] as const)('that is %s is refused, and nothing of it is read', async (_, off, key) => {
    const { status, body } = await there.slack.post(
      there.slack.signed(command(), form, Date.now() + off, key),
    );
    expect({ status, body }).toEqual({ status: 401, body: null });
  });

  it('that is not signed is refused', async () => {
    const bare = new Request('http://127.0.0.1/slack/events', { method: 'POST', body: command() });
    expect((await there.slack.post(bare)).status).toBe(401);
  });

  it('answers Slack’s own checks', async () => {
    const check = JSON.stringify({ type: 'url_verification', challenge: 'a challenge' });
    expect((await there.slack.post(there.slack.signed(check, 'application/json'))).body).toEqual({
      challenge: 'a challenge',
    });
    expect((await there.slack.post(there.slack.signed('ssl_check=1', form))).status).toBe(200);
  });

  it.each([
    ['no JSON', '{', 'application/json', 400],
    ['no payload', 'payload=nonsense', form, 400],
    [
      'an event that nobody waits for',
      JSON.stringify({
        type: 'event_callback',
        team_id: 'T1',
        event_id: 'E1',
        event: { type: 'reaction_added' },
      }),
      'application/json',
      200,
    ],
    [
      'an event of a removed app',
      JSON.stringify({
        type: 'event_callback',
        team_id: 'T1',
        event_id: 'E2',
        event: { type: 'app_uninstalled' },
      }),
      'application/json',
      200,
    ],
  ])('of %s does no harm', async (_, body, type, status) => {
    expect((await there.slack.post(there.slack.signed(body, type))).status).toBe(status);
  });

  it('of an unknown kind is given up after three seconds, as Slack does', async () => {
    const { status } = await there.slack.post(
      there.slack.signed(JSON.stringify({ type: 'unheard of' }), 'application/json'),
    );
    expect(status).toBe(404);
  });

  it('before the channel is open is asked to come later', async () => {
    const log = { debug: () => undefined, warn: () => undefined, error: () => undefined };
    const early = guestReceiver(() => null, log);
    const response = await early.handle(there.slack.signed('command=%2Fturn', form));
    expect(response.status).toBe(503);
  });
});
