import type { Transaction } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Audience } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';
import { audienceColumns, audienceOf, reaches } from './audience-columns.js';
import type { AboutRow, OutboxRecord, Tables } from './tables.js';

/** A telling with the class and version that it belongs to, and everybody it is about. */
export interface Told {
  readonly classId: ClassId;
  readonly version: number;
  readonly telling: Telling;
  readonly at: Instant;
  readonly people: Iterable<PersonId>;
}

/** Whom a telling is for. */
export function audienceOfTelling(telling: Telling): Audience {
  return telling.do === 'say' || telling.do === 'replace' ? telling.message.audience : telling.audience;
}

/** Takes numbers from the store's one counter; the first of them. */
export async function takeNumbers(tx: Transaction<Tables>, howMany: number): Promise<number> {
  const { value } = await tx
    .updateTable('counter')
    .set((eb) => ({ value: eb('value', '+', howMany) }))
    .where('name', '=', 'seq')
    .returning('value')
    .executeTakeFirstOrThrow();
  return value - howMany + 1;
}

async function show(tx: Transaction<Tables>, { classId, telling, at }: Told, seq: number): Promise<void> {
  if (telling.do === 'withdraw') {
    await tx.deleteFrom('shown').where('class_id', '=', classId).where('key', '=', telling.key).execute();
    return;
  }
  const columns = {
    seq,
    ...audienceColumns(audienceOfTelling(telling)),
    message: telling.do === 'show' ? null : JSON.stringify(telling.message),
    look: telling.do === 'show' ? JSON.stringify(telling.look) : null,
  };
  await tx
    .insertInto('shown')
    .values({ class_id: classId, key: telling.key, at, ...columns })
    // What is replaced keeps the time at which it was first said.
    .onConflict((oc) =>
      oc.columns(['class_id', 'key']).doUpdateSet(telling.do === 'replace' ? columns : { at, ...columns }),
    )
    .execute();
}

type BoundPlace = Pick<Tables['place'], 'class_id' | 'channel' | 'tenant' | 'room'> & {
  readonly audience: Audience;
};

async function platformPlaces(tx: Transaction<Tables>, classes: readonly ClassId[]): Promise<BoundPlace[]> {
  const rows = await tx
    .selectFrom('place')
    .selectAll()
    .where('class_id', 'in', classes)
    .where('channel', '!=', 'room')
    .execute();
  return rows.map((row) => ({ ...row, audience: audienceOf(row) }));
}

function outboxRow(told: Told, { channel, tenant, room }: BoundPlace, seq: number): OutboxRecord {
  return {
    key: `${told.classId}/${told.version}/${seq}`,
    seq,
    class_id: told.classId,
    message_key: told.telling.key,
    channel,
    tenant,
    room,
    does: told.telling.do,
    state: 'waiting',
    at: told.at,
    telling: JSON.stringify(told.telling),
    sending_at: null,
    platform_id: null,
    practice: 'talk' in told.telling ? (told.telling.talk?.practice ?? null) : null,
    why: null,
  };
}

/** Writes what is told: the newest state of each message, a row of the outbox for each platform's place that hears of it, and whom it is about. */
export async function writeTold(
  tx: Transaction<Tables>,
  told: readonly Told[],
): Promise<readonly AboutRow[]> {
  if (told.length === 0) return [];
  const places = await platformPlaces(tx, [...new Set(told.map(({ classId }) => classId))]);
  const reached = told.map((one) => {
    const audience = audienceOfTelling(one.telling);
    return places.filter((place) => place.class_id === one.classId && reaches(place.audience, audience));
  });
  let seq = await takeNumbers(tx, told.length + reached.flat().length);
  const outbox: OutboxRecord[] = [];
  const about: AboutRow[] = [];
  for (const [index, one] of told.entries()) {
    await show(tx, one, seq++);
    for (const place of reached[index] ?? []) outbox.push(outboxRow(one, place, seq++));
    const audience = audienceOfTelling(one.telling);
    const people = new Set(one.people);
    if (audience.to === 'person') people.add(audience.person);
    for (const person of people) {
      about.push({ class_id: one.classId, what: 'message', key: one.telling.key, person });
    }
  }
  for (let at = 0; at < outbox.length; at += 100) {
    await tx
      .insertInto('outbox')
      .values(outbox.slice(at, at + 100))
      .execute();
  }
  return about;
}
