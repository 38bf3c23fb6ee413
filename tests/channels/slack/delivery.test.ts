import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Delivery } from '../../../shared/channel.js';
import { asId, type PersonId } from '../../../shared/ids.js';
import { channelContract } from '../../contracts/channel-contract.js';
import { messageOf, proseOf } from '../../contracts/channel-messages.js';
import { openFakeHouse } from '../../support/fake-house.js';
import { openSlack, slackOver, type OpenSlack } from '../../support/open-slack.js';
import { wordsSeen } from '../../support/slack-limits.js';

channelContract('Slack', async (house) => {
  const open = await openSlack(house);
  const { slack, channel } = open;
  return {
    channel,
    tenant: slack.team,
    room: 'C1',
    standing: () => slack.room('C1').posts.map((post) => wordsSeen(post)),
    async echo() {
      for (const user of ['UBOT', 'U9']) {
        const ts = slack.ts();
        slack
          .room('C1')
          .posts.push({ ts, user, text: '/held list', blocks: [], metadata: null, thread: null });
        const event = { type: 'message', channel: 'C1', user, text: '/held list', ts };
        await slack.update('events_api', {
          type: 'event_callback',
          team_id: 'T1',
          event_id: slack.next('Ev'),
          event,
        });
      }
    },
    async stop() {
      expect(slack.breaches).toEqual([]);
      await open.stop();
    },
  };
});

