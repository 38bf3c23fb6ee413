import type { ClassEvent } from '../../shared/events.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import type { ClassId, GroupId, PassageId, PersonId } from '../../shared/ids.js';
import type { Look } from '../../shared/looks.js';
import type { Audience, Message } from '../../shared/messages.js';
import type { Telling, MessageKey } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';

/** Where messages go: one room of a class's group, its staff, or one person's tray; a channel kind and an address within it. */
export interface Place {
  readonly channel: 'room' | 'discord' | 'slack';
  readonly tenant: string;
  readonly room: string;
}

/** One message on its way out: key `class/version/n`, where n is unique in the store. */
export interface OutboxRow {
  readonly key: string;
  readonly classId: ClassId;
  readonly place: Place;
  readonly telling: Telling;
  readonly at: Instant;
  /** When sending began, null while it waits; found set after a crash, nobody knows whether it arrived. */
  readonly sendingAt: Instant | null;
  /** What the platform calls the message of the same key sent to this place before, for replace and withdraw. */
  readonly platformId: string | null;
  /** What the platform calls the first message of the same practice that was sent to this place; left out where there is none. */
  readonly opening?: string;
}

/** A message that couldn't be sent and stops its place until somebody tries it again. */
export interface StuckRow {
  readonly key: string;
  readonly classId: ClassId;
  readonly place: Place;
  readonly at: Instant;
  readonly why: string;
}

/** A message as the store holds it for display, newest state after replaces; `seq` grows and is unique in the store. */
export interface ShownMessage {
  readonly seq: number;
  readonly key: MessageKey;
  readonly classId: ClassId;
  readonly audience: Audience;
  /** Where `look` is set, the audience alone; the look's answer takes its place. */
  readonly message: Message;
  /** The look to take when this is shown, null for a message that stands as it is. */
  readonly look: Look | null;
  readonly at: Instant;
}

/** What one move caused, written in one transaction or not at all. */
export interface Commit {
  readonly classId: ClassId;
  /** Version that the events follow; another writer's commit since then gives `{conflict: true}`. */
  readonly expectedVersion: number;
  readonly events: readonly ClassEvent[];
  /** The update's id and the reply to give again for a duplicate; null for the clock's moves. */
  readonly inbox: { readonly updateId: string; readonly reply: string } | null;
  /** `event` is the index of the event that is told; without it the telling counts as about everyone whom the commit is about. */
  readonly tellings: readonly { readonly telling: Telling; readonly at: Instant; readonly event?: number }[];
  readonly evidence: readonly EvidenceRow[];
  /** When the class next needs the clock, null for never. */
  readonly dueAt: Instant | null;
}

/** What a batch of commits led to: versions in order, and the indexes of those that had been done before. */
export interface Committed {
  readonly versions: readonly number[];
  readonly duplicates: readonly number[];
}

export interface EvidenceQuery {
  readonly classId: ClassId;
  readonly group?: GroupId;
  readonly person?: PersonId;
  readonly passage?: PassageId;
  readonly since?: Instant;
}

/** A signed-in browser; `id` is a hash of what the browser holds. */
export interface Session {
  readonly id: string;
  readonly classId: ClassId;
  readonly person: PersonId;
  readonly startedAt: Instant;
  readonly seenAt: Instant;
  readonly expiresAt: Instant;
}

/** A way in: a pupil's slip (good for a term) or a staff link. The secret itself is never stored, only its hash. */
export interface Slip {
  readonly classId: ClassId;
  readonly person: PersonId;
  readonly madeAt: Instant;
  readonly expiresAt: Instant;
  readonly revoked: boolean;
}

/** What is asked for beside a slip or a link, as a hash with its salt, and how the tries at it went. */
export interface SecondKey {
  readonly kind: 'pictures' | 'passphrase';
  readonly hash: string;
  /** Wrong answers in a row. */
  readonly misses: number;
  readonly missedAt: Instant | null;
}

/** Who somebody of a platform is with us. */
export interface Identity {
  readonly channel: 'room' | 'discord' | 'slack';
  readonly tenant: string;
  readonly user: string;
  readonly classId: ClassId;
  readonly person: PersonId;
}

/** How long work lets others have their turn. */
export interface Unhurried {
  /** Between two small steps. */
  pause(): Promise<void>;
  /** Runs the last step with nobody else at the class; whatever holds its words in memory forgets them after. */
  alone(work: () => Promise<void>): Promise<void>;
}

