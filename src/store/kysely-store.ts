import type { Kysely } from 'kysely';
import type { Instant } from '../../shared/time.js';
import { commitBatch } from './commit.js';
import { sqliteDisk, type Disk } from './disk.js';
import { diskFault } from './disk-fault.js';
import * as doors from './doors.js';
import { erasePerson, finishErasures } from './erase-person.js';
import { readEvidence } from './evidence.js';
import { expireLevels } from './expire-levels.js';
import { expireDoors, expireSealed } from './expire-rest.js';
import { expireWords } from './expire-words.js';
import { exportPerson } from './export-person.js';
import { keepReply, readReply } from './inbox.js';
import { readClasses, readDue, readJournal, readNextDue } from './journal.js';
import type { ErasedList } from './erased-list.js';
import { migrate } from './migrations.js';
import { readNote, writeNote } from './notes.js';
import type { Opened } from './open-database.js';
import * as outbox from './outbox.js';
import { lookAtSealed, readSealedLooks } from './sealed.js';
import { secondKey } from './second-key.js';
import { readShown } from './shown.js';
import type { Store } from './store.js';
import type { Tables } from './tables.js';

/** Wraps each method, so that failures of the disk leave the store as faults that say what to do. */
function guarded(store: Store, where: string): Store {
  const guard =
    (name: string, method: (...args: unknown[]) => Promise<unknown>) =>
    async (...args: unknown[]): Promise<unknown> => {
      try {
        return await method(...args);
      } catch (error) {
        throw diskFault(error, `keep or read (${name})`, where);
      }
    };
  const methods = Object.entries(store) as [string, (...args: unknown[]) => Promise<unknown>][];
  return Object.fromEntries(methods.map(([name, method]) => [name, guard(name, method)])) as unknown as Store;
}

function storeOver(db: Kysely<Tables>, disk: Disk, now: () => Instant, list: ErasedList): Store {
  return {
    events: async (classId, after = 0) => (await readJournal(db, classId, after)).map(({ event }) => event),
    classes: () => readClasses(db),
    commit: (batch) => commitBatch(db, batch, now()),
    reply: (classId, updateId) => readReply(db, classId, updateId),
    keepReply: (classId, updateId, reply, at, by) =>
      keepReply(db, { class_id: classId, update_id: updateId, reply, at }, by),
    due: (at) => readDue(db, at),
    nextDue: () => readNextDue(db),

    shown: (classId, audience, after, limit) => readShown(db, classId, audience, after, limit),
    outbox: (channel, limit) => outbox.readOutbox(db, channel, limit),
    outboxSending: (key, at) => outbox.markSending(db, key, at),
    outboxSent: (key, platformId) => outbox.markSent(db, key, platformId),
    outboxStuck: (key, why) => outbox.markStuck(db, key, why),
    outboxAgain: (key) => outbox.markWaiting(db, key),
    stuck: (classId) => outbox.readStuck(db, classId),

    places: (classId) => doors.readPlaces(db, classId),
    bindPlace: (classId, place, audience) => doors.bindPlace(db, classId, place, audience),
    movePlace: (classId, from, to) => doors.movePlace(db, classId, from, to),
    identity: (channel, tenant, user) => doors.readIdentity(db, channel, tenant, user),
    bindIdentity: (identity) => doors.bindIdentity(db, identity),
    saveSlip: (hash, slip) => doors.saveSlip(db, hash, slip),
    slip: (hash) => doors.readSlip(db, hash),
    slipsOf: (classId) => doors.readSlips(db, classId),
    revokeSlips: (classId, person) => doors.revokeSlips(db, classId, person),
    secondKey: (classId, person, change) => secondKey(db, classId, person, change),
    saveSession: (session) => doors.saveSession(db, session),
    session: (id) => doors.readSession(db, id),
    endSession: (id) => doors.endSession(db, id),

    evidence: (query) => readEvidence(db, query),
    sealedWords: (ref, by, at) => lookAtSealed(db, ref, by, at),
    sealedLooks: (ref) => readSealedLooks(db, ref),
    exportPerson: (classId, person) => exportPerson(db, classId, person),
    erasePerson: (classId, person) => erasePerson({ db, disk, list, now: now() }, classId, person),
    expireWords: (classId, before, how) => expireWords(db, classId, before, now(), how),
    expireLevels: (classId, before, how) => expireLevels(db, classId, before, how),
    expireSealed: (classId, before) => expireSealed(db, classId, before),
    expireDoors: (at) => expireDoors(db, at),
    sweep: () => disk.sweep(),
    backup: (file) => disk.backup(file),
    getNote: (name) => readNote(db, name),
    setNote: (name, value) => writeNote(db, name, value),
    close: () => db.destroy(),
  };
}

/** Opens a store over a database, bringing its schema up to date and finishing what was cut off; `where` is how errors name it. */
export async function openStore(
  { db, raw }: Opened,
  where: string,
  now: () => Instant,
  list: ErasedList,
): Promise<Store> {
  try {
    const disk = sqliteDisk(db, raw);
    await migrate(db, now);
    await finishErasures({ db, disk, list, now: now() });
    return guarded(storeOver(db, disk, now, list), where);
  } catch (error) {
    await db.destroy();
    throw error;
  }
}
