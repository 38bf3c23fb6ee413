import type { Transaction } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { MessageKey, Telling } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';
import type { OutboxRecord, Tables } from './tables.js';
import { takeNumbers } from './tell.js';

/** Messages asked for in one statement. */
const mostKeys = 500;

/** The newest row of each message at each place, where the message is or may be on the platform. */
function newestThere(rows: readonly OutboxRecord[]): readonly OutboxRecord[] {
  const newest = new Map<string, OutboxRecord>();
  for (const row of rows) {
    newest.set([row.message_key, row.channel, row.tenant, row.room].join('\u0000'), row);
  }
  return [...newest.values()].filter(
    (row) => row.does !== 'withdraw' && (row.state === 'sent' || row.state === 'sending'),
  );
}

/** Lets platforms hear of messages that were sent to them and have changed or gone since. */
export async function tellPlatforms(
  tx: Transaction<Tables>,
  classId: ClassId,
  news: ReadonlyMap<MessageKey, Telling>,
  at: Instant,
): Promise<void> {
  const keys = [...news.keys()];
  const rows: OutboxRecord[] = [];
  for (let from = 0; from < keys.length; from += mostKeys) {
    const some = await tx
      .selectFrom('outbox')
      .selectAll()
      .where('class_id', '=', classId)
      .where('message_key', 'in', keys.slice(from, from + mostKeys))
      .orderBy('seq')
      .execute();
    rows.push(...some);
  }
  for (const row of newestThere(rows)) {
    const telling = news.get(row.message_key);
    if (!telling) continue;
    const seq = await takeNumbers(tx, 1);
    await tx
      .insertInto('outbox')
      .values({
        ...row,
        key: `${classId}/again/${seq}`,
        seq,
        does: telling.do,
        state: 'waiting',
        at,
        telling: JSON.stringify(telling),
        sending_at: null,
        platform_id: null,
        why: null,
      })
      .execute();
  }
}
