import type { Transaction } from 'kysely';
import type { Rows } from './rows-of-commit.js';
import type { Tables } from './tables.js';

/** Rows in one statement: the widest table has 9 columns here, and every database takes a few thousand values at once. */
const most = 200;

function* parts<T>(rows: readonly T[]): Generator<readonly T[]> {
  for (let at = 0; at < rows.length; at += most) yield rows.slice(at, at + most);
}

/** Adds the rows of a batch. Posts, people and erasures that are known already stay; evidence is written over by its key. */
export async function writeRows(tx: Transaction<Tables>, rows: Rows): Promise<void> {
  for (const part of parts(rows.event)) await tx.insertInto('event').values(part).execute();
  for (const part of parts(rows.said)) await tx.insertInto('said').values(part).execute();
  for (const part of parts(rows.sealed)) await tx.insertInto('sealed').values(part).execute();
  for (const part of parts(rows.inbox)) await tx.insertInto('inbox').values(part).execute();
  for (const part of parts(rows.post)) {
    await tx
      .insertInto('post')
      .values(part)
      .onConflict((oc) => oc.doNothing())
      .execute();
  }
  for (const part of parts(rows.about)) {
    await tx
      .insertInto('about')
      .values(part)
      .onConflict((oc) => oc.doNothing())
      .execute();
  }
  for (const part of parts(rows.erasure)) {
    await tx
      .insertInto('erasure')
      .values(part)
      .onConflict((oc) => oc.columns(['class_id', 'person']).doUpdateSet({ done_at: null }))
      .execute();
  }
  // One by one, since a batch may hold the same key twice.
  for (const { class_id, key, ...columns } of rows.evidence) {
    await tx
      .insertInto('evidence')
      .values({ class_id, key, ...columns })
      .onConflict((oc) => oc.columns(['class_id', 'key']).doUpdateSet(columns))
      .execute();
  }
}
