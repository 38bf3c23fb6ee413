import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { calendar } from '../../src/app/calendar.js';
import { cutsOf, keep, nextKeeping } from '../../src/app/keeping.js';
import { silentLog } from '../../src/app/log.js';
import { startTicker } from '../../src/app/ticker.js';
import { settingDefaults } from '../../src/practice/settings.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { filesHolding } from '../support/bytes-of-folder.js';
import {
  openPlayed,
  playClass,
  takeEveryLook,
  writeAll,
  written,
  type Played,
  type PlayedClass,
} from '../support/played-class.js';

const day = 24 * 3600_000;
const at = (words: string): number => Date.parse(`${words}Z`);
const shownAs = (instant: number): string => new Date(instant).toISOString().slice(0, 16);

describe('What has had its time', () => {
  const cases = [
    ['without an end of term: what is older than 120 days', {}, '2026-11-26T12:00', '2026-07-29T12:00'],
    ['in term: nothing of a year', { termEnds: '2026-12-18' }, '2026-11-26T12:00', '2025-11-25T12:00'],
    [
      'a fortnight after the end of term, still nothing',
      { termEnds: '2026-12-18' },
      '2027-01-01T23:59',
      '2025-12-31T23:59',
    ],
    [
      'when the fortnight is over: all of the term',
      { termEnds: '2026-12-18' },
      '2027-01-02T00:00',
      '2026-12-19T00:00',
    ],
    [
      'long after it: what is older than 120 days',
      { termEnds: '2026-12-18' },
      '2027-06-30T12:00',
      '2027-03-02T12:00',
    ],
    ['by the school’s own numbers', { longestKept: 30 }, '2026-11-26T12:00', '2026-10-27T12:00'],
    [
      'in the zone of the class',
      { termEnds: '2026-12-18', zone: 'Pacific/Auckland' },
      '2027-01-01T11:00',
      '2026-12-18T11:00',
    ],
  ] as const;
  it.each(cases)('of words, %s', (_, settings, now, cut) => {
    expect(shownAs(cutsOf({ ...settingDefaults, ...settings }, at(now), calendar).words)).toBe(cut);
  });

  it.each([
    ['2027-07-31T23:59', '2026-08-01T00:00', '2025-08-01T00:00'],
    ['2027-08-01T00:00', '2027-08-01T00:00', '2026-08-01T00:00'],
  ])('of levels and words of alarms at %s: up to the end of a school year', (now, levels, alarmWords) => {
    const cuts = cutsOf(settingDefaults, at(now), calendar);
    expect([shownAs(cuts.levels), shownAs(cuts.alarmWords)]).toEqual([levels, alarmWords]);
  });
});

