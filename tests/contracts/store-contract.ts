import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asId, type AlarmId, type ClassId, type GroupId, type PersonId } from '../../shared/ids.js';
import { said } from '../../shared/said.js';
import type { Audience } from '../../shared/messages.js';
import type { Place, Session, Store } from '../../src/store/store.js';
import { channel, commitOf, drafted, group, joined, messageOf, sayOf, tryOf } from '../support/commits.js';

const oak = asId<ClassId>('oak');
const elm = asId<ClassId>('elm');
const wren = asId<PersonId>('p1');
const lark = asId<PersonId>('p2');
const staff: Audience = { to: 'staff', group: null };
const slack: Place = { channel: 'slack', tenant: 'T1', room: 'C1' };
const discord: Place = { channel: 'discord', tenant: 'G1', room: 'R1' };

const told = (...tellings: Parameters<typeof sayOf>[]) =>
  tellings.map(([key, message], n) => ({ telling: sayOf(key, message), at: 100 + n }));

/** What every store promises; each is opened empty for each rule. */
export function storeContract(name: string, open: () => Promise<Store>): void {
  describe(`${name} keeps the journal`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(() => store.close());

    it('gives back events in order with what was said', async () => {
      const events = [joined('p1', 'Wren'), drafted('p1', 'a', 'Why do eels go home?')];
      expect(await store.commit([commitOf(oak, 0, { events })])).toEqual({ versions: [2], duplicates: [] });
      expect(await store.events(oak)).toEqual(events);
      expect(await store.events(oak, 1)).toEqual(events.slice(1));
      expect(await store.events(elm)).toEqual([]);
      expect(await store.classes()).toEqual([oak]);
    });

    it('lifts every said text of an event, wherever it stands', async () => {
      const event = drafted('p1', 'a', 'It means "shelter"', 20, { word: said(wren, 'lee') });
      await store.commit([commitOf(oak, 0, { events: [event] })]);
      expect(await store.events(oak)).toEqual([event]);
    });

    it.each([
      ['quotation marks and backslashes', 'He said "no" \\ {"kind":"said","by":"p1","n":0}'],
      ['emoji and other scripts', '🦆 Γιατί; 为什么'],
      ['nothing', ''],
      ['many lines', 'one\ntwo\n\nthree'],
      ['words of SQL', `'); drop table event; --`],
    ])('keeps a text of %s as it was', async (_, text) => {
      const event = drafted('p1', 'a', text);
      await store.commit([commitOf(oak, 0, { events: [event] })]);
      expect(await store.events(oak)).toEqual([event]);
    });

    it('leaves a text that was gone already gone', async () => {
      const event = { ...drafted('p1', 'a', ''), text: { kind: 'said', by: wren, gone: 'expired' } as const };
      await store.commit([commitOf(oak, 0, { events: [event] })]);
      expect(await store.events(oak)).toEqual([event]);
    });

    it('writes nothing when another writer was ahead, and names the class', async () => {
      await store.commit([commitOf(oak, 0)]);
      const late = await store.commit([
        commitOf(elm, 0, { inbox: { updateId: 'e', reply: '{}' } }),
        commitOf(oak, 0, { tellings: told(['k', messageOf(channel, 'late')]), evidence: [tryOf('p1', 'x')] }),
      ]);
      expect(late).toEqual({ conflict: oak });
      expect(await store.events(elm)).toEqual([]);
      expect(await store.reply(elm, 'e')).toBeNull();
      expect(await store.events(oak)).toHaveLength(1);
      expect(await store.shown(oak, channel)).toEqual([]);
      expect(await store.evidence({ classId: oak })).toEqual([]);
    });

    it('writes several classes, and several commits of one class, in one batch', async () => {
      const batch = [commitOf(oak, 0), commitOf(elm, 0), commitOf(oak, 1)];
      expect(await store.commit(batch)).toEqual({ versions: [1, 1, 2], duplicates: [] });
      expect(await store.classes()).toEqual([elm, oak]);
      expect(await store.commit([])).toEqual({ versions: [], duplicates: [] });
    });

    it('writes large batches', async () => {
      const events = Array.from({ length: 1200 }, (_, n) => drafted('p1', `d${n}`, `text number ${n}`));
      await store.commit([commitOf(oak, 0, { events })]);
      expect(await store.events(oak)).toEqual(events);
    });

    it('lets commits that arrive together take their turns', async () => {
      const results = await Promise.all(Array.from({ length: 8 }, () => store.commit([commitOf(oak, 0)])));
      expect(results.filter((result) => 'versions' in result)).toHaveLength(1);
      expect(await store.events(oak)).toHaveLength(1);
    });

    it('knows which class needs the clock next', async () => {
      await store.commit([commitOf(oak, 0, { dueAt: 500 }), commitOf(elm, 0, { dueAt: 300 })]);
      await store.commit([commitOf(asId('ash'), 0, { dueAt: null })]);
      expect(await store.nextDue()).toBe(300);
      expect(await store.due(299)).toEqual([]);
      expect(await store.due(500)).toEqual([elm, oak]);
      await store.commit([commitOf(elm, 1, { dueAt: null })]);
      expect(await store.due(900)).toEqual([oak]);
      await store.commit([commitOf(oak, 1, { dueAt: null })]);
      expect(await store.nextDue()).toBeNull();
    });

    it('keeps notes', async () => {
      expect(await store.getNote('demo')).toBeNull();
      await store.setNote('demo', 'oak');
      await store.setNote('demo', 'elm');
      expect(await store.getNote('demo')).toBe('elm');
    });
  });

  describe(`${name} answers an update once`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(() => store.close());

    it('keeps the reply with the events', async () => {
      await store.commit([commitOf(oak, 0, { inbox: { updateId: 'u', reply: 'first' } })]);
      expect(await store.reply(oak, 'u')).toBe('first');
      expect(await store.reply(elm, 'u')).toBeNull();
    });

    it('does an update that was seen before no second time, whatever version it expects', async () => {
      const inbox = { updateId: 'u', reply: 'first' };
      await store.commit([commitOf(oak, 0, { inbox })]);
      for (const expected of [0, 1, 7]) {
        const again = commitOf(oak, expected, { inbox: { ...inbox, reply: 'second' } });
        expect(await store.commit([again])).toEqual({ versions: [1], duplicates: [0] });
      }
      expect(await store.events(oak)).toHaveLength(1);
      expect(await store.reply(oak, 'u')).toBe('first');
    });

    it('does an update that comes twice in a batch once, and the rest of the batch', async () => {
      const inbox = { updateId: 'u', reply: 'first' };
      const batch = [commitOf(oak, 0, { inbox }), commitOf(oak, 0, { inbox }), commitOf(oak, 1)];
      expect(await store.commit(batch)).toEqual({ versions: [1, 1, 2], duplicates: [1] });
    });

    it('keeps the reply to a refusal, the first one', async () => {
      await store.keepReply(oak, 'u', 'no', 5);
      await store.keepReply(oak, 'u', 'never', 6, wren);
      expect(await store.reply(oak, 'u')).toBe('no');
    });
  });

  describe(`${name} shows messages`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
      await store.commit([
        commitOf(oak, 0, {
          tellings: told(
            ['a', messageOf(channel, 'first')],
            ['b', messageOf(channel, 'second')],
            ['c', messageOf({ to: 'person', person: wren }, 'for one')],
          ),
        }),
      ]);
    });
    afterEach(() => store.close());
    const change = (
      telling: Parameters<Store['commit']>[0][number]['tellings'][number]['telling'],
      at = 900,
    ) => store.commit([commitOf(oak, 1, { tellings: [{ telling, at }] })]);
    const summaries = async (audience: Audience, after?: number, limit?: number) =>
      (await store.shown(oak, audience, after, limit)).map(({ message }) => message.summary);

    it('gives each audience its own, oldest first, each time with a higher number', async () => {
      const rows = await store.shown(oak, channel);
      expect(rows).toMatchObject([
        { key: 'a', at: 100, look: null, classId: oak, message: messageOf(channel, 'first') },
        { key: 'b', at: 101, look: null, classId: oak, message: messageOf(channel, 'second') },
      ]);
      expect(await summaries({ to: 'person', person: wren })).toEqual(['for one']);
      expect(await summaries({ to: 'person', person: lark })).toEqual([]);
      expect(await summaries({ to: 'channel', group: asId<GroupId>('g2') })).toEqual([]);
      expect(await store.shown(elm, channel)).toEqual([]);
      expect(await summaries(channel, rows[0]?.seq)).toEqual(['second']);
    });

    it('gives the newest where there are more than asked for', async () => {
      expect(await summaries(channel, 0, 1)).toEqual(['second']);
    });

    it('shows what was replaced once more, under its first time', async () => {
      const last = (await store.shown(oak, channel)).at(-1)?.seq ?? 0;
      await change({ do: 'replace', key: 'a', message: messageOf(channel, 'changed') });
      expect(await store.shown(oak, channel, last)).toMatchObject([
        { key: 'a', at: 100, message: { summary: 'changed' } },
      ]);
      expect(await summaries(channel)).toEqual(['second', 'changed']);
    });

    it('shows what is said again under its new time', async () => {
      await change(sayOf('a', messageOf(channel, 'again')));
      expect((await store.shown(oak, channel)).at(-1)).toMatchObject({
        at: 900,
        message: { summary: 'again' },
      });
    });

    it('no longer shows what was withdrawn, and never gives its number again', async () => {
      const last = (await store.shown(oak, channel)).at(-1)?.seq ?? 0;
      await change({ do: 'withdraw', key: 'b', audience: channel });
      expect(await summaries(channel)).toEqual(['first']);
      await store.commit([commitOf(oak, 2, { tellings: told(['d', messageOf(channel, 'third')]) })]);
      expect(await summaries(channel, last)).toEqual(['third']);
    });

    it('keeps a look that is to be taken when it is shown', async () => {
      const look = { type: 'digest', group } as const;
      await change({ do: 'show', key: 'd', look, audience: staff });
      expect(await store.shown(oak, staff)).toMatchObject([
        { key: 'd', at: 900, look, audience: staff, message: messageOf(staff, '') },
      ]);
    });
  });

  describe(`${name} sends messages to platforms`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
      await store.bindPlace(oak, slack, channel);
      await store.bindPlace(oak, discord, staff);
      await store.bindPlace(oak, { channel: 'room', tenant: '', room: 'g1' }, channel);
    });
    afterEach(() => store.close());
    const say = (version: number, key: string, audience: Audience) =>
      store.commit([commitOf(oak, version, { tellings: told([key, messageOf(audience, key)]) })]);
    const next = async (place: Place) => (await store.outbox(place.channel, 10))[0];

    it('sends to the places of an audience, one row a message, and to the room none', async () => {
      await say(0, 'a', channel);
      const row = await next(slack);
      expect(row).toMatchObject({
        classId: oak,
        place: slack,
        telling: sayOf('a', messageOf(channel, 'a')),
        at: 100,
        sendingAt: null,
        platformId: null,
      });
      expect(row?.key).toMatch(/^oak\/1\/\d+$/);
      expect(await store.outbox('discord', 10)).toEqual([]);
      expect(await store.outbox('room', 10)).toEqual([]);
    });

    it('tells the staff of the class what the staff of a group are told, and one person nowhere but in the tray', async () => {
      await say(0, 'a', { to: 'staff', group });
      await say(1, 'b', { to: 'person', person: wren });
      expect((await store.outbox('discord', 10)).map(({ telling }) => telling.key)).toEqual(['a']);
      expect(await store.outbox('slack', 10)).toEqual([]);
    });

    it('has one in flight for each place, in the order in which they were told', async () => {
      await say(0, 'a', channel);
      await say(1, 'b', channel);
      const first = await next(slack);
      expect(await store.outbox('slack', 10)).toHaveLength(1);
      expect(await store.outboxSending(first?.key ?? '', 7)).toBe(true);
      expect(await store.outboxSending(first?.key ?? '', 8)).toBe(false);
      expect(await next(slack)).toMatchObject({ key: first?.key, sendingAt: 7 });
      await store.outboxSent(first?.key ?? '', 'ts-1');
      expect(await next(slack)).toMatchObject({ telling: { key: 'b' }, sendingAt: null });
    });

    it('knows what the platform calls a message that is to be replaced', async () => {
      await say(0, 'a', channel);
      await store.outboxSent((await next(slack))?.key ?? '', 'ts-1');
      const telling = { do: 'replace', key: 'a', message: messageOf(channel, 'changed') } as const;
      await store.commit([commitOf(oak, 1, { tellings: [{ telling, at: 5 }] })]);
      expect(await next(slack)).toMatchObject({ telling, platformId: 'ts-1' });
    });

    it('stops a place at a message that is stuck, and no other place, until it is tried again', async () => {
      await store.bindPlace(oak, { ...slack, room: 'C2' }, staff);
      await say(0, 'a', channel);
      const key = (await next(slack))?.key ?? '';
      await store.outboxSending(key, 7);
      await store.outboxStuck(key, 'not in channel');
      await say(1, 'b', channel);
      await say(2, 'c', staff);
      expect((await store.outbox('slack', 10)).map(({ telling }) => telling.key)).toEqual(['c']);
      expect(await store.stuck(oak)).toEqual([
        { key, classId: oak, place: slack, at: 100, why: 'not in channel' },
      ]);
      await store.outboxAgain(key);
      expect(await store.stuck(oak)).toEqual([]);
      expect((await store.outbox('slack', 10)).map(({ telling }) => telling.key)).toEqual(['a', 'c']);
      expect(await store.outbox('slack', 1)).toHaveLength(1);
    });

    it('lets one place take the part of another: what waited and was stuck there goes on in order', async () => {
      const other = { ...slack, room: 'C2' };
      await say(0, 'a', channel);
      await say(1, 'b', channel);
      const key = (await next(slack))?.key ?? '';
      await store.outboxSending(key, 7);
      await store.outboxStuck(key, 'the channel was deleted');
      await store.bindPlace(oak, other, channel);
      await store.movePlace(oak, slack, other);
      expect(await store.stuck(oak)).toEqual([]);
      expect((await store.places(oak)).map(({ place }) => place)).not.toContainEqual(slack);
      for (const expected of ['a', 'b']) {
        const row = await next(slack);
        expect(row).toMatchObject({ place: other, telling: { key: expected }, sendingAt: null });
        await store.outboxSent(row?.key ?? '', expected);
      }
      expect(await next(slack)).toBeUndefined();
    });

    it('refuses to mark a message that there is not', async () => {
      await expect(store.outboxSent('oak/9/9', null)).rejects.toMatchObject({ code: 'not found' });
    });
  });

  describe(`${name} knows places and people`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(() => store.close());

    it('binds a place to one audience of one class', async () => {
      await store.bindPlace(oak, slack, channel);
      await store.bindPlace(oak, slack, { to: 'staff', group });
      await store.bindPlace(oak, discord, staff);
      expect(await store.places(oak)).toEqual([
        { place: discord, audience: staff },
        { place: slack, audience: { to: 'staff', group } },
      ]);
      await store.bindPlace(elm, slack, channel);
      expect(await store.places(oak)).toHaveLength(1);
    });

    it('binds somebody of a platform to a person', async () => {
      const identity = { channel: 'slack', tenant: 'T1', user: 'U1', classId: oak, person: wren } as const;
      await store.bindIdentity(identity);
      expect(await store.identity('slack', 'T1', 'U1')).toEqual(identity);
      expect(await store.identity('slack', 'T2', 'U1')).toBeNull();
      await store.bindIdentity({ ...identity, person: lark });
      expect(await store.identity('slack', 'T1', 'U1')).toMatchObject({ person: lark });
    });

    it('revokes the slips of one person and ends their sessions', async () => {
      const slip = { classId: oak, person: wren, madeAt: 1, expiresAt: 9, revoked: false };
      const session: Session = {
        id: 's1',
        classId: oak,
        person: wren,
        startedAt: 1,
        seenAt: 2,
        expiresAt: 3,
      };
      await store.saveSlip('h1', slip);
      await store.saveSlip('h2', { ...slip, person: lark, madeAt: 2 });
      await store.saveSession(session);
      await store.saveSession({ ...session, id: 's2', person: lark });
      await store.saveSession({ ...session, seenAt: 8 });
      expect(await store.slip('h1')).toEqual(slip);
      expect(await store.session('s1')).toEqual({ ...session, seenAt: 8 });
      await store.revokeSlips(oak, wren);
      expect(await store.slip('h1')).toEqual({ ...slip, revoked: true });
      expect((await store.slipsOf(oak)).map(({ revoked }) => revoked)).toEqual([true, false]);
      expect(await store.session('s1')).toBeNull();
      expect(await store.session('s2')).not.toBeNull();
      await store.endSession('s2');
      expect(await store.session('s2')).toBeNull();
      expect(await store.slip('none')).toBeNull();
    });
  });

  describe(`${name} keeps evidence`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(() => store.close());

    it('writes a try over under its key, also within one commit', async () => {
      const evidence = [tryOf('p1', 'x', 20), tryOf('p1', 'x', 20, { level: 3, settledBy: 'tutor' })];
      await store.commit([commitOf(oak, 0, { evidence })]);
      expect(await store.evidence({ classId: oak })).toEqual(evidence.slice(1));
    });

    it('finds by pupil, group, passage and time, in the order in which tries were given', async () => {
      const evidence = [
        tryOf('p2', 'y', 30),
        tryOf('p1', 'x', 20),
        tryOf('p1', 'z', 40, { passage: asId('t2'), group: asId('g2') }),
      ];
      await store.commit([commitOf(oak, 0, { evidence })]);
      const keys = async (query: Partial<Parameters<Store['evidence']>[0]>) =>
        (await store.evidence({ classId: oak, ...query })).map(({ key }) => key);
      expect(await keys({})).toEqual(['x', 'y', 'z']);
      expect(await keys({ person: wren })).toEqual(['x', 'z']);
      expect(await keys({ group: asId('g2') })).toEqual(['z']);
      expect(await keys({ passage: asId('t1') })).toEqual(['x', 'y']);
      expect(await keys({ since: 30 })).toEqual(['y', 'z']);
      expect(await keys({ classId: elm })).toEqual([]);
    });
  });

  describe(`${name} seals the words of an alarm`, () => {
    it('gives events a reference only, and records each look at the words', async () => {
      const store = await open();
      await store.commit([
        commitOf(oak, 0, {
          events: [
            {
              type: 'alarm-raised',
              at: 5,
              by: wren,
              alarm: asId<AlarmId>('a1'),
              person: wren,
              group: null,
              words: { kind: 'sealed', by: wren, text: 'please call a grown-up' },
              findings: [],
              from: 'post',
              escalatesAt: 9,
              inOpenHours: true,
            },
          ],
        }),
      ]);
      const [event] = await store.events(oak);
      const words = event?.type === 'alarm-raised' && 'ref' in event.words ? event.words : null;
      expect(words).toEqual({ kind: 'sealed', by: wren, ref: expect.any(String) as string });
      const ref = words?.ref ?? '';
      expect(await store.sealedWords(ref, lark, 50)).toBe('please call a grown-up');
      expect(await store.sealedWords('other', lark, 60)).toBeNull();
      expect(await store.sealedLooks(ref)).toEqual([{ by: lark, at: 50 }]);
      await store.close();
    });
  });
}
