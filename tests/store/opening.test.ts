import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asId, type ClassId, type PracticeId } from '../../shared/ids.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { channel, commitOf, messageOf } from '../support/commits.js';

const oak = asId<ClassId>('oak');

describe('The first message of a practice', () => {
  let store: Store;
  let version = 0;
  beforeEach(async () => {
    store = await memoryStore();
    version = 0;
    for (const room of ['C1', 'C2'])
      await store.bindPlace(oak, { channel: 'slack', tenant: 'T1', room }, channel);
  });
  afterEach(() => store.close());

  const say = async (key: string, practice: string | null): Promise<void> => {
    const talk =
      practice === null ? {} : { talk: { practice: asId<PracticeId>(practice), title: 'Limpets' } };
    const telling = { do: 'say', key, message: messageOf(channel, key), ...talk } as const;
    await store.commit([commitOf(oak, version, { tellings: [{ telling, at: 100 }] })]);
    version += 1;
  };
  /** Sends what waits in a room under ids of that room; key and opening of each. */
  const sent = async (room: string): Promise<readonly (readonly [string, string | undefined])[]> => {
    const seen: [string, string | undefined][] = [];
    for (;;) {
      const row = (await store.outbox('slack', 10)).find(({ place }) => place.room === room);
      if (row === undefined) return seen;
      seen.push([row.telling.key, row.opening]);
      await store.outboxSent(row.key, `${room}-${row.telling.key}`);
    }
  };

  it('is known to those that follow, practice by practice and place by place, and to no others', async () => {
    await say('a', 'p1');
    await say('b', 'p1');
    await say('c', null);
    await say('d', 'p2');
    await say('e', 'p1');
    await say('f', 'p2');
    expect(await sent('C1')).toEqual([
      ['a', undefined],
      ['b', 'C1-a'],
      ['c', undefined],
      ['d', undefined],
      ['e', 'C1-a'],
      ['f', 'C1-d'],
    ]);
    expect((await sent('C2'))[1]).toEqual(['b', 'C2-a']);
  });

  it('stays the first one after it was withdrawn', async () => {
    await say('a', 'p1');
    await sent('C1');
    const telling = { do: 'withdraw', key: 'a', audience: channel } as const;
    await store.commit([commitOf(oak, version, { tellings: [{ telling, at: 100 }] })]);
    version += 1;
    await say('b', 'p1');
    expect(await sent('C1')).toEqual([
      ['a', undefined],
      ['b', 'C1-a'],
    ]);
  });
});
