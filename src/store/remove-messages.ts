import type { Transaction } from 'kysely';
import type { ClassId } from '../../shared/ids.js';
import type { Audience, Message } from '../../shared/messages.js';
import type { MessageKey, Telling } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';
import { audienceOf } from './audience-columns.js';
import { repeats, unnamed } from './blanking.js';
import type { OutboxRecord, Tables } from './tables.js';
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
}

/** Takes messages away or the nicknames out of them; gives what platforms have to hear. A message that is a look holds no words. */
async function changeShown(tx: Transaction<Tables>, going: Going): Promise<Map<MessageKey, Telling>> {
  const rows = await tx
    .selectFrom('shown')
    .selectAll()
    .where('class_id', '=', going.classId)
    .where('message', 'is not', null)
    .execute();
  const news = new Map<MessageKey, Telling>();
  for (const row of rows) {
    const audience = audienceOf(row);
    const message = JSON.parse(row.message ?? '') as Message;
    if (
      going.goes({ key: row.key, audience, at: row.at }) ||
      repeats(message, going.isText, going.nicknames)
    ) {
      news.set(row.key, { do: 'withdraw', key: row.key, audience });
      await tx.deleteFrom('shown').where('class_id', '=', going.classId).where('key', '=', row.key).execute();
      continue;
    }
    const changed = unnamed(message, going.nicknames);
    if (JSON.stringify(changed) === row.message) continue;
    news.set(row.key, { do: 'replace', key: row.key, message: changed });
    await tx
      .updateTable('shown')
      .set({ message: JSON.stringify(changed) })
      .where('class_id', '=', going.classId)
      .where('key', '=', row.key)
      .execute();
  }
  return news;
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

/** Takes messages away wherever they are: from what is shown, from what waits to be sent, and from platforms. */
export async function removeMessages(tx: Transaction<Tables>, going: Going): Promise<void> {
  const news = await changeShown(tx, going);
  const gone = new Set(
    [...news.values()].filter(({ do: what }) => what === 'withdraw').map(({ key }) => key),
  );
  await changeOutbox(tx, going, gone);
  await tellPlatforms(tx, going.classId, news, going.now);
}
