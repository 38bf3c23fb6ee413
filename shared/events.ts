import type { E } from './event-shape.js';
import type { GroupId, PassageId, PersonId, PostId, PracticeId } from './ids.js';
import type { moderations, SettingName } from './moves.js';
import type { AlarmEvents, PostEvents } from './post-events.js';
import type { Role } from './roles.js';
import type { Said } from './said.js';
import type { Help, Register, Strategy } from './strategies.js';
import type { PassageReading } from './text.js';
import type { Instant, LocalTime } from './time.js';

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

export type { HeldTimes, HoldReason, PostAudience, PostedHow } from './post-events.js';

export type LegEndReason = 'reached the session' | 'all segments done' | 'ended by staff' | 'nobody active';
export type CloseReason = 'all done' | 'quorum' | 'time' | 'staff' | 'read live' | 'leg ended';

/** Class and people. */
type ClassEvents =
  | E<
      'class-made',
      {
        readonly name: string;
        readonly zone: string;
        readonly register: Register;
        /** What the class began with; without it, from before this was noted, everything was held. */
        readonly moderation?: (typeof moderations)[number];
      }
    >
  | E<'setting-changed', { readonly setting: SettingName; readonly value: string }>
  | E<
      'strategy-opened',
      { readonly strategy: Strategy; readonly group: GroupId | null; readonly pupil: PersonId | null }
    >
  | E<
      'strategy-closed',
      { readonly strategy: Strategy; readonly group: GroupId | null; readonly pupil: PersonId | null }
    >
  | E<
      'line-moved',
      {
        /** The class's line from now on, -0.15..0.15, added to the judge's. */
        readonly to: number;
        /** How the tutor called the questions that the judge called otherwise. */
        readonly side: 'literal' | 'inferential';
        readonly checked: number;
        readonly differed: number;
      }
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
  /** Their pictures or passphrase were taken back; they choose anew at the next sign-in. */
  | E<'second-key-reset', { readonly person: PersonId }>
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
        /** Who wasn't there although there was time enough. */
        readonly missed: readonly PersonId[];
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
        /** Who led before, and leads another day. */
        readonly from: PersonId | null;
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

/** What happened in a class; one stream a class. Old forms are upcast when read. */
export type ClassEvent = ClassEvents | ShelfEvents | PracticeEvents | PostEvents | AlarmEvents;
export type EventName = ClassEvent['type'];
export type EventOf<N extends EventName> = Extract<ClassEvent, { readonly type: N }>;
