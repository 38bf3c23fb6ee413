import type { Kysely } from 'kysely';
import type { Tables } from './tables.js';

/** A note of the installation. */
export async function readNote(db: Kysely<Tables>, name: string): Promise<string | null> {
  const row = await db.selectFrom('note').select('value').where('name', '=', name).executeTakeFirst();
  return row?.value ?? null;
}

/** Writes a note of the installation, over an older one. */
export async function writeNote(db: Kysely<Tables>, name: string, value: string): Promise<void> {
  await db
    .insertInto('note')
    .values({ name, value })
    .onConflict((oc) => oc.column('name').doUpdateSet({ value }))
    .execute();
}
