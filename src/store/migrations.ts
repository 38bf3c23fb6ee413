import { sql, type Kysely, type Transaction } from 'kysely';
import { Fault } from '../../shared/fault.js';
import type { Instant } from '../../shared/time.js';
import { journal } from './migrations/0001-journal.js';
import { words } from './migrations/0002-words.js';
import { messages } from './migrations/0003-messages.js';
import { doors } from './migrations/0004-doors.js';
import { talk } from './migrations/0005-talk.js';
import { secondKeys } from './migrations/0006-second-key.js';
import { sums } from './migrations/0007-sums.js';
import type { Tables } from './tables.js';

/** One change of the schema, in a file of its own; numbers follow each other from 1, and what has been released is never changed. */
export interface Migration {
  readonly number: number;
  readonly name: string;
  up(db: Transaction<Tables>): Promise<void>;
}

/** Every migration in order; a new one goes at the end. */
export const migrations: readonly Migration[] = [journal, words, messages, doors, talk, secondKeys, sums];

/** Brings the schema up to date, each step in a transaction of its own; throws `Fault` for a schema from the future. */
export async function migrate(
  db: Kysely<Tables>,
  now: () => Instant,
  steps: readonly Migration[] = migrations,
): Promise<void> {
  await db.schema
    .createTable('migration')
    .ifNotExists()
    .addColumn('number', 'integer', (c) => c.primaryKey())
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('at', 'bigint', (c) => c.notNull())
    .execute();
  const { done } = await db
    .selectFrom('migration')
    .select(sql<number>`coalesce(max(number), 0)`.as('done'))
    .executeTakeFirstOrThrow();
  if (done > steps.length) {
    throw new Fault(
      'disk',
      `Cannot open the data, expected schema ${steps.length} or older, got schema ${done} of a newer Turnstone`,
      'Start the newer version again, or restore a backup made with this version.',
    );
  }
  for (const step of steps.slice(done)) {
    await db.transaction().execute(async (tx) => {
      await step.up(tx);
      await tx.insertInto('migration').values({ number: step.number, name: step.name, at: now() }).execute();
    });
  }
}
