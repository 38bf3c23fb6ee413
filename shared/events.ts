import type { AlarmId, GroupId, PassageId, PersonId, PostId, PracticeId } from './ids.js';
import type { Finding, Judgement } from './judgements.js';
import type { Actor, SettingName, outcomes, responses } from './moves.js';
import type { Role } from './roles.js';
import type { Said, Sealed } from './said.js';
import type { Doing, FixUp, Given, Help, Level, Register, Relationship, Strategy } from './strategies.js';
import type { PassageReading, Range } from './text.js';
import type { Instant, LocalTime } from './time.js';

/** When and by whom; on every event. */
interface Meta {
  readonly at: Instant;
  readonly by: Actor;
}
type E<Type extends string, Rest = unknown> = { readonly type: Type } & Meta & Rest;

/** The absolute instants of an open segment, reckoned once when it opens and again when it is extended or resumed. */
export interface SegmentTimes {
  readonly nudgeAt: Instant;
  readonly offerAt: Instant;
  readonly spareAt: Instant;
  readonly wrapAt: Instant;
  /** End of the first school day, when a quorum suffices. */
  readonly quorumAt: Instant;
  readonly closesAt: Instant;
  /** The wall clock of the close, since children see a day and a time. */
  readonly closesOn: LocalTime;
}

/** When somebody is called about a post that waits for an adult. */
export interface HeldTimes {
  /** When the spare question opens the talk in place of a leader's question that waits; null for any other post. */
  readonly spareAt: Instant | null;
  readonly remindAt: Instant;
  readonly deputyAt: Instant;
}

/** Who may see a post that is through: the group, or staff alone (a sum-up by somebody who doesn't lead). */
export type PostAudience = 'group' | 'staff';
export type PostedHow = 'by the pupil' | 'by itself' | 'by staff';

export type LegEndReason = 'reached the session' | 'all segments done' | 'ended by staff' | 'nobody active';
export type CloseReason = 'all done' | 'quorum' | 'time' | 'staff' | 'read live' | 'leg ended';
export type HoldReason = 'doubtful' | 'everything' | 'nothing yet' | 'alarm';

/** Class and people. */
type ClassEvents =
  | E<'class-made', { readonly name: string; readonly zone: string; readonly register: Register }>
  | E<'setting-changed', { readonly setting: SettingName; readonly value: string }>
  | E<
      'strategy-opened',
      { readonly strategy: Strategy; readonly group: GroupId | null; readonly pupil: PersonId | null }
    >
  | E<
      'strategy-closed',
      { readonly strategy: Strategy; readonly group: GroupId | null; readonly pupil: PersonId | null }
    >
  | E<'group-made', { readonly group: GroupId; readonly name: string }>
  | E<
      'person-added',
      {
        readonly person: PersonId;
        readonly nickname: Said;
        readonly role: Role;
        readonly group: GroupId | null;
        readonly register: Register | null;
      }
    >
  | E<'person-renamed', { readonly person: PersonId; readonly nickname: Said }>
  | E<'pupil-moved', { readonly person: PersonId; readonly group: GroupId }>
  | E<'person-removed', { readonly person: PersonId }>
  | E<'person-erased', { readonly person: PersonId }>
  | E<'goal-set', { readonly person: PersonId; readonly strategy: Strategy }>
  | E<
      'help-changed',
      {
        readonly person: PersonId;
        readonly strategy: Strategy;
        readonly help: Help;
        readonly why: 'two or three good turns' | 'two turns in a row below' | 'set by staff';
      }
    >;

/** The shelf. */
type ShelfEvents =
  | E<
      'passage-added',
      { readonly passage: PassageId; readonly grade: number; readonly reading: PassageReading }
    >
  | E<'passage-withdrawn', { readonly passage: PassageId }>
  | E<'gist-written', { readonly passage: PassageId; readonly stop: number; readonly text: string }>
  | E<'spare-question-written', { readonly passage: PassageId; readonly stop: number; readonly text: string }>
  | E<'passage-set', { readonly passage: PassageId; readonly group: GroupId }>
  | E<'passage-unset', { readonly passage: PassageId; readonly group: GroupId }>;

