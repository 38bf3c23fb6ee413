import type { Kysely } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Look } from '../../shared/looks.js';
import type { Audience, Message } from '../../shared/messages.js';
import { audienceColumns, audienceOf } from './audience-columns.js';
import { readStored } from './sums.js';
import type { ShownMessage } from './store.js';
import type { ShownRow, Tables } from './tables.js';

/** Messages at most where nobody says how many. */
const usual = 200;

function shownMessage(row: ShownRow): ShownMessage {
  const audience = audienceOf(row);
  return {
    seq: row.seq,
    key: row.key,
    classId: row.class_id,
    audience,
    message:
      row.message === null
        ? { audience, summary: '', blocks: [] }
        : readStored<Message>(row.message, 'a message'),
    look: row.look === null ? null : readStored<Look>(row.look, 'a message'),
    at: row.at,
  };
}

/** Messages of exactly this audience after a sequence number, oldest first, the newest where there are more than `limit`. */
export async function readShown(
  db: Kysely<Tables>,
  classId: ClassId,
  audience: Audience,
  after = 0,
  limit = usual,
): Promise<readonly ShownMessage[]> {
  const { audience_to, audience_id } = audienceColumns(audience);
  const rows = await db
    .selectFrom('shown')
    .selectAll()
    .where('class_id', '=', classId)
    .where('audience_to', '=', audience_to)
    .where('audience_id', '=', audience_id)
    .where('seq', '>', after)
    .orderBy('seq', 'desc')
    .limit(limit)
    .execute();
  return rows.reverse().map(shownMessage);
}
