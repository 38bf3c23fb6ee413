import type { ClassId, GroupId, PassageId, PersonId, PostId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import type { Telling } from '../../shared/tellings.js';
import type { Place } from './store.js';

type Json = string;

/** Rows as they lie in the database; JSON is text and instants are whole milliseconds, so that any SQL database can hold them. */
export interface Tables {
  migration: { number: number; name: string; at: Instant };
  note: { name: string; value: string };
  /** Numbers that only grow; "seq" orders all messages of the store. */
  counter: { name: string; value: number };
  class: { class_id: ClassId; version: number; due_at: Instant | null };
  event: EventRow;
  said: SaidRow;
  sealed: SealedRow;
  sealed_look: { ref: string; by_person: PersonId; at: Instant };
  /** Whose post is whose. */
  post: PostRow;
  inbox: { class_id: ClassId; update_id: string; at: Instant; reply: string };
  shown: ShownRow;
  about: AboutRow;
  outbox: OutboxRecord;
  evidence: {
    class_id: ClassId;
    key: string;
    person: PersonId;
    group_id: GroupId;
    passage: PassageId | null;
    at: Instant;
    body: Json;
    sum: number | null;
  };
  place: PlaceColumns & { class_id: ClassId; audience_to: AudienceTo; audience_id: string };
  identity: {
    channel: Place['channel'];
    tenant: string;
    user_id: string;
    class_id: ClassId;
    person: PersonId;
  };
  slip: {
    hash: string;
    class_id: ClassId;
    person: PersonId;
    made_at: Instant;
    expires_at: Instant;
    revoked: number;
  };
  second_key: {
    class_id: ClassId;
    person: PersonId;
    kind: 'pictures' | 'passphrase';
    hash: string;
    misses: number;
    missed_at: Instant | null;
  };
  session: {
    id: string;
    class_id: ClassId;
    person: PersonId;
    started_at: Instant;
    seen_at: Instant;
    expires_at: Instant;
  };
  /** Erasures that were asked for; one without `done_at` is finished when the store is opened. */
  erasure: { class_id: ClassId; person: PersonId; asked_at: Instant; done_at: Instant | null };
}

export type AudienceTo = 'channel' | 'person' | 'staff';

interface PlaceColumns {
  channel: Place['channel'];
  tenant: string;
  room: string;
}

/** An event without what anybody said; `form` says which form of its type the body has. */
export interface EventRow {
  class_id: ClassId;
  version: number;
  type: string;
  form: number;
  at: Instant;
  body: Json;
  sum: number | null;
}

/** One text of one person, the n-th of its event. `about` is another person whom it concerns, say a tutor's note on a post. */
export interface SaidRow {
  class_id: ClassId;
  version: number;
  n: number;
  what: 'nickname' | 'words';
  person: PersonId;
  about: PersonId | null;
  at: Instant;
  text: string | null;
  gone: 'expired' | 'erased' | null;
  sum: number | null;
}

/** Words of an alarm. */
export interface SealedRow {
  ref: string;
  class_id: ClassId;
  person: PersonId;
  at: Instant;
  text: string;
  sum: number | null;
}

export interface PostRow {
  class_id: ClassId;
  post: PostId;
  person: PersonId;
}

/** The newest state of a message; either `message` or `look` is set. `audience_id` is empty for the staff of a whole class. */
export interface ShownRow {
  class_id: ClassId;
  key: string;
  seq: number;
  audience_to: AudienceTo;
  audience_id: string;
  at: Instant;
  message: Json | null;
  look: Json | null;
}

/** A person whom a message or a stored reply is about, so that it can be blanked with them. */
export interface AboutRow {
  class_id: ClassId;
  what: 'message' | 'reply';
  key: string;
  person: PersonId;
}

/** A message on its way out; the words go once it is sent, the platform's id stays. */
export interface OutboxRecord extends PlaceColumns {
  key: string;
  seq: number;
  class_id: ClassId;
  message_key: string;
  does: Telling['do'];
  state: 'waiting' | 'sending' | 'sent' | 'stuck';
  at: Instant;
  telling: Json | null;
  sending_at: Instant | null;
  platform_id: string | null;
  /** The practice that it belongs to, null for none. */
  practice: string | null;
  why: string | null;
}