/** The one asynchronous port behind which everything is kept; every store passes the same contract. Failures are `Fault` with code 'disk' or 'in use'. */
export interface Store {
  /** Events of a class in order, what people said put back (or `gone`), sealed words as a reference; old forms upcast. */
  events(classId: ClassId, afterVersion?: number): Promise<readonly ClassEvent[]>;
  classes(): Promise<readonly ClassId[]>;
  /**
   * All commits in one transaction; the versions after each in order, or `conflict` for the first that came too late
   * (then nothing is written). One whose update was seen before writes nothing, is no conflict, and is listed by its
   * index in `duplicates`; its answer is `reply`.
   */
  commit(batch: readonly Commit[]): Promise<Committed | { readonly conflict: ClassId }>;
  /** The stored reply of an update that was seen before, else null. */
  reply(classId: ClassId, updateId: string): Promise<string | null>;
  /** Notes a refusal's reply, so that a duplicate gets the same answer. `by` is whom it answers; without it, any erasure in the class blanks it. */
  keepReply(classId: ClassId, updateId: string, reply: string, at: Instant, by?: PersonId): Promise<void>;
  /** Classes whose due time has come, earliest first. */
  due(now: Instant): Promise<readonly ClassId[]>;
  nextDue(): Promise<Instant | null>;

  /** Messages of exactly this audience, oldest first, after a sequence number; at most `limit`, the newest where there are more. */
  shown(
    classId: ClassId,
    audience: Audience,
    after?: number,
    limit?: number,
  ): Promise<readonly ShownMessage[]>;

  /** Of each place that isn't stuck the message that is next to be sent, longest waiting first; the room needs none, it shows what is stored. */
  outbox(channel: Place['channel'], limit: number): Promise<readonly OutboxRow[]>;
  /** Marks a message as being sent; false where it is marked already. */
  outboxSending(key: string, at: Instant): Promise<boolean>;
  outboxSent(key: string, platformId: string | null): Promise<void>;
  outboxStuck(key: string, why: string): Promise<void>;
  /** Lets a message that is stuck, or whose sending was cut off, wait again. */
  outboxAgain(key: string): Promise<void>;
  stuck(classId: ClassId): Promise<readonly StuckRow[]>;

  places(classId: ClassId): Promise<readonly { readonly place: Place; readonly audience: Audience }[]>;
  bindPlace(classId: ClassId, place: Place, audience: Audience): Promise<void>;
  /** Lets one place take another's part: what waits or is stuck at `from` goes to `to` in order, and `from` is bound no more. */
  movePlace(classId: ClassId, from: Place, to: Place): Promise<void>;
  identity(channel: Identity['channel'], tenant: string, user: string): Promise<Identity | null>;
  bindIdentity(identity: Identity): Promise<void>;

  saveSlip(secretHash: string, slip: Slip): Promise<void>;
  slip(secretHash: string): Promise<Slip | null>;
  slipsOf(classId: ClassId): Promise<readonly Slip[]>;
  /** Revokes a person's slips and ends the sessions made from them. */
  revokeSlips(classId: ClassId, person: PersonId): Promise<void>;
  /** Somebody's second key as it then stands; `change` is made in one transaction with the read, and null takes the key away. */
  secondKey(
    classId: ClassId,
    person: PersonId,
    change?: (key: SecondKey | null) => SecondKey | null,
  ): Promise<SecondKey | null>;
  saveSession(session: Session): Promise<void>;
  session(id: string): Promise<Session | null>;
  endSession(id: string): Promise<void>;

  evidence(query: EvidenceQuery): Promise<readonly EvidenceRow[]>;
  /** Words of an alarm; the look itself is recorded with who and when. */
  sealedWords(ref: string, by: PersonId, at: Instant): Promise<string | null>;
  sealedLooks(ref: string): Promise<readonly { readonly by: PersonId; readonly at: Instant }[]>;

  /** All that is held on a person, as plain data. */
  exportPerson(classId: ClassId, person: PersonId): Promise<Readonly<Record<string, unknown>>>;
  /** Removes all that a person said, their sealed words, evidence, slips, sessions, identities; blanks messages and replies about them; leaves no byte behind. */
  erasePerson(classId: ClassId, person: PersonId): Promise<void>;
  /**
   * Lets words of a class said before an instant go, with older messages and replies and newer ones that repeat them; the
   * number of texts, messages and replies. Nicknames stay as long as the person, sealed words for their own time.
   */
  expireWords(classId: ClassId, before: Instant, how: Unhurried): Promise<number>;
  /** Lets evidence given before an instant go, and what the journal says of how somebody did; the number of such events. */
  expireLevels(classId: ClassId, before: Instant, how: Unhurried): Promise<number>;
  /** Lets words of alarms that were raised before an instant go, with who looked at them; their number. */
  expireSealed(classId: ClassId, before: Instant): Promise<number>;
  /** Lets sessions, slips and links go that open nothing any more. */
  expireDoors(now: Instant): Promise<void>;
  /** Leaves no byte of what has gone. */
  sweep(): Promise<void>;
  /** A consistent copy of the live store into a file that must not exist; writers have their turn meanwhile. */
  backup(file: string): Promise<void>;
  /** Small settings of the installation (schema aside), for instance the demo class's id. */
  getNote(name: string): Promise<string | null>;
  setNote(name: string, value: string): Promise<void>;
  close(): Promise<void>;
}
