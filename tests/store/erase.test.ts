import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asId, type ClassId, type PersonId, type PostId } from '../../shared/ids.js';
import { said } from '../../shared/said.js';
import type { Audience, Message } from '../../shared/messages.js';
import type { Place, Store } from '../../src/store/store.js';
import { restoreStore } from '../../src/store/restore.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { filesHolding } from '../support/bytes-of-folder.js';
import { channel, commitOf, drafted, joined, messageOf, sayOf, tryOf } from '../support/commits.js';

const oak = asId<ClassId>('oak');
const gull = asId<PersonId>('p-gull');
const tern = asId<PersonId>('p-tern');
const tutor = asId<PersonId>('p-tutor');
const staff: Audience = { to: 'staff', group: null };
const slack: Place = { channel: 'slack', tenant: 'T1', room: 'C1' };

const words = {
  nickname: 'Möwe "Seven"',
  older: 'Sillitoe',
  question: 'Why did the “old”\teel swim\nback to the Sargasso marsh?',
  word: 'marshwiggle',
  note: 'Please look at the ninth paragraph once more 🦆',
  sealed: 'nobody at home listens to kestrel songs',
  heard: 'the eels are brave, said loudly',
  refused: 'a draft that was thrown out by the throttle',
  replaced: 'an early wording that was soon replaced by them',
};

const quoted = (text: string, by: string | null, audience: Audience = channel): Message =>
  messageOf(audience, 'A post', [{ type: 'quotation', text, by }]);

/** A class in which one pupil has left traces everywhere. */
async function fill(store: Store): Promise<void> {
  await store.bindPlace(oak, slack, channel);
  const added = joined('p-gull', words.older);
  const post = asId<PostId>('post-1');
  await store.commit([
    commitOf(oak, 0, {
      events: [
        added,
        joined('p-tern', 'Tern'),
        { type: 'person-renamed', at: 12, by: tutor, person: gull, nickname: said(tutor, words.nickname) },
      ],
      tellings: [
        { at: 12, event: 2, telling: sayOf('hello', messageOf(staff, `${words.nickname} is here`)) },
      ],
    }),
  ]);
  await store.commit([
    commitOf(oak, 3, {
      events: [drafted('p-gull', 'post-1', words.question, 20, { word: said(gull, words.word) })],
      inbox: {
        updateId: 'draft',
        reply: JSON.stringify({ done: true, messages: [quoted(words.question, null)] }),
      },
      tellings: [
        { at: 20, telling: sayOf('early', quoted(words.replaced, words.nickname)) },
        { at: 20, telling: sayOf('tray', messageOf({ to: 'person', person: gull }, words.question)) },
      ],
      evidence: [tryOf('p-gull', 'post-1'), tryOf('p-tern', 'post-0')],
    }),
  ]);
  await store.commit([
    commitOf(oak, 4, {
      events: [{ type: 'post-sent-back', at: 30, by: tutor, post, note: said(tutor, words.note) }],
      inbox: {
        updateId: 'back',
        reply: JSON.stringify({ done: true, messages: [quoted(words.note, 'Tutor')] }),
      },
      tellings: [
        { at: 30, telling: { do: 'replace', key: 'early', message: quoted(words.question, words.nickname) } },
      ],
    }),
    // Time alone closes a segment, and quotes a pupil of whom its event says nothing.
    commitOf(oak, 5, {
      events: [{ type: 'person-away', at: 40, by: 'clock', person: tern }],
      tellings: [
        { at: 40, telling: sayOf('so-far', quoted(`So far: ${words.question}`, null)) },
        { at: 40, telling: sayOf('lead', messageOf(channel, `${words.nickname} leads. Then Tern leads.`)) },
        { at: 40, telling: sayOf('other', quoted('I think the eels are lost', 'Tern')) },
      ],
    }),
    commitOf(oak, 6, {
      events: [drafted('p-tern', 'post-0', `I am with ${words.nickname} on this`, 45)],
    }),
    commitOf(oak, 7, {
      events: [
        {
          type: 'alarm-raised',
          at: 50,
          by: gull,
          alarm: asId('alarm-1'),
          person: gull,
          group: null,
          words: { kind: 'sealed', by: gull, text: words.sealed },
          findings: [],
          from: 'post',
          escalatesAt: 99,
          inOpenHours: true,
        },
        {
          type: 'live-noted',
          at: 60,
          by: tutor,
          person: gull,
          group: asId('g1'),
          passage: null,
          stop: null,
          do: 'question',
          level: 2,
          help: 'guided',
          given: 'scribed',
          text: said(tutor, words.heard),
          day: '2026-11-25',
        },
      ],
    }),
  ]);
  const reply = JSON.stringify({ done: false, messages: [messageOf(channel, words.refused)] });
  await store.keepReply(oak, 'refused', reply, 70, gull);
  await store.keepReply(oak, 'refused-2', reply, 70);
  const slip = { classId: oak, person: gull, madeAt: 1, expiresAt: 9, revoked: false };
  await store.saveSlip('hash-of-gull', slip);
  await store.saveSlip('hash-of-tern', { ...slip, person: tern });
  const session = {
    id: 'browser-of-gull',
    classId: oak,
    person: gull,
    startedAt: 1,
    seenAt: 2,
    expiresAt: 3,
  };
  await store.saveSession(session);
  await store.bindIdentity({ channel: 'slack', tenant: 'T1', user: 'U-of-gull', classId: oak, person: gull });
  await store.bindPlace(
    oak,
    { channel: 'discord', tenant: 'D1', room: 'room-of-gull' },
    { to: 'person', person: gull },
  );
  const key = { hash: 'second-key-of-gull', misses: 0, missedAt: null };
  await store.secondKey(oak, gull, () => ({ kind: 'pictures', ...key }));
}

