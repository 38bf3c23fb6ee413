import type { Kysely } from 'kysely';
import type { ClassEvent } from '../../shared/events.js';
import type { ClassId, PersonId, PostId } from '../../shared/ids.js';
import { concernOf } from './concerns.js';
import { readSlips } from './doors.js';
import { readEvidence } from './evidence.js';
import { readJournal } from './journal.js';
import { readShown } from './shown.js';
import type { Tables } from './tables.js';

/** Whether an event is about a person or their post; an answer to their question is its own pupil's. */
function isAbout(event: ClassEvent, person: PersonId, posts: ReadonlySet<PostId>): boolean {
  return concernOf(event).persons.includes(person) || ('post' in event && posts.has(event.post));
}

async function readAccess(
  db: Kysely<Tables>,
  classId: ClassId,
  person: PersonId,
): Promise<Readonly<Record<string, unknown>>> {
  const sessions = await db
    .selectFrom('session')
    .select(['started_at as startedAt', 'seen_at as seenAt', 'expires_at as expiresAt'])
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .orderBy('started_at')
    .execute();
  const identities = await db
    .selectFrom('identity')
    .select(['channel', 'tenant', 'user_id as user'])
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .execute();
  const places = await db
    .selectFrom('place')
    .select(['channel', 'tenant', 'room'])
    .where('class_id', '=', classId)
    .where('audience_to', '=', 'person')
    .where('audience_id', '=', person)
    .execute();
  const secondKeys = await db
    .selectFrom('second_key')
    .select(['kind', 'misses', 'missed_at as missedAt'])
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .execute();
  return { slips: await readSlips(db, classId, person), secondKeys, sessions, identities, places };
}

/** All that is held on a person as plain data: words, posts, evidence, events, messages, slips and sessions without their secrets. Sealed words are named and not given. */
export async function exportPerson(
  db: Kysely<Tables>,
  classId: ClassId,
  person: PersonId,
): Promise<Readonly<Record<string, unknown>>> {
  const said = await db
    .selectFrom('said')
    .select(['version', 'what', 'at', 'text', 'gone'])
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .orderBy('version')
    .orderBy('n')
    .execute();
  const owned = await db
    .selectFrom('post')
    .select('post')
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .execute();
  const sealed = await db
    .selectFrom('sealed')
    .select(['ref', 'at'])
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .orderBy('at')
    .execute();
  const looksAtSealed = await db
    .selectFrom('sealed_look')
    .select(['ref', 'at'])
    .where('by_person', '=', person)
    // A person's id is one of their class only, and so is the beginning of a reference.
    .where('ref', 'like', `${classId}/%`)
    .orderBy('at')
    .execute();
  const posts = new Set(owned.map(({ post }) => post));
  const journal = await readJournal(db, classId, 0);
  return {
    classId,
    person,
    nicknames: said
      .filter(({ what }) => what === 'nickname')
      .map(({ at, text, gone }) => ({ at, text, gone })),
    words: said.filter(({ what }) => what === 'words').map(({ at, text, gone }) => ({ at, text, gone })),
    sealed,
    looksAtSealed,
    posts: [...posts],
    evidence: await readEvidence(db, { classId, person }),
    events: journal.filter(({ event }) => isAbout(event, person, posts)),
    messages: (await readShown(db, classId, { to: 'person', person }, 0, Number.MAX_SAFE_INTEGER)).map(
      ({ at, message }) => ({ at, message }),
    ),
    ...(await readAccess(db, classId, person)),
  };
}
