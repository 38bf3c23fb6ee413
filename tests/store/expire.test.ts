import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import type { Store } from '../../src/store/store.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { filesHolding } from '../support/bytes-of-folder.js';
import { channel, commitOf, drafted, joined, messageOf, sayOf } from '../support/commits.js';

const oak = asId<ClassId>('oak');
const wren = asId<PersonId>('p1');
const old = 'the oldest question about the lighthouse keeper';
const fresh = 'a newer question about his lamp';
const unhurried = {
  pause: async () => {},
  alone: (work: () => Promise<void>) => work(),
};
const reply = (text: string) => JSON.stringify({ done: true, messages: [messageOf(channel, text)] });

describe('Words that have had their time', () => {
  let folder: string;
  let store: Store;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'store-expire-'));
    store = await openSqliteStore(folder);
    await store.commit([
      commitOf(oak, 0, {
        events: [joined('p1', 'Wren', 10), drafted('p1', 'a', old, 100), drafted('p1', 'b', fresh, 200)],
        inbox: { updateId: 'old', reply: reply(old) },
        tellings: [
          { at: 100, telling: sayOf('a', messageOf(channel, 'Somebody asked')) },
          { at: 200, telling: sayOf('b', messageOf(channel, fresh)) },
          { at: 210, telling: sayOf('c', messageOf(channel, `Earlier: ${old}.`)) },
        ],
      }),
    ]);
    await store.keepReply(oak, 'new', reply(fresh), 200, wren);
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('go and say that they expired; the number of texts is told, and newer words and nicknames stay', async () => {
    // The text, the message of its day and the one that repeats it, and its reply.
    expect(await store.expireWords(oak, 200, unhurried)).toBe(4);
    expect(await store.expireWords(oak, 200, unhurried)).toBe(0);
    expect(await store.events(oak)).toEqual([
      joined('p1', 'Wren', 10),
      { ...drafted('p1', 'a', '', 100), text: { kind: 'said', by: wren, gone: 'expired' } },
      drafted('p1', 'b', fresh, 200),
    ]);
  });

  it('go out of messages and replies too, old ones and those that repeat them', async () => {
    await store.expireWords(oak, 200, unhurried);
    expect((await store.shown(oak, channel)).map(({ key }) => key)).toEqual(['b']);
    expect(await store.reply(oak, 'old')).toBe(JSON.stringify({ done: true, messages: [] }));
    expect(await store.reply(oak, 'new')).toBe(reply(fresh));
  });

  it('leave no byte behind', async () => {
    expect(filesHolding(folder, old)).not.toEqual([]);
    await store.expireWords(oak, 200, unhurried);
    await store.sweep();
    expect(filesHolding(folder, old)).toEqual([]);
    expect(filesHolding(folder, fresh)).not.toEqual([]);
  });

  it('of an erased person read as erased, also when they had expired before', async () => {
    await store.expireWords(oak, 200, unhurried);
    await store.erasePerson(oak, wren);
    expect((await store.events(oak))[1]).toMatchObject({ text: { gone: 'erased' } });
  });
});