describe('Erasing a pupil', () => {
  let folder: string;
  let store: Store;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'store-erase-'));
    store = await openSqliteStore(folder, { now: () => 1000 });
    await fill(store);
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });
  const doors = ['hash-of-gull', 'browser-of-gull', 'U-of-gull', 'room-of-gull', 'second-key-of-gull'];
  const traces = [...Object.values(words), ...doors];

  it('finds every trace by the byte search before, so that finding none says something', () => {
    for (const trace of traces)
      expect([trace, filesHolding(folder, trace).length > 0]).toEqual([trace, true]);
    expect(readdirSync(folder)).toContain('turnstone.sqlite-wal');
  });

  it('leaves no byte of what they wrote, were called or came in by, in any file of the folder', async () => {
    await store.erasePerson(oak, gull);
    for (const trace of traces) expect([trace, filesHolding(folder, trace)]).toEqual([trace, []]);
    await store.close();
    for (const trace of traces) expect([trace, filesHolding(folder, trace)]).toEqual([trace, []]);
    store = await openSqliteStore(folder);
  });

  it('leaves none either where some of their words had gone before by themselves', async () => {
    const how = { pause: async () => {}, alone: (work: () => Promise<void>) => work() };
    await store.expireWords(oak, 31, how);
    await store.expireLevels(oak, 31, how);
    expect(filesHolding(folder, words.heard)).not.toEqual([]);
    await store.erasePerson(oak, gull);
    for (const trace of traces) expect([trace, filesHolding(folder, trace)]).toEqual([trace, []]);
    expect(await store.evidence({ classId: oak })).toEqual([]);
  });

  it('leaves two ids beside the data, so that an older copy is erased again when it is opened there', async () => {
    await store.backup(join(folder, 'copy'));
    await store.erasePerson(oak, gull);
    const list = readFileSync(join(folder, 'erased'), 'utf8');
    expect(list).toBe('oak\tp-gull\n');
    await store.close();
    const other = mkdtempSync(join(tmpdir(), 'store-erased-'));
    try {
      writeFileSync(join(other, 'erased'), `something else\n${list}`);
      await restoreStore(join(folder, 'copy'), other);
      for (const trace of traces) expect([trace, filesHolding(other, trace)]).toEqual([trace, []]);
    } finally {
      rmSync(other, { recursive: true, force: true });
    }
    store = await openSqliteStore(folder);
  });

  it('takes back on platforms what a look told there, since its answer may name them; here it is answered anew', async () => {
    const telling = { do: 'show', key: 'digest', audience: channel, look: { type: 'digest' } } as const;
    await store.commit([commitOf(oak, 9, { tellings: [{ at: 95, telling }] })]);
    for (let row; ([row] = await store.outbox('slack', 1)), row;)
      await store.outboxSent(row.key, `ts-${row.key}`);
    await store.erasePerson(oak, gull);
    const taken = [];
    for (let row; ([row] = await store.outbox('slack', 1)), row;) {
      taken.push(`${row.telling.do} ${row.telling.key}`);
      await store.outboxSent(row.key, null);
    }
    expect(taken).toContain('withdraw digest');
    expect((await store.shown(oak, channel)).map(({ key }) => key)).toContain('digest');
  });

  it('keeps the journal whole and says of the words that they are erased', async () => {
    const before = await store.events(oak);
    await store.erasePerson(oak, gull);
    const after = await store.events(oak);
    expect(after.map(({ type }) => type)).toEqual(before.map(({ type }) => type));
    expect(after[3]).toEqual({
      ...drafted('p-gull', 'post-1', '', 20),
      text: { kind: 'said', by: gull, gone: 'erased' },
      word: { kind: 'said', by: gull, gone: 'erased' },
    });
    expect(after[4]).toMatchObject({ note: { by: tutor, gone: 'erased' } });
    expect(after[1]).toEqual(joined('p-tern', 'Tern'));
  });

  it('keeps what is another pupil’s, naming nobody', async () => {
    await store.erasePerson(oak, gull);
    const shown = await store.shown(oak, channel);
    expect(shown.map(({ key }) => key)).toEqual(['lead', 'other']);
    expect(shown[0]?.message.summary).toBe('somebody leads. Then Tern leads.');
    expect(shown[1]?.message).toEqual(quoted('I think the eels are lost', 'Tern'));
    expect((await store.events(oak))[6]).toMatchObject({ text: { text: 'I am with somebody on this' } });
    expect(await store.evidence({ classId: oak })).toEqual([tryOf('p-tern', 'post-0')]);
    expect(await store.slipsOf(oak)).toMatchObject([{ person: tern }]);
  });

  it('still answers the updates that were about them, without words, so that none is done twice', async () => {
    await store.erasePerson(oak, gull);
    const blank = (done: boolean) => JSON.stringify({ done, messages: [] });
    expect(await store.reply(oak, 'draft')).toBe(blank(true));
    expect(await store.reply(oak, 'back')).toBe(blank(true));
    expect(await store.reply(oak, 'refused')).toBe(blank(false));
    expect(await store.reply(oak, 'refused-2')).toBe(blank(false));
  });

  it('gives out no sealed words any more', async () => {
    const event = (await store.events(oak)).find(({ type }) => type === 'alarm-raised');
    const ref = event?.type === 'alarm-raised' && 'ref' in event.words ? event.words.ref : '';
    expect(await store.sealedWords(ref, tutor, 1)).toBe(words.sealed);
    await store.erasePerson(oak, gull);
    expect(await store.sealedWords(ref, tutor, 1)).toBeNull();
  });

  it('takes back what was sent to a platform, changes what names them, and sends nothing that waits', async () => {
    for (const id of ['ts-early', 'ts-replaced', 'ts-so-far', 'ts-lead']) {
      const [row] = await store.outbox('slack', 1);
      await store.outboxSent(row?.key ?? '', id);
    }
    await store.erasePerson(oak, gull);
    const sent = [];
    for (let row; ([row] = await store.outbox('slack', 1)), row;) {
      sent.push({ telling: row.telling, platformId: row.platformId });
      await store.outboxSent(row.key, null);
    }
    expect(sent).toEqual([
      { telling: sayOf('other', quoted('I think the eels are lost', 'Tern')), platformId: null },
      { telling: { do: 'withdraw', key: 'early', audience: channel }, platformId: 'ts-replaced' },
      { telling: { do: 'withdraw', key: 'so-far', audience: channel }, platformId: 'ts-so-far' },
      {
        telling: {
          do: 'replace',
          key: 'lead',
          message: messageOf(channel, 'somebody leads. Then Tern leads.'),
        },
        platformId: 'ts-lead',
      },
    ]);
  });

  it('leaves a nickname alone that somebody else has too', async () => {
    await store.commit([
      commitOf(oak, 9, {
        events: [joined('p-third', words.nickname, 80)],
        tellings: [{ at: 80, telling: sayOf('third', messageOf(channel, `${words.nickname} is new`)) }],
      }),
    ]);
    await store.erasePerson(oak, gull);
    expect((await store.shown(oak, channel)).at(-1)?.message.summary).toBe(`${words.nickname} is new`);
  });

  it('does the same a second time, and for somebody who was never there', async () => {
    await store.erasePerson(oak, gull);
    const events = await store.events(oak);
    await store.erasePerson(oak, gull);
    await store.erasePerson(oak, asId('p-nobody'));
    expect(await store.events(oak)).toEqual(events);
  });

  it('finishes at the next opening what was asked for and cut off', async () => {
    await store.commit([
      commitOf(oak, 9, { events: [{ type: 'person-erased', at: 90, by: tutor, person: gull }] }),
    ]);
    await store.close();
    store = await openSqliteStore(folder);
    for (const trace of traces) expect([trace, filesHolding(folder, trace)]).toEqual([trace, []]);
  });
});
