import Database from 'better-sqlite3';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { asId, type ClassId } from '../../shared/ids.js';
import { answerBackups, askForBackup } from '../../src/app/backup-request.js';
import { silentLog } from '../../src/app/log.js';
import { databaseFile } from '../../src/store/open-database.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { filesHolding } from '../support/bytes-of-folder.js';
import { turnstone } from '../support/command-line.js';
import { postCommit } from '../support/commits.js';
import { PlainBrowser, serve } from '../support/served.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnstone-backup-'));
});
// Whole programs are started here, which takes long on a machine that is busy with others.
vi.setConfig({ testTimeout: 180_000 });
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string): string => join(folder, name);

describe('A backup of a running server', () => {
  it('holds all that was acknowledged before it began, is sound, and can be restored, while posts go on', async () => {
    const server = await serve(at('data'));
    const acknowledged: string[] = [];
    try {
      const pupils = await Promise.all(
        server.ready.links.pupils.map(async (link) => {
          const browser = new PlainBrowser(server.ready.url);
          await browser.comeIn(link);
          return browser;
        }),
      );
      let going = true;
      const posting = pupils.map(async (browser, who) => {
        for (let n = 0; going && n < 30; n += 1) {
          const text = `why does pupil ${who} ask question ${n}`;
          const form = await browser.form('/step/question', '/move/send-draft');
          const { status } = await browser.post(form, { text });
          if (status === 303) acknowledged.push(text);
        }
      });
      await expect.poll(() => acknowledged.length).toBeGreaterThan(5);
      const before = [...acknowledged];
      const ran = await turnstone(['backup', at('copy'), '--data', at('data')]);
      expect(ran.err).toContain('Copied to');
      expect(ran.code).toBe(0);
      const again = await turnstone(['backup', at('copy'), '--data', at('data')]);
      expect([again.code, again.err]).toEqual([
        1,
        expect.stringContaining("expected a file that isn't there yet"),
      ]);
      going = false;
      await Promise.all(posting);
      expect((await turnstone(['restore', at('copy'), '--data', at('fresh')])).code).toBe(0);
      const raw = new Database(databaseFile(at('fresh')));
      expect(raw.pragma('integrity_check', { simple: true })).toBe('ok');
      raw.close();
      const store = await openSqliteStore(at('fresh'));
      const [classId] = await store.classes();
      const kept = JSON.stringify(await store.events(classId!));
      await store.close();
      for (const text of before) expect(kept).toContain(text);
    } finally {
      await server.stop();
    }
    expect(readdirSync(at('data')).filter((name) => name.startsWith('backup-'))).toEqual([]);
  });
});

describe('A request for a backup', () => {
  const oak = asId<ClassId>('oak');

  it('is answered beside the work, and what the server says against it is said to who asked', async () => {
    const store = await openSqliteStore(at('data'));
    await store.commit([postCommit(oak, 0)]);
    // Left by an asker and a server that were cut off.
    const left = 'backup-00000000-0000-4000-8000-000000000000';
    writeFileSync(at(`data/${left}.taken`), '{}');
    const backups = answerBackups(at('data'), store, silentLog);
    await askForBackup(at('data'), at('copy'));
    expect(existsSync(at('copy'))).toBe(true);
    await expect(askForBackup(at('data'), at('copy'))).rejects.toMatchObject({ code: 'bad input' });
    await expect(askForBackup(at('data'), at('no/where'))).rejects.toMatchObject({ code: 'disk' });
    writeFileSync(at(`data/${left}.request`), 'not json');
    await expect.poll(() => existsSync(at(`data/${left}.answer`))).toBe(true);
    await backups.stop();
    await store.close();
    expect(readdirSync(at('data')).filter((name) => name.endsWith('.taken'))).toEqual([]);
  });

  it('that nobody takes is given up with what to do, and nothing of it stays', async () => {
    const store = await openSqliteStore(at('data'));
    const asked = askForBackup(at('data'), at('copy'), { taken: 0, answer: 0 });
    await expect(asked).rejects.toMatchObject({ code: 'in use' });
    await store.close();
    expect(readdirSync(at('data')).filter((name) => name.startsWith('backup-'))).toEqual([]);
  });
});

describe('A backup that was made before somebody was erased', () => {
  it('is erased again when it is restored with the list of the erased beside it: no byte, and no name on the roster', async () => {
    const data = ['--data', at('data')];
    await turnstone(['make-class', '--name', 'Readers', '--zone', 'UTC', '--nickname', 'Plover', ...data]);
    const { openSchool } = await import('../../src/app/school.js');
    const { readConfig } = await import('../../src/app/config.js');
    const { mustMove } = await import('../../src/app/founding.js');
    const config = readConfig({ TURNSTONE_DATA: at('data'), TURNSTONE_LOG: 'silent' });
    const school = await openSchool(config, () => '');
    const [classId] = await school.store.classes();
    const [tutor] = Object.values((await school.house.classes.load(classId!)).people);
    await mustMove(school.house, classId!, tutor!.id, [
      { type: 'add-person', nickname: 'Zanthorbird', role: 'pupil' },
    ]);
    await school.store.close();
    expect((await turnstone(['backup', at('copy'), ...data])).code).toBe(0);
    expect((await turnstone(['erase', '--nickname', 'Zanthorbird', '--yes', ...data])).code).toBe(0);
    expect(filesHolding(at('data'), 'Zanthorbird')).toEqual([]);

    rmSync(databaseFile(at('data')));
    const ran = await turnstone(['restore', at('copy'), ...data]);
    expect([ran.code, ran.err]).toEqual([0, expect.stringContaining('Erased again: 1')]);
    expect(filesHolding(at('data'), 'Zanthorbird')).toEqual([]);
    const restored = await openSchool(config, () => '');
    const { people } = await restored.house.classes.load(classId!);
    expect(Object.values(people).map(({ removed }) => removed)).toEqual([false, true]);
    await restored.store.close();
  });
});
