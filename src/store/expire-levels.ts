import type { Kysely } from 'kysely';
import type { EventName } from '../../shared/events.js';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { readNote, writeNote } from './notes.js';
import { sumOfEvent } from './sums.js';
import type { Unhurried } from './store.js';
import type { EventRow, Tables } from './tables.js';

/** Rows in one step. */
const most = 500;

/** What the journal says of how somebody did, by event: these fields go at the end of a school year, the rest stays, so that the class can still be rebuilt. */
export const levelFields: Readonly<Partial<Record<EventName, Readonly<Record<string, unknown>>>>> = {
  'draft-judged': { judgement: null, findings: [] },
  'draft-held': { findings: [] },
  'post-released': { judgement: null },
  'judged-again': { judgement: null },
  overruled: { level: null, as: null },
  'live-noted': { level: null },
};

function withoutLevel({ type, body }: EventRow): string {
  const event = JSON.parse(body) as Record<string, unknown>;
  return JSON.stringify({ ...event, ...levelFields[type as EventName] });
}

async function blankJournal(
  db: Kysely<Tables>,
  classId: ClassId,
  before: Instant,
  how: Unhurried,
): Promise<number> {
  let count = 0;
  for (let after = 0; ;) {
    const rows = await db
      .selectFrom('event')
      .selectAll()
      .where('class_id', '=', classId)
      .where('version', '>', after)
      .where('at', '<', before)
      .where('type', 'in', Object.keys(levelFields))
      .orderBy('version')
      .limit(most)
      .execute();
    if (rows.length === 0) return count;
    count += await db.transaction().execute(async (tx) => {
      let changed = 0;
      for (const row of rows) {
        const body = withoutLevel(row);
        if (body === row.body) continue;
        changed += 1;
        await tx
          .updateTable('event')
          .set({ body, sum: sumOfEvent({ ...row, body }) })
          .where('class_id', '=', classId)
          .where('version', '=', row.version)
          .execute();
      }
      return changed;
    });
    after = rows.at(-1)?.version ?? Infinity;
    await how.pause();
  }
}

/** Evidence, and what is only there so that no update is done twice and messages can be taken back. */
async function deleteRows(db: Kysely<Tables>, classId: ClassId, before: Instant): Promise<void> {
  await db.transaction().execute(async (tx) => {
    for (const table of ['evidence', 'inbox'] as const)
      await tx.deleteFrom(table).where('class_id', '=', classId).where('at', '<', before).execute();
    const keys = tx.selectFrom('shown').select('key').where('class_id', '=', classId);
    const onTheirWay = tx
      .selectFrom('outbox')
      .select('message_key')
      .where('class_id', '=', classId)
      .where('telling', 'is not', null);
    await tx
      .deleteFrom('outbox')
      .where('class_id', '=', classId)
      .where('at', '<', before)
      .where('telling', 'is', null)
      .where('message_key', 'not in', keys)
      .where('message_key', 'not in', onTheirWay)
      .execute();
    const updates = tx.selectFrom('inbox').select('update_id').where('class_id', '=', classId);
    await tx
      .deleteFrom('about')
      .where('class_id', '=', classId)
      .where((eb) =>
        eb.or([
          eb.and([eb('what', '=', 'reply'), eb('key', 'not in', updates)]),
          eb.and([eb('what', '=', 'message'), eb('key', 'not in', keys), eb('key', 'not in', onTheirWay)]),
        ]),
      )
      .execute();
  });
}

/** Lets what a class showed of how its pupils did before an instant go, from the evidence and from the journal; done once for an instant. The number of events that said it. */
export async function expireLevels(
  db: Kysely<Tables>,
  classId: ClassId,
  before: Instant,
  how: Unhurried,
): Promise<number> {
  const mark = `levels gone before, ${classId}`;
  if (Number((await readNote(db, mark)) ?? -1) >= before) return 0;
  const count = await blankJournal(db, classId, before, how);
  await how.alone(() => deleteRows(db, classId, before));
  await writeNote(db, mark, String(before));
  return count;
}