/** The running of a practice. `stop` counts segments of the passage from 0. */
type PracticeEvents =
  | E<
      'practice-started',
      { readonly group: GroupId; readonly practice: PracticeId; readonly passage: PassageId }
    >
  | E<
      'leg-began',
      {
        readonly group: GroupId;
        readonly endsAt: Instant | null;
        readonly segments: number;
        /** Drawn by lot, one for each segment of the leg. */
        readonly leaders: readonly PersonId[];
        readonly firstOpensAt: Instant;
        readonly firstOpensOn: LocalTime;
        /** The live session that the leg runs to. */
        readonly sessionOn: LocalTime | null;
      }
    >
  | E<
      'segment-opened',
      {
        readonly group: GroupId;
        readonly stop: number;
        readonly leader: PersonId | null;
        /** Who must be heard for "all done" and the quorum. */
        readonly active: readonly PersonId[];
        readonly times: SegmentTimes;
        /** School day in the class's zone, "2026-11-25". */
        readonly day: string;
      }
    >
  | E<
      'segment-closed',
      {
        readonly group: GroupId;
        readonly stop: number;
        readonly why: CloseReason;
        readonly nextOpensAt: Instant | null;
        readonly nextOpensOn: LocalTime | null;
        /** Whose lead counts in the lot: who asked while leading. */
        readonly led: readonly PersonId[];
      }
    >
  | E<'close-undone', { readonly group: GroupId; readonly stop: number; readonly times: SegmentTimes }>
  | E<'segment-extended', { readonly group: GroupId; readonly stop: number; readonly times: SegmentTimes }>
  | E<
      'leg-ended',
      {
        readonly group: GroupId;
        readonly why: LegEndReason;
        readonly nextLegAt: Instant | null;
        readonly nextLegOn: LocalTime | null;
        readonly sessionOn: LocalTime | null;
      }
    >
  | E<
      'practice-paused',
      { readonly group: GroupId; readonly why: 'staff' | 'nobody active' | 'one pupil alone' }
    >
  | E<
      'practice-resumed',
      {
        readonly group: GroupId;
        readonly times: SegmentTimes | null;
        readonly opensAt: Instant | null;
        readonly opensOn: LocalTime | null;
      }
    >
  | E<
      'passage-finished',
      { readonly group: GroupId; readonly passage: PassageId; readonly next: PassageId | null }
    >
  | E<
      'person-seen',
      { readonly person: PersonId; readonly group: GroupId | null; readonly stop: number | null }
    >
  | E<'person-away', { readonly person: PersonId }>
  | E<'prediction-passed', { readonly person: PersonId; readonly stop: number }>
  | E<
      'leader-changed',
      {
        readonly group: GroupId;
        readonly stop: number;
        readonly leader: PersonId | null;
        readonly partner: PersonId | null;
        readonly why: 'named' | 'skipped' | 'paired' | 'took the lead' | 'quiet pass' | 'away';
      }
    >
  | E<'leader-nudged', { readonly group: GroupId; readonly stop: number; readonly person: PersonId }>
  | E<'pupil-nudged', { readonly person: PersonId; readonly stop: number }>
  | E<'lead-offered', { readonly group: GroupId; readonly stop: number; readonly to: readonly PersonId[] }>
  | E<
      'question-seeded',
      {
        readonly group: GroupId;
        readonly stop: number;
        readonly post: PostId;
        readonly text: string;
        readonly from: 'adult' | 'text';
      }
    >
  | E<
      'staff-reminded',
      { readonly group: GroupId | null; readonly of: 'held' | 'held, deputy' | 'alone' | 'split' }
    >;

