import type { Kysely } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import type { Tables } from './tables.js';

/** Lets words of a class's alarms that were raised before an instant go, with who looked at them; their number. */
export async function expireSealed(db: Kysely<Tables>, classId: ClassId, before: Instant): Promise<number> {
  return db.transaction().execute(async (tx) => {
    const old = tx
      .selectFrom('sealed')
      .select('ref')
      .where('class_id', '=', classId)
      .where('at', '<', before);
    await tx.deleteFrom('sealed_look').where('ref', 'in', old).execute();
    const { numDeletedRows } = await tx
      .deleteFrom('sealed')
      .where('class_id', '=', classId)
      .where('at', '<', before)
      .executeTakeFirst();
    return Number(numDeletedRows);
  });
}

/** Lets sessions, slips and links that open nothing any more go. */
export async function expireDoors(db: Kysely<Tables>, now: Instant): Promise<void> {
  await db.deleteFrom('session').where('expires_at', '<=', now).execute();
  await db.deleteFrom('slip').where('expires_at', '<=', now).execute();
}
