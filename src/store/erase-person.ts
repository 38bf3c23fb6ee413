import type { Kysely, Transaction } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { blankReplies } from './blank-replies.js';
import { withoutNames } from './blanking.js';
import type { Disk } from './disk.js';
import type { ErasedList } from './erased-list.js';
import { textFinder } from './find-texts.js';
import { readPersonsWords } from './persons-words.js';
import { removeMessages } from './remove-messages.js';
import { sumOfSaid } from './sums.js';
import type { Tables } from './tables.js';

/*
 * What goes with a person: their texts and texts about them, sealed words, evidence, posts' owner, slips, sessions,
 * identities, places of their own. A message or reply goes when it was written for them or in the telling of an event
 * about them (kept on record as it is written), when it repeats one of their texts, or when it quotes them by name;
 * whatever is left names them "somebody". The journal keeps ids and judgements, which say nothing without the rest.
 */

interface Erasing {
  readonly tx: Transaction<Tables>;
  readonly classId: ClassId;
  readonly person: PersonId;
}

async function eraseTexts({ tx, classId, person }: Erasing, nicknames: readonly string[]): Promise<void> {
  await tx
    .updateTable('said')
    .set({ text: null, gone: 'erased', sum: null })
    .where('class_id', '=', classId)
    .where((eb) => eb.or([eb('person', '=', person), eb('about', '=', person)]))
    .execute();
  await tx.deleteFrom('sealed').where('class_id', '=', classId).where('person', '=', person).execute();
  if (nicknames.length === 0) return;
  const others = await tx
    .selectFrom('said')
    .select(['class_id', 'version', 'n', 'person', 'text'])
    .where('class_id', '=', classId)
    .where('what', '=', 'words')
    .where('text', 'is not', null)
    .execute();
  for (const row of others) {
    const { version, n, text } = row;
    const after = withoutNames(text ?? '', nicknames);
    if (after === text) continue;
    await tx
      .updateTable('said')
      .set({ text: after, sum: sumOfSaid({ ...row, text: after }) })
      .where('class_id', '=', classId)
      .where('version', '=', version)
      .where('n', '=', n)
      .execute();
  }
}

async function eraseRows({ tx, classId, person }: Erasing): Promise<void> {
  for (const table of ['evidence', 'slip', 'second_key', 'session', 'identity', 'post', 'about'] as const) {
    await tx.deleteFrom(table).where('class_id', '=', classId).where('person', '=', person).execute();
  }
  for (const table of ['shown', 'place'] as const) {
    await tx
      .deleteFrom(table)
      .where('class_id', '=', classId)
      .where('audience_to', '=', 'person')
      .where('audience_id', '=', person)
      .execute();
  }
}

async function readAbout({ tx, classId, person }: Erasing): Promise<{
  readonly messages: ReadonlySet<string>;
  readonly replies: ReadonlySet<string>;
  readonly ownedReplies: ReadonlySet<string>;
}> {
  const rows = await tx.selectFrom('about').selectAll().where('class_id', '=', classId).execute();
  const keys = (what: 'message' | 'reply', of?: PersonId): Set<string> =>
    new Set(
      rows
        .filter((row) => row.what === what && (of === undefined || row.person === of))
        .map(({ key }) => key),
    );
  return { messages: keys('message', person), replies: keys('reply', person), ownedReplies: keys('reply') };
}

async function erase(erasing: Erasing, now: Instant): Promise<void> {
  const { tx, classId, person } = erasing;
  const { texts, nicknames } = await readPersonsWords(tx, classId, person);
  const { messages, replies, ownedReplies } = await readAbout(erasing);
  const common = { classId, now, isText: textFinder(texts), nicknames };
  await removeMessages(tx, {
    ...common,
    looksToo: true,
    goes: ({ key, audience }) =>
      messages.has(key) || (audience.to === 'person' && audience.person === person),
  });
  await blankReplies(tx, {
    ...common,
    // A reply of which nobody knows whose it is might be theirs.
    goes: ({ updateId }) => replies.has(updateId) || !ownedReplies.has(updateId),
  });
  await eraseTexts(erasing, nicknames);
  await eraseRows(erasing);
}

/** What an erasure needs beside the person. */
export interface EraseTools {
  readonly db: Kysely<Tables>;
  readonly disk: Disk;
  readonly list: ErasedList;
  readonly now: Instant;
}

/** Erases a person and leaves no byte of them in the data folder; cut off in between, it is finished when the store is opened again. */
export async function erasePerson(
  { db, disk, list, now }: EraseTools,
  classId: ClassId,
  person: PersonId,
): Promise<void> {
  list.add({ classId, person });
  await db.transaction().execute(async (tx) => {
    await tx
      .insertInto('erasure')
      .values({ class_id: classId, person, asked_at: now, done_at: null })
      .onConflict((oc) => oc.columns(['class_id', 'person']).doUpdateSet({ done_at: null }))
      .execute();
    await erase({ tx, classId, person }, now);
  });
  await disk.sweep();
  await db
    .updateTable('erasure')
    .set({ done_at: now })
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .execute();
}

/** Finishes erasures that were asked for and cut off, or that the folder's list holds and the data doesn't know of, since it is an older copy. */
export async function finishErasures(tools: EraseTools): Promise<void> {
  const rows = await tools.db.selectFrom('erasure').selectAll().execute();
  const done = new Set(rows.flatMap((row) => (row.done_at === null ? [] : `${row.class_id}\t${row.person}`)));
  const asked = [...rows.map((row) => ({ classId: row.class_id, person: row.person })), ...tools.list.read()];
  for (const { classId, person } of asked) {
    const one = `${classId}\t${person}`;
    if (!done.has(one)) await erasePerson(tools, classId, person);
    else tools.list.add({ classId, person });
    done.add(one);
  }
}
