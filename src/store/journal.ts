import type { Kysely } from 'kysely';
import type { ClassEvent } from '../../shared/events.js';
import { Fault } from '../../shared/fault.js';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { putBack, type Found } from './lifting.js';
import type { EventRow, SaidRow, Tables } from './tables.js';
import { upcast, type StoredEvent } from './upcast.js';

/** A read event with its version in the class. */
export interface Kept {
  readonly version: number;
  readonly event: ClassEvent;
}

function foundIn({ text, gone }: Pick<SaidRow, 'text' | 'gone'>): Found {
  return text === null ? { gone: gone ?? 'erased' } : { text };
}

function readEvent(row: EventRow, find: (n: number) => Found | undefined): ClassEvent {
  try {
    return upcast(putBack(row.body, find) as StoredEvent, row.form);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    // The parser's message would quote the text.
    throw new Fault(
      'disk',
      `Cannot read event ${row.version} of class ${row.class_id}, expected JSON, got damaged text`,
      'Stop, keep a copy of the folder as it is, and restore the newest backup.',
    );
  }
}

/** The events of a class after a version, in order, with what was said put back and old forms brought up to date. */
export async function readJournal(
  db: Kysely<Tables>,
  classId: ClassId,
  after: number,
): Promise<readonly Kept[]> {
  const rows = await db
    .selectFrom('event')
    .selectAll()
    .where('class_id', '=', classId)
    .where('version', '>', after)
    .orderBy('version')
    .execute();
  const words = await db
    .selectFrom('said')
    .select(['version', 'n', 'text', 'gone'])
    .where('class_id', '=', classId)
    .where('version', '>', after)
    .execute();
  const found = new Map(words.map((row) => [`${row.version}/${row.n}`, foundIn(row)]));
  return rows.map((row) => ({
    version: row.version,
    event: readEvent(row, (n) => found.get(`${row.version}/${n}`)),
  }));
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
