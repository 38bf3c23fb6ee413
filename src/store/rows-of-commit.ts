import type { ClassEvent } from '../../shared/events.js';
import type { ClassId, PersonId, PostId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { concernOf, postIn, type Concern } from './concerns.js';
import { lift } from './lifting.js';
import type { Commit } from './store.js';
import type { AboutRow, EventRow, PostRow, SaidRow, SealedRow, Tables } from './tables.js';
import { sumOfEvent, sumOfEvidence, sumOfSaid, sumOfSealed } from './sums.js';
import { formOf } from './upcast.js';

/** Rows that a batch of commits adds, table by table, so that each table is written once. */
export interface Rows {
  readonly event: EventRow[];
  readonly said: SaidRow[];
  readonly sealed: SealedRow[];
  readonly post: PostRow[];
  readonly about: AboutRow[];
  readonly inbox: Tables['inbox'][];
  readonly evidence: Tables['evidence'][];
  readonly erasure: Tables['erasure'][];
}

/** No rows yet. */
export function noRows(): Rows {
  return { event: [], said: [], sealed: [], post: [], about: [], inbox: [], evidence: [], erasure: [] };
}

/** Whose post it is, where that is known. */
export type OwnerOf = (classId: ClassId, post: PostId) => PersonId | undefined;

/** Everybody a concern is about: those named and the owners of the posts. */
export function peopleOf(classId: ClassId, concern: Concern, ownerOf: OwnerOf): ReadonlySet<PersonId> {
  const owners = concern.posts.flatMap((post) => ownerOf(classId, post) ?? []);
  return new Set([...concern.persons, ...owners]);
}

function addWords(
  rows: Rows,
  classId: ClassId,
  version: number,
  event: ClassEvent,
  ownerOf: OwnerOf,
): string {
  const { body, words } = lift(event, (n) => `${classId}/${version}/${n}`);
  if (words.length === 0) return body;
  const naming = event.type === 'person-added' || event.type === 'person-renamed';
  const concern = concernOf(event);
  const person = 'person' in event ? event.person : concern.posts[0] && ownerOf(classId, concern.posts[0]);
  for (const { kind, n, by, text } of words) {
    const at = event.at;
    if (kind === 'sealed') {
      const row = { ref: `${classId}/${version}/${n}`, class_id: classId, person: person ?? by, at, text };
      rows.sealed.push({ ...row, sum: sumOfSealed(row) });
      continue;
    }
    // A nickname is that of the named person, whoever typed it.
    const whole = { class_id: classId, version, n, person: naming ? event.person : by, text };
    rows.said.push({
      ...whole,
      what: naming ? 'nickname' : 'words',
      about: naming || person === by ? null : (person ?? null),
      at,
      gone: null,
      sum: sumOfSaid(whole),
    });
  }
  return body;
}

function addEvent(rows: Rows, classId: ClassId, version: number, event: ClassEvent, ownerOf: OwnerOf): void {
  const body = addWords(rows, classId, version, event, ownerOf);
  const { type, at } = event;
  const row = { class_id: classId, version, type, form: formOf(type), at, body };
  rows.event.push({ ...row, sum: sumOfEvent(row) });
  if (event.type === 'person-erased') {
    rows.erasure.push({ class_id: classId, person: event.person, asked_at: event.at, done_at: null });
  }
}

/** The posts that events bring up, so that their owners are known before anything is told. */
export function postsOf({ classId, events }: Commit): readonly PostRow[] {
  return events.flatMap((event) => {
    const post = postIn(event);
    return post ? [{ class_id: classId, ...post }] : [];
  });
}

/** Adds the rows of one commit that follows a version; gives who each event is about. */
export function addCommit(
  rows: Rows,
  commit: Commit,
  after: number,
  ownerOf: OwnerOf,
  now: Instant,
): readonly ReadonlySet<PersonId>[] {
  const { classId, events, inbox, evidence } = commit;
  events.forEach((event, index) => addEvent(rows, classId, after + index + 1, event, ownerOf));
  const people = events.map((event) => peopleOf(classId, concernOf(event), ownerOf));
  for (const row of evidence) {
    const { key, person, group, passage, at } = row;
    const whole = { class_id: classId, key, person, body: JSON.stringify(row) };
    rows.evidence.push({ ...whole, group_id: group, passage, at, sum: sumOfEvidence(whole) });
  }
  if (inbox) {
    const at = events[0]?.at ?? now;
    rows.inbox.push({ class_id: classId, update_id: inbox.updateId, at, reply: inbox.reply });
    for (const person of new Set(people.flatMap((some) => [...some]))) {
      rows.about.push({ class_id: classId, what: 'reply', key: inbox.updateId, person });
    }
  }
  return people;
}
