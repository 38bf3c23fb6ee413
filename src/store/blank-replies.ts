import type { Transaction } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { blankReply, readLoosely, repeats, unnamed } from './blanking.js';
import type { Tables } from './tables.js';

/** Which stored replies of a class lose their words. */
export interface Blanking {
  readonly classId: ClassId;
  readonly goes: (reply: { readonly updateId: string; readonly at: Instant }) => boolean;
  readonly isText: (string: string) => boolean;
  readonly nicknames: readonly string[];
}

/** Blanks the replies of some rows, so that a repeated update still isn't done twice, and takes the nicknames out of the others; how many changed. */
export async function blankFrom(
  tx: Transaction<Tables>,
  blanking: Blanking,
  rows: readonly Tables['inbox'][],
): Promise<number> {
  let count = 0;
  for (const row of rows) {
    const reply = readLoosely(row.reply);
    const goes =
      blanking.goes({ updateId: row.update_id, at: row.at }) ||
      repeats(reply, blanking.isText, blanking.nicknames);
    // What isn't a reply of ours can't be cleaned of a nickname with certainty.
    const strange = typeof reply !== 'object' && blanking.nicknames.length > 0;
    const after =
      goes || strange ? blankReply(row.reply) : JSON.stringify(unnamed(reply, blanking.nicknames));
    if (after === row.reply) continue;
    count += 1;
    await tx
      .updateTable('inbox')
      .set({ reply: after })
      .where('class_id', '=', blanking.classId)
      .where('update_id', '=', row.update_id)
      .execute();
  }
  return count;
}

/** Blanks stored replies of a whole class. */
export async function blankReplies(tx: Transaction<Tables>, blanking: Blanking): Promise<void> {
  const rows = await tx.selectFrom('inbox').selectAll().where('class_id', '=', blanking.classId).execute();
  await blankFrom(tx, blanking, rows);
}
