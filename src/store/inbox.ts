import type { Kysely } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Tables } from './tables.js';

/** The stored reply of an update, null where it wasn't seen. */
export async function readReply(
  db: Kysely<Tables>,
  classId: ClassId,
  updateId: string,
): Promise<string | null> {
  const row = await db
    .selectFrom('inbox')
    .select('reply')
    .where('class_id', '=', classId)
    .where('update_id', '=', updateId)
    .executeTakeFirst();
  return row?.reply ?? null;
}

/** Notes the reply of an update that changed nothing; the first one stays. */
export async function keepReply(
  db: Kysely<Tables>,
  row: Tables['inbox'],
  by: PersonId | undefined,
): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await tx
      .insertInto('inbox')
      .values(row)
      .onConflict((oc) => oc.doNothing())
      .execute();
    if (by === undefined) return;
    await tx
      .insertInto('about')
      .values({ class_id: row.class_id, what: 'reply', key: row.update_id, person: by })
      .onConflict((oc) => oc.doNothing())
      .execute();
  });
}