describe('What Slack does to messages', () => {
  let there: OpenSlack;
  beforeEach(async () => {
    there = await openSlack(openFakeHouse());
  });
  afterEach(async () => {
    expect(there.slack.breaches).toEqual([]);
    await there.stop();
  });

  const saying = (text: string, more: Partial<Delivery> = {}): Delivery => ({
    tenant: 'T1',
    room: 'C1',
    telling: { do: 'say', key: 'k', message: messageOf([proseOf(text)]) },
    before: null,
    nonce: 'n'.padEnd(25, '0'),
    ...more,
  });
  const posts = (room = 'C1'): readonly string[] =>
    there.slack.room(room).posts.map((post) => wordsSeen(post));
  const deliver = (delivery: Delivery) =>
    there.channel.deliver?.(delivery) ?? Promise.reject(new Error('none'));

  it('a place that is asked to slow down waits as long as Slack says, and no other place waits with it', async () => {
    await deliver(saying('first', { nonce: 'a'.padEnd(25, '0') }));
    there.slack.fail('chat.postMessage', { status: 429, headers: { 'retry-after': '7' } });
    const before = Date.now();
    const slowed = await deliver(saying('The tide is out.'));
    expect(slowed).toMatchObject({ why: 'Slack asks to wait' });
    expect('again' in slowed && slowed.again - before).toBeGreaterThanOrEqual(7000);
    const other = await deliver(saying('Elsewhere', { room: 'C2', nonce: 'm'.padEnd(25, '0') }));
    expect(other).toMatchObject({ sent: expect.any(String) as string });
    expect(Date.now() - before).toBeLessThan(3000);
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ sent: expect.any(String) as string });
    expect(posts().filter((text) => text.includes('tide'))).toHaveLength(1);
  });

  it('waits half a minute where Slack doesn’t say how long', async () => {
    there.slack.fail('chat.postMessage', { status: 429 });
    const slowed = await deliver(saying('The tide is out.'));
    expect('again' in slowed && slowed.again - Date.now()).toBeGreaterThan(25_000);
  });

  it.each([
    ['500', { status: 500 }],
    ['502', { status: 502 }],
    ['a broken connection before', 'reset'],
    ['a broken connection after the post was made', 'reset after'],
    ['an internal error', { error: 'internal_error' }],
  ] as const)('after %s a message stands once', async (_, fault) => {
    await deliver(saying('first', { nonce: 'a'.padEnd(25, '0') }));
    there.slack.fail('chat.postMessage', fault);
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ again: expect.any(Number) as number });
    const sent = await deliver(saying('The tide is out.'));
    expect(sent).toMatchObject({ sent: expect.any(String) as string });
    expect(posts().filter((text) => text.includes('tide'))).toHaveLength(1);
  });

  it('a connection that hangs is given up, and the message stands once', { timeout: 30_000 }, async () => {
    there.slack.fail('chat.postMessage', 'hang');
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ again: expect.any(Number) as number });
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ sent: expect.any(String) as string });
    expect(posts()).toHaveLength(1);
  });

  it('where it can’t be seen whether a message arrived, staff are asked rather than it being said twice', async () => {
    there.slack.lacking.add('channels:history');
    there.slack.fail('chat.postMessage', 'reset after');
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ again: expect.any(Number) as number });
    expect(await deliver(saying('The tide is out.'))).toEqual({
      stuck: expect.stringMatching(/^Cannot tell whether a message arrived.*missing_scope/u) as string,
    });
    expect(posts()).toHaveLength(1);
    expect(await there.channel.stands?.(saying('The tide is out.'))).toBe('unknown');
  });

  it('a message whose noting a crash cut off is found by the next process and not said twice', async () => {
    const first = await deliver(saying('The tide is out.'));
    await there.channel.stop();
    const quiet = { debug: () => undefined, warn: () => undefined, error: () => undefined };
    const next = slackOver(there.slack, quiet);
    await next.start(openFakeHouse());
    expect(await next.stands?.(saying('The tide is out.'))).toEqual({
      id: 'sent' in first ? first.sent : '',
    });
    expect(await next.deliver?.(saying('The tide is out.'))).toEqual(first);
    expect(posts()).toHaveLength(1);
    await next.stop();
  });

  it('a long message of which only some posts arrived is gone on with', async () => {
    const blocks = Array.from({ length: 60 }, (_, n) => proseOf(`Line ${n} ${'of the tide. '.repeat(40)}`));
    const long = saying('', { telling: { do: 'say', key: 'k', message: messageOf(blocks) } });
    await deliver(saying('first', { nonce: 'a'.padEnd(25, '0') }));
    there.slack.room('C1').posts = [];
    there.slack.fail('chat.postMessage', 'none', { status: 500 });
    expect(await deliver(long)).toMatchObject({ again: expect.any(Number) as number });
    expect(there.slack.room('C1').posts).toHaveLength(1);
    const sent = await deliver(long);
    const numbers = [
      ...posts()
        .join('\n')
        .matchAll(/Line (\d+)/gu),
    ].map((found) => Number(found[1]));
    expect(numbers).toEqual(Array.from({ length: 60 }, (_, n) => n));
    expect('sent' in sent && sent.sent?.split(',')).toEqual(there.slack.room('C1').posts.map(({ ts }) => ts));
  });

  it('while Slack can’t be reached nothing is in doubt, and what waits is said once it can', async () => {
    const quiet = { debug: () => undefined, warn: () => undefined, error: () => undefined };
    const away = slackOver(there.slack, quiet, { api: 'http://127.0.0.1:9/api' });
    await away.start(openFakeHouse());
    expect(await away.deliver?.(saying('The tide is out.'))).toMatchObject({
      again: expect.any(Number) as number,
      why: expect.stringContaining('did not answer') as string,
    });
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ sent: expect.any(String) as string });
    expect(posts()).toHaveLength(1);
    await away.stop();
  });

  it.each([
    ['channel_not_found', 'Tie another one with /here'],
    ['is_archived', 'Unarchive it'],
    ['not_in_channel', 'Invite it'],
    ['token_revoked', 'Install the app anew'],
    ['account_inactive', 'Install the app anew'],
    ['missing_scope', 'permissions of the manifest'],
    ['restricted_action', 'Invite it'],
    ['msg_too_long', 'doctor'],
  ])('%s stops the place with words for staff', async (error, remedy) => {
    there.slack.fail('chat.postMessage', { error });
    const outcome = await deliver(saying('The tide is out.'));
    expect('stuck' in outcome && outcome.stuck).toContain(error);
    expect('stuck' in outcome && outcome.stuck).toContain(remedy);
    expect(posts()).toEqual([]);
  });

  it('a bot that was put out and invited again goes on', async () => {
    there.slack.room('C1').member = false;
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ stuck: expect.any(String) as string });
    there.slack.room('C1').member = true;
    expect(await deliver(saying('The tide is out.'))).toMatchObject({ sent: expect.any(String) as string });
  });

  it('a message deleted under us is said anew where it is replaced, and counts as withdrawn', async () => {
    const first = await deliver(saying('The tide is out.'));
    const before = 'sent' in first ? first.sent : null;
    there.slack.room('C1').posts = [];
    const replaced = await deliver(
      saying('', {
        before,
        nonce: 'r'.padEnd(25, '0'),
        telling: { do: 'replace', key: 'k', message: messageOf([proseOf('The sea is back.')]) },
      }),
    );
    expect(posts().join()).toContain('The sea is back.');
    there.slack.room('C1').posts = [];
    const id = 'sent' in replaced ? replaced.sent : null;
    const audience = messageOf([]).audience;
    expect(
      await deliver(saying('', { before: id, telling: { do: 'withdraw', key: 'k', audience } })),
    ).toEqual({ sent: null });
  });

  it('a replaced message may need more posts or fewer than before', async () => {
    const blocks = Array.from({ length: 60 }, (_, n) => proseOf(`Line ${n} ${'of the tide. '.repeat(20)}`));
    const first = await deliver(saying('Short.'));
    const grown = await deliver(
      saying('', {
        before: 'sent' in first ? first.sent : null,
        telling: { do: 'replace', key: 'k', message: messageOf(blocks) },
      }),
    );
    expect(there.slack.room('C1').posts.length).toBeGreaterThan(1);
    await deliver(
      saying('', {
        before: 'sent' in grown ? grown.sent : null,
        telling: { do: 'replace', key: 'k', message: messageOf([proseOf('Short again.')]) },
      }),
    );
    expect(posts()).toHaveLength(1);
    expect(posts().join()).toContain('Short again.');
  });

  it('a post that a replacement added before the line broke is not added again', async () => {
    const blocks = Array.from({ length: 60 }, (_, n) => proseOf(`Line ${n} ${'of the tide. '.repeat(20)}`));
    const first = await deliver(saying('Short.'));
    const grown = saying('', {
      before: 'sent' in first ? first.sent : null,
      nonce: 'r'.padEnd(25, '0'),
      telling: { do: 'replace', key: 'k', message: messageOf(blocks) },
    });
    there.slack.fail('chat.postMessage', 'reset after');
    expect(await deliver(grown)).toMatchObject({ again: expect.any(Number) as number });
    expect(await deliver(grown)).toMatchObject({ sent: expect.any(String) as string });
    const numbers = [
      ...posts()
        .join('\n')
        .matchAll(/Line (\d+)/gu),
    ].map((found) => Number(found[1]));
    expect(numbers).toEqual(Array.from({ length: 60 }, (_, n) => n));
  });

  it('news for one person is no message: it waits behind “For you”, which stands in the channel', async () => {
    const message = messageOf([proseOf('About your question')], {
      to: 'person',
      person: asId<PersonId>('wren'),
    });
    expect(await deliver(saying('', { telling: { do: 'say', key: 'k', message } }))).toEqual({ sent: null });
    expect(there.slack.called('chat.postMessage')).toEqual([]);
    await deliver(saying('The tide is out.'));
    expect(posts().join()).toContain('For you');
  });

  it('nothing is parsed, named or unfurled, and no word of it is logged', async () => {
    there.slack.fail('chat.postMessage', { status: 500 });
    await deliver(saying('<!channel> @everyone limpet'));
    await deliver(saying('<!channel> @everyone limpet'));
    const [, sent] = there.slack.called('chat.postMessage');
    expect(sent).toMatchObject({
      mrkdwn: 'false',
      link_names: 'false',
      unfurl_links: 'false',
      unfurl_media: 'false',
    });
    expect(there.logged()).not.toMatch(/limpet|xoxb/u);
    expect(there.logged()).toContain('did not reach');
  });
});
