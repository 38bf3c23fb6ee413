import { sql, type Kysely } from 'kysely';
import { Fault } from '../../shared/fault.js';
import type { ClassId } from '../../shared/ids.js';
import type { Telling } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';
import { readStored } from './sums.js';
import type { OutboxRow, Place, StuckRow } from './store.js';
import type { OutboxRecord, Tables } from './tables.js';

const placeOf = ({ channel, tenant, room }: Place): Place => ({ channel, tenant, room });

/** The platform's ids of what was sent to the same place before a row. */
function sentBefore(db: Kysely<Tables>, row: OutboxRecord) {
  return db
    .selectFrom('outbox')
    .select('platform_id')
    .where('class_id', '=', row.class_id)
    .where('channel', '=', row.channel)
    .where('tenant', '=', row.tenant)
    .where('room', '=', row.room)
    .where('seq', '<', row.seq)
    .where('platform_id', 'is not', null);
}

/** The platform's id of the newest message of the same key that was sent to the same place. */
async function platformIdBefore(db: Kysely<Tables>, row: OutboxRecord): Promise<string | null> {
  const before = await sentBefore(db, row)
    .where('message_key', '=', row.message_key)
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  return before?.platform_id ?? null;
}

/** The platform's id of the first message of the same practice that was sent to the same place. */
async function openingOf(db: Kysely<Tables>, row: OutboxRecord): Promise<string | null> {
  if (row.practice === null) return null;
  const first = await sentBefore(db, row)
    .where('practice', '=', row.practice)
    .orderBy('seq')
    .limit(1)
    .executeTakeFirst();
  return first?.platform_id ?? null;
}

/** Of each place the message that is next to be sent, longest waiting first; a place whose next one is stuck sends nothing. */
export async function readOutbox(
  db: Kysely<Tables>,
  channel: Place['channel'],
  limit: number,
): Promise<readonly OutboxRow[]> {
  const next = db
    .selectFrom('outbox')
    .select(sql<number>`min(seq)`.as('seq'))
    .where('channel', '=', channel)
    .where('state', 'in', ['waiting', 'sending', 'stuck'])
    .groupBy(['tenant', 'room']);
  const rows = await db
    .selectFrom('outbox')
    .selectAll()
    .where('seq', 'in', next)
    .where('state', 'in', ['waiting', 'sending'])
    .where('telling', 'is not', null)
    .orderBy('seq')
    .limit(limit)
    .execute();
  return Promise.all(
    rows.map(async (row) => {
      const opening = await openingOf(db, row);
      return {
        key: row.key,
        classId: row.class_id,
        place: placeOf(row),
        telling: readStored<Telling>(row.telling ?? 'null', 'a message that waits'),
        at: row.at,
        sendingAt: row.sending_at,
        platformId: await platformIdBefore(db, row),
        ...(opening === null ? {} : { opening }),
      };
    }),
  );
}

/** Marks a waiting message as being sent; false where it isn't waiting. */
export async function markSending(db: Kysely<Tables>, key: string, at: Instant): Promise<boolean> {
  const { numUpdatedRows } = await db
    .updateTable('outbox')
    .set({ state: 'sending', sending_at: at })
    .where('key', '=', key)
    .where('state', '=', 'waiting')
    .executeTakeFirst();
  return numUpdatedRows === 1n;
}

async function settle(db: Kysely<Tables>, key: string, to: Partial<OutboxRecord>): Promise<void> {
  const { numUpdatedRows } = await db
    .updateTable('outbox')
    .set(to)
    .where('key', '=', key)
    .where('state', '!=', 'sent')
    .executeTakeFirst();
  if (numUpdatedRows === 1n) return;
  const there = await db.selectFrom('outbox').select('key').where('key', '=', key).executeTakeFirst();
  if (there) return;
  throw new Fault(
    'not found',
    `Cannot mark message ${key}, expected one of the outbox, got none`,
    'It may have been erased meanwhile; read the outbox again.',
  );
}

/** Notes that a message arrived; its words are no longer needed and go. */
export async function markSent(db: Kysely<Tables>, key: string, platformId: string | null): Promise<void> {
  await settle(db, key, { state: 'sent', platform_id: platformId, telling: null, why: null });
}

/** Stops a place at a message that can't be sent. */
export async function markStuck(db: Kysely<Tables>, key: string, why: string): Promise<void> {
  await settle(db, key, { state: 'stuck', why });
}

/** Lets a message wait again. */
export async function markWaiting(db: Kysely<Tables>, key: string): Promise<void> {
  await settle(db, key, { state: 'waiting', sending_at: null, why: null });
}

/** The messages of a class at which a place is stopped. */
export async function readStuck(db: Kysely<Tables>, classId: ClassId): Promise<readonly StuckRow[]> {
  const rows = await db
    .selectFrom('outbox')
    .selectAll()
    .where('class_id', '=', classId)
    .where('state', '=', 'stuck')
    .orderBy('seq')
    .execute();
  return rows.map((row) => ({
    key: row.key,
    classId: row.class_id,
    place: placeOf(row),
    at: row.at,
    why: row.why ?? '',
  }));
}
