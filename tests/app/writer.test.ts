import { describe, expect, it } from 'vitest';
import { asId, type ClassId } from '../../shared/ids.js';
import { openWriter } from '../../src/app/writer.js';
import type { Commit, Store } from '../../src/store/store.js';

function commitOf(name: string): Commit {
  return {
    classId: asId<ClassId>(name),
    expectedVersion: 0,
    events: [],
    inbox: null,
    tellings: [],
    evidence: [],
    dueAt: null,
  };
}

/** A store whose commits are noted batch by batch; classes named "late" come too late. */
function noting(): { store: Store; batches: string[][] } {
  const batches: string[][] = [];
  const store = {
    commit: async (batch: readonly Commit[]) => {
      await new Promise((done) => setTimeout(done, 1));
      batches.push(batch.map(({ classId }) => classId));
      const late = batch.find(({ classId }) => classId === asId<ClassId>('late'));
      return late ? { conflict: late.classId } : { versions: batch.map(() => 1), duplicates: [] };
    },
  } as unknown as Store;
  return { store, batches };
}

describe('The writer', () => {
  it('puts commits that arrive together into one transaction, and those that arrive meanwhile into the next', async () => {
    const { store, batches } = noting();
    const write = openWriter(store);
    const first = [write(commitOf('a')), write(commitOf('b'))];
    await new Promise((done) => setImmediate(done));
    const second = [write(commitOf('c')), write(commitOf('d'))];
    expect(await Promise.all([...first, ...second])).toEqual([
      { version: 1 },
      { version: 1 },
      { version: 1 },
      { version: 1 },
    ]);
    expect(batches).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });

  it('tells the one whose update was seen before, which wrote nothing', async () => {
    const store = {
      commit: (batch: readonly Commit[]) =>
        Promise.resolve({ versions: batch.map(() => 3), duplicates: [1] }),
    } as unknown as Store;
    const write = openWriter(store);
    expect(await Promise.all([write(commitOf('a')), write(commitOf('b'))])).toEqual([
      { version: 3 },
      { duplicate: true },
    ]);
  });

  it('tells only the one that came too late', async () => {
    const { store } = noting();
    const write = openWriter(store);
    expect(await Promise.all([write(commitOf('a')), write(commitOf('late')), write(commitOf('b'))])).toEqual([
      { version: 1 },
      { conflict: true },
      { version: 1 },
    ]);
  });

  it('fails each of a batch when the disk fails, and goes on with the next', async () => {
    let broken = true;
    const store = {
      commit: (batch: readonly Commit[]) => {
        if (broken) return Promise.reject(new Error('disk'));
        return Promise.resolve({ versions: batch.map(() => 1), duplicates: [] });
      },
    } as unknown as Store;
    const write = openWriter(store);
    const both = await Promise.allSettled([write(commitOf('a')), write(commitOf('b'))]);
    expect(both.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    broken = false;
    expect(await write(commitOf('c'))).toEqual({ version: 1 });
  });
});