/** What a pupil sends, from draft to post. */
type PostEvents =
  | E<
      'draft-judged',
      {
        readonly post: PostId;
        readonly person: PersonId;
        readonly group: GroupId;
        readonly passage: PassageId;
        readonly stop: number;
        readonly do: Doing;
        readonly text: Said;
        readonly word: Said | null;
        readonly offset: number | null;
        /** The question that an answer replies to, or the sum-up that an addition adds to. */
        readonly to: PostId | null;
        readonly place: Range | null;
        readonly fixUp: FixUp | null;
        /** 1 for the first draft, the evidence; 2 and 3 for improved ones. */
        readonly round: number;
        /** Null for an addition, which isn't judged, and for a late prediction made after seeing. */
        readonly judgement: Judgement | null;
        readonly findings: readonly Finding[];
        readonly given: Given;
        readonly help: Help;
        readonly led: boolean;
        readonly late: boolean;
        /** School day in the class's zone. */
        readonly day: string;
        readonly postsItselfAt: Instant | null;
      }
    >
  | E<
      'draft-held',
      {
        readonly post: PostId;
        readonly person: PersonId;
        readonly group: GroupId;
        readonly passage: PassageId;
        readonly stop: number;
        readonly do: Doing;
        readonly text: Said;
        readonly word: Said | null;
        readonly offset: number | null;
        readonly to: PostId | null;
        readonly place: Range | null;
        readonly fixUp: FixUp | null;
        readonly findings: readonly Finding[];
        readonly given: Given;
        readonly help: Help;
        readonly led: boolean;
        readonly late: boolean;
        /** School day in the class's zone. */
        readonly day: string;
        /** 1 for a first draft; higher where an improved one is held. */
        readonly round: number;
        readonly times: HeldTimes;
      }
    >
  /** A draft that is through at once; one that waits for an adult has 'post-waits' in its place. */
  | E<'draft-posted', { readonly post: PostId; readonly how: PostedHow; readonly to: PostAudience }>
  | E<
      'post-waits',
      {
        readonly post: PostId;
        readonly why: HoldReason;
        readonly how: PostedHow;
        readonly times: HeldTimes;
      }
    >
  | E<
      'post-released',
      {
        readonly post: PostId;
        readonly judgement: Judgement | null;
        readonly late: boolean;
        readonly to: PostAudience;
      }
    >
  | E<'post-sent-back', { readonly post: PostId; readonly note: Said }>
  | E<'post-removed', { readonly post: PostId }>
  | E<'draft-left', { readonly post: PostId }>
  | E<'post-taken-back', { readonly post: PostId }>
  | E<'where-said', { readonly post: PostId; readonly where: Relationship }>
  | E<'judged-again', { readonly post: PostId; readonly judgement: Judgement }>
  | E<
      'overruled',
      {
        readonly post: PostId;
        readonly level: Level;
        readonly as: 'literal' | 'inferential' | null;
        readonly note: Said | null;
      }
    >
  | E<
      'meaning-confirmed',
      {
        readonly post: PostId;
        readonly word: string;
        readonly meaning: Said;
        /** When the group is first asked for the word again. */
        readonly reviewAt: Instant;
      }
    >
  | E<
      'response-given',
      { readonly post: PostId; readonly response: (typeof responses)[number]; readonly place: Range | null }
    >
  | E<
      'prediction-checked',
      { readonly post: PostId; readonly outcome: (typeof outcomes)[number]; readonly place: Range | null }
    >
  | E<
      'help-given',
      { readonly person: PersonId; readonly do: Doing; readonly stop: number; readonly step: number }
    >
  | E<
      'word-reviewed',
      {
        readonly person: PersonId;
        readonly word: string;
        readonly known: boolean;
        readonly nextAt: Instant;
        readonly step: number;
      }
    >
  | E<
      'live-noted',
      {
        readonly person: PersonId;
        readonly group: GroupId;
        readonly passage: PassageId | null;
        readonly stop: number | null;
        readonly do: Strategy;
        readonly level: Level;
        readonly help: Help;
        readonly given: Given;
        readonly text: Said | null;
        /** School day in the class's zone. */
        readonly day: string;
      }
    >
  | E<'live-led', { readonly person: PersonId; readonly group: GroupId }>;

/** Alarms; the words themselves are sealed. */
type AlarmEvents =
  | E<
      'alarm-raised',
      {
        readonly alarm: AlarmId;
        readonly person: PersonId;
        readonly group: GroupId | null;
        readonly words: Sealed;
        readonly findings: readonly Finding[];
        /** Whether it came from a post or from "Tell a grown-up". */
        readonly from: 'post' | 'tell a grown-up';
        readonly escalatesAt: Instant;
        /** Whether it came in open hours, when somebody is likely to read it. */
        readonly inOpenHours: boolean;
      }
    >
  | E<'alarm-acknowledged', { readonly alarm: AlarmId }>
  | E<'alarm-escalated', { readonly alarm: AlarmId }>;

/** What happened in a class; one stream a class. Old forms are upcast when read. */
export type ClassEvent = ClassEvents | ShelfEvents | PracticeEvents | PostEvents | AlarmEvents;
export type EventName = ClassEvent['type'];
export type EventOf<N extends EventName> = Extract<ClassEvent, { readonly type: N }>;
