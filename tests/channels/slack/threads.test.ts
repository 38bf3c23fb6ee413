import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Delivered, Delivery } from '../../../shared/channel.js';
import { asId, type PracticeId } from '../../../shared/ids.js';
import { messageOf, proseOf } from '../../contracts/channel-messages.js';
import { openFakeHouse } from '../../support/fake-house.js';
import { openSlack, slackOver, type OpenSlack } from '../../support/open-slack.js';
import { wordsSeen } from '../../support/slack-limits.js';

const talk = { practice: asId<PracticeId>('p1'), title: 'Limpets' };
const quiet = { debug: () => undefined, warn: () => undefined, error: () => undefined };

describe('the talk about a text on Slack', () => {
  let there: OpenSlack;
  let count = 0;
  beforeEach(async () => {
    there = await openSlack(openFakeHouse());
  });
  afterEach(async () => {
    expect(there.slack.breaches).toEqual([]);
    await there.stop();
  });

  const say = (text: string, more: Partial<Delivery> = {}): Delivery => ({
    tenant: 'T1',
    room: 'C1',
    telling: { do: 'say', key: text, message: messageOf([proseOf(text)]), talk },
    before: null,
    nonce: String((count += 1)).padEnd(25, 'n'),
    ...more,
  });
  const deliver = async (delivery: Delivery): Promise<Delivered> => {
    if (!there.channel.deliver) throw new Error('the channel does not deliver');
    return there.channel.deliver(delivery);
  };
  const sent = async (delivery: Delivery): Promise<string> => {
    const outcome = await deliver(delivery);
    if (!('sent' in outcome) || outcome.sent === null) throw new Error(JSON.stringify(outcome));
    return outcome.sent;
  };
  const under = (thread: string | null): readonly string[] =>
    there.slack
      .room('C1')
      .posts.filter((post) => post.thread === thread)
      .map((post) => wordsSeen(post));

  it('stands under the first message, which is all that the channel gets', async () => {
    const opening = await sent(say('A new text'));
    await sent(say('Part one', { opening }));
    await sent(say('A question', { opening }));
    expect(under(null)).toEqual([expect.stringContaining('A new text')]);
    expect(under(opening)).toEqual([
      expect.stringContaining('Part one'),
      expect.stringContaining('A question'),
    ]);
  });

  it('is replaced and withdrawn where it stands, and a longer first message grows in the channel', async () => {
    const opening = await sent(say('A new text'));
    const before = await sent(say('Part one', { opening }));
    const blocks = Array.from({ length: 60 }, (_, n) => proseOf(`Line ${n} ${'of the tide. '.repeat(20)}`));
    const long = { do: 'replace', key: 'k', message: messageOf(blocks), talk } as const;
    const again = await sent(say('', { opening, before, telling: long }));
    expect(under(null)).toHaveLength(1);
    expect(under(opening).length).toBeGreaterThan(1);
    const { audience } = long.message;
    await deliver(say('', { before: again, telling: { do: 'withdraw', key: 'k', audience } }));
    expect(under(opening)).toEqual([]);
    await sent(say('', { opening, before: opening, telling: long }));
    expect(under(null).length).toBeGreaterThan(1);
    expect(under(opening)).toEqual([]);
  });

  it('goes on in the channel where the first message was deleted, which staff hear', async () => {
    const opening = await sent(say('A new text'));
    const room = there.slack.room('C1');
    room.posts = [];
    const outcome = await deliver(say('Part one', { opening }));
    expect(outcome).toMatchObject({
      tell: expect.stringMatching(/thread_not_found.*channel itself/u) as string,
    });
    expect(under(null)).toEqual([expect.stringContaining('Part one')]);
  });

  it('is found under the first message after a crash, however long the talk, and not said twice', async () => {
    const opening = await sent(say('A new text'));
    for (let n = 0; n < 7; n += 1) await sent(say(`Line ${n}`, { opening }));
    const delivery = say('Part one', { opening });
    expect(await there.channel.stands?.(delivery)).toBeNull();
    const id = await sent(delivery);
    there.slack.pageOfReplies = 3;
    expect(await there.channel.stands?.(delivery)).toEqual({ id });
    await there.channel.stop();
    const next = slackOver(there.slack, quiet);
    await next.start(openFakeHouse());
    expect(await next.deliver?.({ ...delivery, again: true })).toEqual({ sent: id });
    expect(under(opening).filter((text) => text.includes('Part one'))).toHaveLength(1);
    await next.stop();
  });

  it('never says again what an earlier process began, where history can’t be read', async () => {
    const delivery = say('Part one');
    await sent(delivery);
    there.slack.lacking.add('channels:history');
    const next = slackOver(there.slack, quiet);
    await next.start(openFakeHouse());
    expect(await next.deliver?.({ ...delivery, again: true })).toEqual({
      stuck: expect.stringMatching(/Cannot tell whether a message arrived/u) as string,
    });
    // What was never begun is said, history or not.
    expect(await next.deliver?.(say('Part two'))).toMatchObject({ sent: expect.any(String) as string });
    expect(under(null).filter((text) => text.includes('Part one'))).toHaveLength(1);
    await next.stop();
  });

  it('may be changed twice, also where history can’t be read', async () => {
    const before = await sent(say('Part one'));
    there.slack.lacking.add('channels:history');
    const changed = { do: 'replace', key: 'k', message: messageOf([proseOf('More time')]), talk } as const;
    const delivery = say('', { before, telling: changed, again: true });
    expect(await there.channel.stands?.(delivery)).toBeNull();
    expect(await sent(delivery)).toBe(before);
    expect(under(null)).toEqual([expect.stringContaining('More time')]);
  });
});