describe('A class whose time has come', () => {
  let folder: string;
  let played: Played;
  let one: PlayedClass;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'keeping-'));
    played = await openPlayed((now) => openSqliteStore(folder, { now }));
    one = await playClass(played);
    await writeAll(played, one);
  });
  afterEach(async () => {
    await played.store.close();
    rmSync(folder, { recursive: true, force: true });
  });
  const keepNow = () => keep({ ...played, calendar, log: silentLog });
  const said = Object.entries(written)
    .filter(([name]) => name !== 'sealed')
    .map(([, text]) => text);

  it('says all its words before, so that finding none later says something', async () => {
    const looks = JSON.stringify(await takeEveryLook(played, one));
    for (const text of [written.question, written.answer, written.sumUp, written.held])
      expect(looks).toContain(text);
    for (const text of Object.values(written))
      expect([text, filesHolding(folder, text).length > 0]).toEqual([text, true]);
    await keepNow();
    for (const text of Object.values(written))
      expect([text, filesHolding(folder, text).length > 0]).toEqual([text, true]);
  });

  it('leaves no byte of what was said after 120 days, keeps the levels, and answers every look', async () => {
    const before = await takeEveryLook(played, one);
    const rows = await played.store.evidence({ classId: one.classId });
    expect(rows.length).toBeGreaterThan(4);
    played.clock.pass(121 * day);
    await keepNow();
    for (const text of said) expect([text, filesHolding(folder, text)]).toEqual([text, []]);
    expect(await played.store.evidence({ classId: one.classId })).toEqual(rows);
    const after = await takeEveryLook(played, one);
    expect(after.map(({ by, name }) => `${by} ${name}`)).toEqual(
      before.map(({ by, name }) => `${by} ${name}`),
    );
    for (const [index, { by, name, reply }] of after.entries()) {
      if (before[index]?.reply.done === true && !reply.done && name !== 'step')
        expect(`${by} ${name}: ${reply.why ?? ''}`).toBe('done');
      const words = JSON.stringify(reply);
      expect(words).not.toMatch(/undefined|NaN|\[object|:null,"by"/u);
      for (const text of said) expect(words).not.toContain(text);
    }
  });

  it('says in the export that words are gone, and gives no others', async () => {
    played.clock.pass(121 * day);
    await keepNow();
    const held = await played.store.exportPerson(one.classId, one.people['Wren']!);
    expect(held['words']).toContainEqual(expect.objectContaining({ text: null, gone: 'expired' }));
    for (const text of said) expect(JSON.stringify(held)).not.toContain(text);
    expect(held['evidence']).not.toEqual([]);
  });

  it('goes on after its words are gone: a new post is taken, judged and shown', async () => {
    played.clock.pass(121 * day);
    await played.house.passTime(one.classId);
    await keepNow();
    await one.act('Plover', { type: 'change-setting', setting: 'moderation', value: 'publish' });
    await one.act('Plover', { type: 'resume-practice', group: one.group });
    await one.act('Wren', { type: 'visit' });
    const draft = await one.act('Wren', {
      type: 'send-draft',
      do: 'question',
      text: 'Why is the spring tide so late this year?',
    });
    expect(draft.done ? '' : draft.why).toBe('');
  });

  it('loses its levels at the end of the school year, from the evidence and from the journal, and is the same when read anew', async () => {
    played.clock.pass(at('2027-08-01T01:00') - played.clock.now());
    await keepNow();
    expect(await played.store.evidence({ classId: one.classId })).toEqual([]);
    const journal = JSON.stringify(await played.store.events(one.classId));
    expect(journal).not.toMatch(/"level":[0-9]|"probability"|"measures"|"rule"/u);
    const { posts } = await played.house.classes.load(one.classId);
    expect(
      Object.values(posts).map(
        ({ first, latest, second, overruled }) => first ?? latest ?? second ?? overruled,
      ),
    ).toEqual(Object.values(posts).map(() => null));
    for (const { reply, name } of await takeEveryLook(played, one)) {
      if (name !== 'step') expect([name, reply.done || reply.why]).toEqual([name, true]);
    }
    expect(filesHolding(folder, written.sealed)).not.toEqual([]);
  });

  it('loses the words of its alarms a year after that', async () => {
    played.clock.pass(at('2028-07-31T23:00') - played.clock.now());
    await keepNow();
    expect(filesHolding(folder, written.sealed)).not.toEqual([]);
    played.clock.pass(2 * 3600_000);
    await keepNow();
    expect(filesHolding(folder, written.sealed)).toEqual([]);
    const looks = await takeEveryLook(played, one);
    const words = looks.filter(({ name }) => name === 'alarm-words');
    expect(words.map(({ reply }) => reply.done)).toEqual([true]);
  });

  it('keeps what another class of the school has set to be kept longer', async () => {
    const other = await playClass(played, ' of the Marsh');
    await writeAll(played, other);
    await other.act('Plover', { type: 'change-setting', setting: 'longest kept', value: '365' });
    played.clock.pass(121 * day);
    await keepNow();
    const texts = (await played.store.events(other.classId)).flatMap((event) =>
      'text' in event ? [JSON.stringify(event.text)] : [],
    );
    expect(texts.join()).toContain(written.question);
    expect(JSON.stringify(await played.store.events(one.classId))).not.toContain(written.question);
  });

  it('lets posts have their turn while it is at work', async () => {
    await one.act('Plover', { type: 'change-setting', setting: 'moderation', value: 'publish' });
    played.clock.pass(121 * day);
    const order: string[] = [];
    const work = keepNow().then(() => order.push('kept'));
    const visit = one.act('Wren', { type: 'visit' }).then(() => order.push('visited'));
    await Promise.all([work, visit]);
    expect(order).toEqual(['visited', 'kept']);
  });

  it('is kept at the start, and again at three in the night', async () => {
    played.clock.pass(121 * day);
    const tools = { ...played, calendar, log: silentLog };
    const ticker = startTicker(tools);
    await expect.poll(() => filesHolding(folder, written.question)).toEqual([]);
    await ticker.stop();
    expect(shownAs(await nextKeeping(tools))).toBe(
      shownAs(Math.ceil((played.clock.now() - 3 * 3600_000) / day) * day + 3 * 3600_000),
    );
  });

  it('lets slips and sessions go that open nothing any more', async () => {
    const who = { classId: one.classId, person: one.people['Wren']! };
    const { classId, person } = who;
    const now = played.clock.now();
    const times = { madeAt: now, expiresAt: now + 120 * day };
    await played.store.saveSlip('hash', { ...who, ...times, revoked: false });
    await played.store.saveSession({
      id: 'id',
      ...who,
      startedAt: now,
      seenAt: now,
      expiresAt: times.expiresAt,
    });
    played.clock.pass(119 * day);
    await keepNow();
    expect(await played.store.slipsOf(classId)).toHaveLength(1);
    played.clock.pass(2 * day);
    await keepNow();
    expect(await played.store.slipsOf(classId)).toEqual([]);
    expect((await played.store.exportPerson(classId, person))['sessions']).toEqual([]);
  });
});
