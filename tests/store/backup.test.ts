import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asId, type ClassId } from '../../shared/ids.js';
import { restoreStore } from '../../src/store/restore.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { channel, commitOf, postCommit } from '../support/commits.js';

const oak = asId<ClassId>('oak');
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-backup-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

describe('A backup', () => {
  it('taken while posts are written holds a whole moment: everything up to some commit and nothing of the next', async () => {
    const store = await openSqliteStore(at('data'));
    let written = 0;
    let writing = true;
    const writer = (async () => {
      while (writing) {
        await store.commit([postCommit(oak, written)]);
        written += 1;
        // A commit alone never lets timers have their turn.
        await new Promise((resolve) => setImmediate(resolve));
      }
    })();
    const marks: number[] = [];
    for (let n = 0; n < 4; n += 1) {
      await new Promise((resolve) => setTimeout(resolve, 30));
      marks.push(written);
      await store.backup(at(`copy-${n}`));
    }
    writing = false;
    await writer;
    await store.close();
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
    for (const [n, mark] of marks.entries()) {
      await restoreStore(at(`copy-${n}`), at(`restored-${n}`));
      const copy = await openSqliteStore(at(`restored-${n}`));
      const events = await copy.events(oak);
      const posts = events.length / 2;
      expect(posts).toBeGreaterThanOrEqual(mark);
      expect(posts).toBeLessThanOrEqual(written);
      expect(await copy.shown(oak, channel, 0, 100_000)).toHaveLength(posts);
      expect(await copy.evidence({ classId: oak })).toHaveLength(posts);
      expect(await copy.reply(oak, `u-${posts - 1}`)).not.toBeNull();
      expect(await copy.reply(oak, `u-${posts}`)).toBeNull();
      await copy.close();
    }
  });

  it('never writes over a file', async () => {
    const store = await openSqliteStore(at('data'));
    writeFileSync(at('there'), 'kept');
    await expect(store.backup(at('there'))).rejects.toMatchObject({ code: 'bad input' });
    await expect(store.backup(at('no/such/folder'))).rejects.toMatchObject({ code: 'disk' });
    await store.close();
  });
});

describe('Restoring', () => {
  it('refuses what is no backup and leaves the folder without data', async () => {
    writeFileSync(at('text'), 'not a backup '.repeat(400));
    writeFileSync(at('empty'), '');
    await expect(restoreStore(at('none'), at('new'))).rejects.toMatchObject({ code: 'bad input' });
    await expect(restoreStore(at('text'), at('new'))).rejects.toMatchObject({ code: 'disk' });
    await expect(restoreStore(at('empty'), at('new'))).rejects.toMatchObject({ code: 'bad input' });
    expect(existsSync(at('new'))).toBe(false);
  });

  it('refuses a folder that holds data', async () => {
    const store = await openSqliteStore(at('data'));
    await store.commit([commitOf(oak, 0)]);
    await store.backup(at('copy'));
    await store.close();
    await expect(restoreStore(at('copy'), at('data'))).rejects.toMatchObject({
      code: 'bad input',
      message: expect.stringContaining('holds data') as string,
    });
  });
});
