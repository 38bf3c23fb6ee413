import type { Kysely } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Audience } from '../../shared/messages.js';
import { audienceColumns, audienceOf } from './audience-columns.js';
import type { Identity, Place, Session, Slip } from './store.js';
import type { Tables } from './tables.js';

/** The places of a class, each with the audience that it is bound to. */
export async function readPlaces(
  db: Kysely<Tables>,
  classId: ClassId,
): Promise<readonly { readonly place: Place; readonly audience: Audience }[]> {
  const rows = await db
    .selectFrom('place')
    .selectAll()
    .where('class_id', '=', classId)
    .orderBy('channel')
    .orderBy('tenant')
    .orderBy('room')
    .execute();
  return rows.map((row) => ({
    place: { channel: row.channel, tenant: row.tenant, room: row.room },
    audience: audienceOf(row),
  }));
}

/** Binds a place to one audience of one class; what it was bound to before is forgotten. */
export async function bindPlace(
  db: Kysely<Tables>,
  classId: ClassId,
  { channel, tenant, room }: Place,
  audience: Audience,
): Promise<void> {
  const bound = { class_id: classId, ...audienceColumns(audience) };
  await db
    .insertInto('place')
    .values({ channel, tenant, room, ...bound })
    .onConflict((oc) => oc.columns(['channel', 'tenant', 'room']).doUpdateSet(bound))
    .execute();
}

/** Lets one place of a class take another's part: what waits or is stuck there goes on here in order, and the other is bound no more. */
export async function movePlace(
  db: Kysely<Tables>,
  classId: ClassId,
  from: Place,
  { channel, tenant, room }: Place,
): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await tx
      .updateTable('outbox')
      .set({ channel, tenant, room, state: 'waiting', sending_at: null, why: null })
      .where('class_id', '=', classId)
      .where('channel', '=', from.channel)
      .where('tenant', '=', from.tenant)
      .where('room', '=', from.room)
      .where('state', 'in', ['waiting', 'stuck'])
      .execute();
    await tx
      .deleteFrom('place')
      .where('class_id', '=', classId)
      .where('channel', '=', from.channel)
      .where('tenant', '=', from.tenant)
      .where('room', '=', from.room)
      .execute();
  });
}

/** Who somebody of a platform is with us. */
export async function readIdentity(
  db: Kysely<Tables>,
  channel: Identity['channel'],
  tenant: string,
  user: string,
): Promise<Identity | null> {
  const row = await db
    .selectFrom('identity')
    .selectAll()
    .where('channel', '=', channel)
    .where('tenant', '=', tenant)
    .where('user_id', '=', user)
    .executeTakeFirst();
  return row ? { channel, tenant, user, classId: row.class_id, person: row.person } : null;
}

/** Binds somebody of a platform to a person; one there is one here. */
export async function bindIdentity(db: Kysely<Tables>, identity: Identity): Promise<void> {
  const { channel, tenant, user, classId, person } = identity;
  const bound = { class_id: classId, person };
  await db
    .insertInto('identity')
    .values({ channel, tenant, user_id: user, ...bound })
    .onConflict((oc) => oc.columns(['channel', 'tenant', 'user_id']).doUpdateSet(bound))
    .execute();
}

function slipOf(row: Tables['slip']): Slip {
  return {
    classId: row.class_id,
    person: row.person,
    madeAt: row.made_at,
    expiresAt: row.expires_at,
    revoked: row.revoked === 1,
  };
}

/** Keeps a slip under its secret's hash. */
export async function saveSlip(db: Kysely<Tables>, hash: string, slip: Slip): Promise<void> {
  const columns = {
    class_id: slip.classId,
    person: slip.person,
    made_at: slip.madeAt,
    expires_at: slip.expiresAt,
    revoked: slip.revoked ? 1 : 0,
  };
  await db
    .insertInto('slip')
    .values({ hash, ...columns })
    .onConflict((oc) => oc.column('hash').doUpdateSet(columns))
    .execute();
}

/** The slip of a secret's hash. */
export async function readSlip(db: Kysely<Tables>, hash: string): Promise<Slip | null> {
  const row = await db.selectFrom('slip').selectAll().where('hash', '=', hash).executeTakeFirst();
  return row ? slipOf(row) : null;
}

/** The slips of a class, or of one person of it, oldest first. */
export async function readSlips(
  db: Kysely<Tables>,
  classId: ClassId,
  person?: PersonId,
): Promise<readonly Slip[]> {
  let query = db.selectFrom('slip').selectAll().where('class_id', '=', classId);
  if (person !== undefined) query = query.where('person', '=', person);
  const rows = await query.orderBy('made_at').orderBy('hash').execute();
  return rows.map(slipOf);
}

/** Revokes a person's slips and ends their sessions. */
export async function revokeSlips(db: Kysely<Tables>, classId: ClassId, person: PersonId): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await tx
      .updateTable('slip')
      .set({ revoked: 1 })
      .where('class_id', '=', classId)
      .where('person', '=', person)
      .execute();
    await tx.deleteFrom('session').where('class_id', '=', classId).where('person', '=', person).execute();
  });
}

/** Keeps a session, or its newer state. */
export async function saveSession(db: Kysely<Tables>, session: Session): Promise<void> {
  const columns = {
    class_id: session.classId,
    person: session.person,
    started_at: session.startedAt,
    seen_at: session.seenAt,
    expires_at: session.expiresAt,
  };
  await db
    .insertInto('session')
    .values({ id: session.id, ...columns })
    .onConflict((oc) => oc.column('id').doUpdateSet(columns))
    .execute();
}

/** The session of an id, whether or not it has expired. */
export async function readSession(db: Kysely<Tables>, id: string): Promise<Session | null> {
  const row = await db.selectFrom('session').selectAll().where('id', '=', id).executeTakeFirst();
  if (!row) return null;
  return {
    id,
    classId: row.class_id,
    person: row.person,
    startedAt: row.started_at,
    seenAt: row.seen_at,
    expiresAt: row.expires_at,
  };
}

/** Ends a session. */
export async function endSession(db: Kysely<Tables>, id: string): Promise<void> {
  await db.deleteFrom('session').where('id', '=', id).execute();
}
