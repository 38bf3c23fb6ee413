import type { Transaction } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Audience, Message } from '../../shared/messages.js';
import type { MessageKey, Telling } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';
import { audienceOf } from './audience-columns.js';
import { repeats, unnamed } from './blanking.js';
import type { OutboxRecord, ShownRow, Tables } from './tables.js';
import { audienceOfTelling } from './tell.js';
import { tellPlatforms } from './tell-platforms.js';

/** What goes from a class's messages: by what they are, by a text that they repeat, by whom they quote; nicknames go out of all others. */
export interface Going {
  readonly classId: ClassId;
  readonly now: Instant;
  readonly goes: (message: {
    readonly key: MessageKey;
    readonly audience: Audience;
    readonly at: Instant;
  }) => boolean;
  readonly isText: (string: string) => boolean;
  readonly nicknames: readonly string[];
  /** Whether what a look answered on a platform may name who goes, so that it is taken back there; here it is answered anew. */
  readonly looksToo: boolean;
}

/** What becomes of one message; null where it stays as it is. A message that is a look holds no words. */
function newsOf(row: ShownRow, going: Going): Telling | null {
  const audience = audienceOf(row);
  const withdraw: Telling = { do: 'withdraw', key: row.key, audience };
  if (going.goes({ key: row.key, audience, at: row.at })) return withdraw;
  if (row.message === null) return null;
  const message = JSON.parse(row.message) as Message;
  if (repeats(message, going.isText, going.nicknames)) return withdraw;
  const changed = unnamed(message, going.nicknames);
  return JSON.stringify(changed) === row.message ? null : { do: 'replace', key: row.key, message: changed };
}

async function write(tx: Transaction<Tables>, classId: ClassId, news: Telling): Promise<void> {
  const { key } = news;
  if (news.do === 'replace') {
    const message = JSON.stringify(news.message);
    await tx
      .updateTable('shown')
      .set({ message })
      .where('class_id', '=', classId)
      .where('key', '=', key)
      .execute();
    return;
  }
  await tx.deleteFrom('shown').where('class_id', '=', classId).where('key', '=', key).execute();
  await tx
    .deleteFrom('about')
    .where('class_id', '=', classId)
    .where('what', '=', 'message')
    .where('key', '=', key)
    .execute();
}

/** What a message that isn't sent yet becomes: a telling, or null where it goes. */
function changed(row: OutboxRecord, going: Going, gone: ReadonlySet<MessageKey>): Telling | null {
  const telling = JSON.parse(row.telling ?? '') as Telling;
  if (telling.do === 'withdraw') return telling;
  const { message_key: key, at } = row;
  const audience = audienceOfTelling(telling);
  const goes =
    gone.has(key) || going.goes({ key, audience, at }) || repeats(telling, going.isText, going.nicknames);
  if (!goes) return unnamed(telling, going.nicknames);
  // On its way already: should it have to be sent again, it takes itself back.
  return row.state === 'sending' ? { do: 'withdraw', key, audience } : null;
}

async function changeOutbox(
  tx: Transaction<Tables>,
  going: Going,
  gone: ReadonlySet<MessageKey>,
): Promise<void> {
  const rows = await tx
    .selectFrom('outbox')
    .selectAll()
    .where('class_id', '=', going.classId)
    .where('telling', 'is not', null)
    .execute();
  for (const row of rows) {
    const telling = changed(row, going, gone);
    if (telling === null) await tx.deleteFrom('outbox').where('key', '=', row.key).execute();
    else if (JSON.stringify(telling) !== row.telling) {
      await tx
        .updateTable('outbox')
        .set({ telling: JSON.stringify(telling) })
        .where('key', '=', row.key)
        .execute();
    }
  }
}

/** Takes the messages of some rows away, from what is shown, from what waits to be sent, and from platforms; how many changed. */
export async function removeFrom(
  tx: Transaction<Tables>,
  going: Going,
  rows: readonly ShownRow[],
): Promise<number> {
  const news = new Map<MessageKey, Telling>();
  const onPlatforms = new Map<MessageKey, Telling>();
  for (const row of rows) {
    const one = newsOf(row, going);
    if (one === null) {
      if (row.look !== null && going.looksToo)
        onPlatforms.set(row.key, { do: 'withdraw', key: row.key, audience: audienceOf(row) });
      continue;
    }
    news.set(row.key, one);
    await write(tx, going.classId, one);
  }
  const gone = [...news.values()].filter(({ do: what }) => what === 'withdraw').map(({ key }) => key);
  await changeOutbox(tx, going, new Set(gone));
  await tellPlatforms(tx, going.classId, new Map([...news, ...onPlatforms]), going.now);
  return news.size;
}

/** Takes messages away wherever they are. */
export async function removeMessages(tx: Transaction<Tables>, going: Going): Promise<void> {
  const rows = await tx.selectFrom('shown').selectAll().where('class_id', '=', going.classId).execute();
  await removeFrom(tx, going, rows);
}
