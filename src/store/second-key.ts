import type { Kysely } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { SecondKey } from './store.js';
import type { Tables } from './tables.js';

/** Reads and, with `change`, writes somebody's second key in one transaction, so that no wrong try is lost beside another. */
export function secondKey(
  db: Kysely<Tables>,
  classId: ClassId,
  person: PersonId,
  change: (key: SecondKey | null) => SecondKey | null = (key) => key,
): Promise<SecondKey | null> {
  return db.transaction().execute(async (tx) => {
    const row = await tx
      .selectFrom('second_key')
      .selectAll()
      .where('class_id', '=', classId)
      .where('person', '=', person)
      .executeTakeFirst();
    const before = row
      ? { kind: row.kind, hash: row.hash, misses: row.misses, missedAt: row.missed_at }
      : null;
    const after = change(before);
    if (after === before) return before;
    await tx.deleteFrom('second_key').where('class_id', '=', classId).where('person', '=', person).execute();
    if (after !== null) {
      const { kind, hash, misses, missedAt } = after;
      await tx
        .insertInto('second_key')
        .values({ class_id: classId, person, kind, hash, misses, missed_at: missedAt })
        .execute();
    }
    return after;
  });
}
