import type { Kysely, Transaction } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { blankFrom, type Blanking } from './blank-replies.js';
import { blankReply } from './blanking.js';
import { textFinder } from './find-texts.js';
import { removeFrom, type Going } from './remove-messages.js';
import type { Unhurried } from './store.js';
import type { ShownRow, Tables } from './tables.js';

/*
 * Words that have had their time go in small steps, each a transaction of its own, so that posts get their turn between
 * them. Old messages and replies go, and newer ones that repeat the words. The words themselves go last, with nobody at
 * the class, together with what came up meanwhile: cut off before that, all is done again the next time.
 */

/** Rows in one step. */
const most = 200;

const blanks = [true, false].map((done) => blankReply(JSON.stringify({ done })));

interface Expiry {
  readonly db: Kysely<Tables>;
  readonly before: Instant;
  readonly going: Going & Blanking;
  /** Whether newer messages have to be looked through for texts. */
  readonly texts: boolean;
}

async function readMessages(
  db: Kysely<Tables> | Transaction<Tables>,
  { before, going, texts }: Expiry,
  after: number,
  limit: number,
): Promise<readonly ShownRow[]> {
  let query = db
    .selectFrom('shown')
    .selectAll()
    .where('class_id', '=', going.classId)
    .where('seq', '>', after);
  if (!texts) query = query.where('at', '<', before);
  return query.orderBy('seq').limit(limit).execute();
}

async function readReplies(
  db: Kysely<Tables> | Transaction<Tables>,
  { before, going, texts }: Expiry,
  after: string,
  limit: number,
): Promise<readonly Tables['inbox'][]> {
  let query = db
    .selectFrom('inbox')
    .selectAll()
    .where('class_id', '=', going.classId)
    .where('update_id', '>', after)
    .where('reply', 'not in', blanks);
  if (!texts) query = query.where('at', '<', before);
  return query.orderBy('update_id').limit(limit).execute();
}

/** The number of messages and replies that went. */
async function expireMessages(expiry: Expiry, how: Unhurried): Promise<number> {
  const { db, going } = expiry;
  let count = 0;
  for (let after = 0; ;) {
    const rows = await readMessages(db, expiry, after, most);
    if (rows.length === 0) break;
    count += await db.transaction().execute((tx) => removeFrom(tx, going, rows));
    after = rows.at(-1)?.seq ?? Infinity;
    await how.pause();
  }
  for (let after = ''; ;) {
    const rows = await readReplies(db, expiry, after, most);
    if (rows.length === 0) break;
    count += await db.transaction().execute((tx) => blankFrom(tx, going, rows));
    after = rows.at(-1)?.update_id ?? '';
    await how.pause();
  }
  return count;
}

/** What came up since a number and an instant, and the words themselves. */
async function finish(expiry: Expiry, since: { readonly seq: number; readonly at: Instant }): Promise<void> {
  const { db, going, before, texts } = expiry;
  await db.transaction().execute(async (tx) => {
    if (texts) {
      await removeFrom(tx, going, await readMessages(tx, expiry, since.seq, Number.MAX_SAFE_INTEGER));
      const replies = await tx
        .selectFrom('inbox')
        .selectAll()
        .where('class_id', '=', going.classId)
        .where('at', '>=', since.at)
        .execute();
      await blankFrom(tx, going, replies);
    }
    await tx
      .updateTable('said')
      .set({ text: null, gone: 'expired', sum: null })
      .where('class_id', '=', going.classId)
      .where('what', '=', 'words')
      .where('text', 'is not', null)
      .where('at', '<', before)
      .execute();
  });
}

/** Lets words of a class said before an instant go; nicknames and sealed words stay. The number of texts, messages and replies. */
export async function expireWords(
  db: Kysely<Tables>,
  classId: ClassId,
  before: Instant,
  now: Instant,
  how: Unhurried,
): Promise<number> {
  const rows = await db
    .selectFrom('said')
    .select('text')
    .where('class_id', '=', classId)
    .where('what', '=', 'words')
    .where('text', 'is not', null)
    .where('at', '<', before)
    .execute();
  await how.pause();
  const { value: seq } = await db
    .selectFrom('counter')
    .select('value')
    .where('name', '=', 'seq')
    .executeTakeFirstOrThrow();
  const going: Going & Blanking = {
    classId,
    now,
    goes: ({ at }: { readonly at: Instant }) => at < before,
    isText: textFinder(rows.flatMap(({ text }) => text ?? [])),
    nicknames: [],
    looksToo: false,
  };
  const expiry = { db, before, going, texts: rows.length > 0 };
  await how.pause();
  const count = await expireMessages(expiry, how);
  if (rows.length > 0) await how.alone(() => finish(expiry, { seq, at: now }));
  return rows.length + count;
}
