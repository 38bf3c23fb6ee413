/**
 * How long a commit takes, beside the least that SQLite needs for the same: one bare insert a transaction into a file
 * with the same settings. Prints figures and ratios, asserts nothing. Run: npx tsx tests/bench/store.bench.ts
 */
import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asId, type ClassId } from '../../shared/ids.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { commitOf, postCommit } from '../support/commits.js';

const rounds = 2000;
const folder = mkdtempSync(join(tmpdir(), 'store-bench-'));

/** The median of the rounds, since other work on the machine makes some of them slow. */
async function time(
  name: string,
  perRound: number,
  howMany: number,
  work: (at: number) => unknown,
): Promise<number> {
  const took: number[] = [];
  for (let at = 0; at < howMany; at += 1) {
    const from = performance.now();
    await work(at);
    took.push((performance.now() - from) / perRound);
  }
  const median = took.sort((a, b) => a - b)[Math.floor(howMany / 2)] ?? 0;
  process.stdout.write(`${name.padEnd(44)} ${median.toFixed(3)} ms a post\n`);
  return median;
}

function bareInsert(): (at: number) => void {
  const db = new Database(join(folder, 'bare.sqlite'));
  db.pragma('locking_mode = EXCLUSIVE');
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.exec('create table event (class_id text, version integer, body text, primary key (class_id, version))');
  const insert = db.prepare('insert into event values (?, ?, ?)');
  const body = JSON.stringify(postCommit(asId('bare'), 0).events[0]);
  return (at) => insert.run('bare', at, body);
}

try {
  const store = await openSqliteStore(folder);
  const one = asId<ClassId>('one');
  const batch = (at: number) => Array.from({ length: 16 }, (_, n) => postCommit(asId(`many-${n}`), at));
  const floor = await time('bare better-sqlite3, one insert a commit', 1, rounds, bareInsert());
  const single = await time('the store, one whole post a commit', 1, rounds, (at) =>
    store.commit([postCommit(one, at)]),
  );
  const many = await time('the store, 16 whole posts a commit', 16, rounds / 16, (at) =>
    store.commit(batch(at)),
  );
  const event = await time('the store, one event a commit', 1, rounds, (at) =>
    store.commit([commitOf(asId('plain'), at)]),
  );
  const read = await time(`the store, reading ${rounds} posts back`, rounds, 5, () => store.events(one));
  for (const [name, each] of Object.entries({ single, many, event, read })) {
    process.stdout.write(`${name.padEnd(8)} ${(each / floor).toFixed(2)} times the bare insert\n`);
  }
  await store.close();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
