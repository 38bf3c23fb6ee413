import type { Kysely } from 'kysely';
import type { ClassEvent } from '../../shared/events.js';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { putBack, type Found } from './lifting.js';
import { damaged, mustBeWhole, sumOfEvent, sumOfSaid } from './sums.js';
import type { EventRow, SaidRow, Tables } from './tables.js';
import { upcast, type StoredEvent } from './upcast.js';

/** A read event with its version in the class. */
export interface Kept {
  readonly version: number;
  readonly event: ClassEvent;
}

function foundIn(row: SaidRow): Found {
  if (row.text === null) return { gone: row.gone === 'expired' ? 'expired' : 'erased' };
  mustBeWhole(row.sum, sumOfSaid(row), `a text of event ${row.version} of class ${row.class_id}`);
  return { text: row.text };
}

function readEvent(row: EventRow, find: (n: number) => Found | undefined): ClassEvent {
  const what = `event ${row.version} of class ${row.class_id}`;
  mustBeWhole(row.sum, sumOfEvent(row), what);
  try {
    return upcast(putBack(row.body, find) as StoredEvent, row.form);
  } catch (error) {
    // The parser's message would quote the text.
    if (error instanceof SyntaxError) throw damaged(what);
    throw error;
  }
}

/** The events of a class after a version, in order, with what was said put back and old forms brought up to date; throws a `Fault` where any is missing or damaged. */
export async function readJournal(
  db: Kysely<Tables>,
  classId: ClassId,
  after: number,
): Promise<readonly Kept[]> {
  // One transaction, so that no commit falls between the head and what it counts.
  return db.transaction().execute(async (tx) => {
    const head = await tx
      .selectFrom('class')
      .select('version')
      .where('class_id', '=', classId)
      .executeTakeFirst();
    const rows = await tx
      .selectFrom('event')
      .selectAll()
      .where('class_id', '=', classId)
      .where('version', '>', after)
      .orderBy('version')
      .execute();
    const words = await tx
      .selectFrom('said')
      .selectAll()
      .where('class_id', '=', classId)
      .where('version', '>', after)
      .execute();
    rows.forEach((row, at) => {
      if (row.version !== after + at + 1) throw damaged(`event ${after + at + 1} of class ${classId}`);
    });
    if (after + rows.length !== Math.max(after, head?.version ?? 0))
      throw damaged(`event ${after + rows.length + 1} of class ${classId}`);
    const found = new Map(words.map((row) => [`${row.version}/${row.n}`, row]));
    return rows.map((row) => ({
      version: row.version,
      event: readEvent(row, (n) => {
        const text = found.get(`${row.version}/${n}`);
        if (!text) throw damaged(`a text of event ${row.version} of class ${classId}`);
        return foundIn(text);
      }),
    }));
  });
}

/** Every class that has a journal, by id. */
export async function readClasses(db: Kysely<Tables>): Promise<readonly ClassId[]> {
  const rows = await db
    .selectFrom('class')
    .select('class_id')
    .where('version', '>', 0)
    .orderBy('class_id')
    .execute();
  return rows.map((row) => row.class_id);
}

/** Classes whose due time has come, earliest first. */
export async function readDue(db: Kysely<Tables>, now: Instant): Promise<readonly ClassId[]> {
  const rows = await db
    .selectFrom('class')
    .select('class_id')
    .where('due_at', '<=', now)
    .orderBy('due_at')
    .orderBy('class_id')
    .execute();
  return rows.map((row) => row.class_id);
}

/** The earliest due time of all classes, null where none needs the clock. */
export async function readNextDue(db: Kysely<Tables>): Promise<Instant | null> {
  const row = await db
    .selectFrom('class')
    .select('due_at')
    .where('due_at', 'is not', null)
    .orderBy('due_at')
    .limit(1)
    .executeTakeFirst();
  return row?.due_at ?? null;
}
