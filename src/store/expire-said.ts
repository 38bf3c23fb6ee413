import type { Kysely } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { blankReplies } from './blank-replies.js';
import type { Disk } from './disk.js';
import { textFinder } from './find-texts.js';
import { removeMessages } from './remove-messages.js';
import type { Tables } from './tables.js';

/** Lets words said before an instant go, with older messages and replies and with newer ones that repeat them; nicknames and sealed words stay. The number of texts. */
export async function expireSaid(
  db: Kysely<Tables>,
  disk: Disk,
  before: Instant,
  now: Instant,
): Promise<number> {
  const count = await db.transaction().execute(async (tx) => {
    const rows = await tx
      .selectFrom('said')
      .select(['class_id', 'text'])
      .where('what', '=', 'words')
      .where('text', 'is not', null)
      .where('at', '<', before)
      .execute();
    const texts = new Map<ClassId, string[]>();
    for (const row of await tx.selectFrom('class').select('class_id').execute()) texts.set(row.class_id, []);
    for (const { class_id, text } of rows) texts.get(class_id)?.push(text ?? '');
    for (const [classId, said] of texts) {
      const going = {
        classId,
        now,
        goes: ({ at }: { readonly at: Instant }) => at < before,
        isText: textFinder(said),
        nicknames: [],
      };
      await removeMessages(tx, going);
      await blankReplies(tx, going);
    }
    await tx
      .updateTable('said')
      .set({ text: null, gone: 'expired' })
      .where('what', '=', 'words')
      .where('text', 'is not', null)
      .where('at', '<', before)
      .execute();
    return rows.length;
  });
  if (count > 0) await disk.sweep();
  return count;
}
