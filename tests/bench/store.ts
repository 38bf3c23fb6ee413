import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asId, type ClassId } from '../../shared/ids.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { commitOf, postCommit } from '../support/commits.js';
import { median, progress, type Figure } from './figures.js';

const rounds = 2000;

/** Milliseconds a post: the median of the rounds, since other work on the machine makes some of them slow. */
async function time(perRound: number, howMany: number, work: (at: number) => unknown): Promise<number> {
  const took: number[] = [];
  for (let at = 0; at < howMany; at += 1) {
    const from = performance.now();
    await work(at);
    took.push((performance.now() - from) / perRound);
  }
  return median(took);
}

function bareInsert(folder: string): (at: number) => void {
  const db = new Database(join(folder, 'bare.sqlite'));
  db.pragma('locking_mode = EXCLUSIVE');
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.exec('create table event (class_id text, version integer, body text, primary key (class_id, version))');
  const insert = db.prepare('insert into event values (?, ?, ?)');
  const body = JSON.stringify(postCommit(asId('bare'), 0).events[0]);
  return (at) => insert.run('bare', at, body);
}

/** How long a commit takes, beside the least that SQLite needs: one bare insert a transaction into a file with the same settings. */
export async function storeFigures(): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'turnstone-bench-store-'));
  progress('the store ...');
  try {
    const store = await openSqliteStore(folder);
    const one = asId<ClassId>('one');
    const batch = (at: number) => Array.from({ length: 16 }, (_, n) => postCommit(asId(`many-${n}`), at));
    const floor = await time(1, rounds, bareInsert(folder));
    const took = {
      'one whole post a commit': await time(1, rounds, (at) => store.commit([postCommit(one, at)])),
      '16 whole posts a commit': await time(16, rounds / 16, (at) => store.commit(batch(at))),
      'one event a commit': await time(1, rounds, (at) => store.commit([commitOf(asId('plain'), at)])),
      [`reading ${rounds} posts back`]: await time(rounds, 5, () => store.events(one)),
    };
    await store.close();
    return [
      { name: 'store: one bare insert a commit', value: floor, unit: 'ms a post' },
      ...Object.entries(took).flatMap(([name, each]): Figure[] => [
        { name: `store: ${name}`, value: each, unit: 'ms a post' },
        { name: `store: ${name}, against the bare insert`, value: each / floor, unit: 'times' },
      ]),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
