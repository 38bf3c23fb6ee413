import type { Kysely } from 'kysely';
import type { PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { mustBeWhole, sumOfSealed } from './sums.js';
import type { Tables } from './tables.js';

/** The words of an alarm, null where there are none (any more); the look is on record before the words are given. */
export async function lookAtSealed(
  db: Kysely<Tables>,
  ref: string,
  by: PersonId,
  at: Instant,
): Promise<string | null> {
  return db.transaction().execute(async (tx) => {
    const row = await tx.selectFrom('sealed').selectAll().where('ref', '=', ref).executeTakeFirst();
    if (!row) return null;
    mustBeWhole(row.sum, sumOfSealed(row), 'the words of an alarm');
    await tx.insertInto('sealed_look').values({ ref, by_person: by, at }).execute();
    return row.text;
  });
}

/** Who looked at the words of an alarm, and when. */
export async function readSealedLooks(
  db: Kysely<Tables>,
  ref: string,
): Promise<readonly { readonly by: PersonId; readonly at: Instant }[]> {
  const rows = await db
    .selectFrom('sealed_look')
    .select(['by_person', 'at'])
    .where('ref', '=', ref)
    .orderBy('at')
    .execute();
  return rows.map((row) => ({ by: row.by_person, at: row.at }));
}
