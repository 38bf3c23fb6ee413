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

/** Blanks stored replies, so that a repeated update still isn't done twice, and takes the nicknames out of the others. */
export async function blankReplies(tx: Transaction<Tables>, blanking: Blanking): Promise<void> {
  const rows = await tx.selectFrom('inbox').selectAll().where('class_id', '=', blanking.classId).execute();
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
    await tx
      .updateTable('inbox')
      .set({ reply: after })
      .where('class_id', '=', blanking.classId)
      .where('update_id', '=', row.update_id)
      .execute();
  }
}
