import Database from 'better-sqlite3';
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { asId, type ClassId } from '../../shared/ids.js';
import { noList } from '../../src/store/erased-list.js';
import { openStore } from '../../src/store/kysely-store.js';
import { databaseFile, openFile } from '../../src/store/open-database.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { commitOf, drafted } from '../support/commits.js';
import { compileTo } from '../support/compiled.js';

const oak = asId<ClassId>('oak');
const built = mkdtempSync(join(tmpdir(), 'store-open-built-'));
let opener: string;
beforeAll(() => {
  opener = compileTo(built, join(import.meta.dirname, 'store-open-child.ts'));
});
afterAll(() => rmSync(built, { recursive: true, force: true }));
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-open-'));
  chmodSync(folder, 0o755);
});
afterEach(() => {
  chmodSync(folder, 0o755);
  rmSync(folder, { recursive: true, force: true });
});

/** Opens a folder in another process, as an account that isn't root. */
function openElsewhere(of = folder): unknown {
  const { stdout, stderr } = spawnSync(process.execPath, [opener, of], {
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  return stdout === 'open' ? stdout : JSON.parse(stdout);
}
const post = (n: number, text = `text ${n}`) =>
  commitOf(oak, n, { events: [drafted('p1', `post-${n}`, text)] });
const words = (part: string) => expect.stringContaining(part) as string;

describe('Opening a data folder', () => {
  it('makes folder and file for this account alone', async () => {
    const fresh = join(folder, 'a', 'b');
    const store = await openSqliteStore(fresh);
    expect(statSync(fresh).mode & 0o777).toBe(0o700);
    expect(statSync(databaseFile(fresh)).mode & 0o777).toBe(0o600);
    await store.close();
  });

  it('refuses a second process, and lets it in when the first has closed', async () => {
    const open = join(folder, 'open');
    mkdirSync(open);
    chmodSync(open, 0o777);
    const store = await openSqliteStore(open);
    chmodSync(databaseFile(open), 0o666);
    const refused = { code: 'in use', message: words('another process'), remedy: words('Stop the other') };
    expect(openElsewhere(open)).toEqual(refused);
    await expect(openSqliteStore(open)).rejects.toMatchObject(refused);
    await store.commit([post(0)]);
    await store.close();
    expect(openElsewhere(open)).toBe('open');
  });

  it('says of a folder that may not be written who must be given the right', () => {
    chmodSync(folder, 0o555);
    const refused = { code: 'disk', message: words('may not be written'), remedy: words('right to write') };
    expect(openElsewhere()).toEqual(refused);
    expect(openElsewhere(join(folder, 'new'))).toEqual(refused);
  });

  it('says of a file that may not be written who must be given the right', async () => {
    await (await openSqliteStore(folder)).close();
    chmodSync(databaseFile(folder), 0o444);
    expect(openElsewhere()).toMatchObject({ code: 'disk', remedy: words('right to write') });
  });

  it('says of a file in the folder’s place what is there', async () => {
    const file = join(folder, 'file');
    writeFileSync(file, '');
    for (const path of [file, join(file, 'below')]) {
      await expect(openSqliteStore(path)).rejects.toMatchObject({
        code: 'disk',
        message: words('a file in its place'),
      });
    }
  });

  it('refuses a schema of a newer version', async () => {
    await (await openSqliteStore(folder)).close();
    const raw = new Database(databaseFile(folder));
    raw.prepare(`insert into migration values (?, 'from the future', 0)`).run(99);
    raw.close();
    await expect(openSqliteStore(folder)).rejects.toMatchObject({
      code: 'disk',
      message: words('schema 99 of a newer Turnstone'),
      remedy: words('newer version'),
    });
  });
});

describe('A damaged data folder', () => {
  it('is refused when the file is no database', async () => {
    writeFileSync(databaseFile(folder), 'no database at all '.repeat(500));
    await expect(openSqliteStore(folder)).rejects.toMatchObject({
      code: 'disk',
      message: words('no database'),
      remedy: words('newest backup'),
    });
  });

  it('is refused when pages of it are overwritten', async () => {
    const store = await openSqliteStore(folder);
    for (let n = 0; n < 50; n += 1) await store.commit([post(n, 'eel '.repeat(500))]);
    await store.close();
    const bytes = readFileSync(databaseFile(folder));
    bytes.fill(0x5a, 8192, bytes.length - 4096);
    writeFileSync(databaseFile(folder), bytes);
    await expect(openSqliteStore(folder)).rejects.toMatchObject({
      code: 'disk',
      message: words('damaged'),
      remedy: words('newest backup'),
    });
  });

  it('is told with the place and without the words when an event can’t be read', async () => {
    const store = await openSqliteStore(folder);
    await store.commit([post(0), post(1)]);
    await store.close();
    const raw = new Database(databaseFile(folder));
    raw.prepare(`update event set body = substr(body, 1, 60) where version = 2`).run();
    raw.close();
    const again = await openSqliteStore(folder);
    const refused = await again.events(oak).catch((error: unknown) => error);
    expect(refused).toMatchObject({ code: 'disk', message: words('event 2 of class oak') });
    expect((refused as Error).message).not.toContain('draft-judged');
    await again.close();
  });
});

describe('A full disk', () => {
  it('fails a commit as a whole, keeps what was kept, and goes on when there is room', async () => {
    const opened = openFile(folder);
    const { db } = opened;
    const store = await openStore(opened, 'the folder', () => 0, noList);
    await sql`pragma max_page_count = 120`.execute(db);
    let kept = 0;
    let refused: unknown;
    for (; refused === undefined && kept < 500; kept += 1) {
      const text = `${kept} `.padEnd(3000, 'eel ');
      refused = await store.commit([post(kept, text)]).then(
        () => undefined,
        (error: unknown) => error,
      );
    }
    kept -= 1;
    expect(refused).toMatchObject({
      code: 'disk',
      message: words('a full disk'),
      remedy: words('Free some room'),
    });
    expect(await store.events(oak)).toHaveLength(kept);
    await sql`pragma max_page_count = 100000`.execute(db);
    expect(await store.commit([post(kept)])).toEqual({ versions: [kept + 1], duplicates: [] });
    await store.close();
  });
});
