import type { EventOf, HeldTimes, HoldReason, PostAudience, SegmentTimes } from '../../shared/events.js';
import type { AlarmId, ClassId, GroupId, PassageId, PersonId, PostId, PracticeId } from '../../shared/ids.js';
import type { Finding, Judgement } from '../../shared/judgements.js';
import type { moderations, outcomes, questionLines, responses } from '../../shared/moves.js';
import type { Role } from '../../shared/roles.js';
import type { Said, Seed } from '../../shared/said.js';
import type {
  Doing,
  FixUp,
  Given,
  Help,
  Level,
  Register,
  Relationship,
  Strategy,
} from '../../shared/strategies.js';
import type { PassageReading, Range } from '../../shared/text.js';
import type { Instant, LocalTime } from '../../shared/time.js';

/** A weekly live session: weekday 1 Monday..7, minute of the day in the class's zone. */
export interface SessionTime {
  readonly weekday: number;
  readonly minute: number;
}

export interface Settings {
  readonly moderation: (typeof moderations)[number];
  readonly sessions: readonly SessionTime[];
  /** Weekdays that are school days, 1..7. */
  readonly schoolDays: readonly number[];
  readonly opensMinute: number;
  readonly closesMinute: number;
  /** Days without school, "2026-12-24". */
  readonly holidays: readonly string[];
  readonly register: Register;
  readonly zone: string;
  readonly order: readonly Strategy[];
  readonly alarmText: string | null;
  readonly alarmNumber: string | null;
  readonly termEnds: string | null;
  /** Days that words are kept after the end of their term. */
  readonly wordsKept: number;
  /** Days after which words go where no end of term is ahead of them. */
  readonly longestKept: number;
  /** The last day of a school year, month and day, "07-31". */
  readonly yearEnds: string;
  /** Years that an alarm's words are kept after the school year in which it was raised. */
  readonly alarmWordsKept: number;
  readonly idleMinutes: number;
  /** Clock minutes after which an alarm that nobody took goes on to the deputy. */
  readonly alarmMinutes: number;
  /** Whether every pupil chooses three pictures and is asked for them at the door. */
  readonly pictureSecret: boolean;
  /** Whether every adult sets a passphrase and is asked for it at the door. */
  readonly staffPassphrase: boolean;
  /** Whether the line between literal and inferential moves with the tutor's checks, or stays where it was measured. */
  readonly questionLine: (typeof questionLines)[number];
}

export interface Person {
  readonly id: PersonId;
  readonly nickname: Said;
  readonly role: Role;
  readonly register: Register | null;
  readonly group: GroupId | null;
  readonly removed: boolean;
  readonly away: boolean;
  readonly goal: Strategy | null;
  readonly help: Readonly<Record<Strategy, Help>>;
  /** Strategies that are closed for this pupil although open for the group. */
  readonly closed: readonly Strategy[];
  readonly lastSeen: Instant | null;
  /** Segments in a row that closed without this pupil having been there. */
  readonly missed: number;
}

export interface ShelfPassage {
  readonly id: PassageId;
  readonly grade: number;
  readonly reading: PassageReading;
  readonly gists: Readonly<Record<number, string>>;
  readonly spareQuestions: Readonly<Record<number, string>>;
  readonly withdrawn: boolean;
}

/** Where a post stands; each holds only what exists then. */
export type PostStage =
  | { readonly stage: 'draft'; readonly postsItselfAt: Instant | null }
  | {
      readonly stage: 'held';
      readonly why: HoldReason;
      readonly since: Instant;
      readonly times: HeldTimes;
      readonly reminded: 'no' | 'tutor' | 'deputy';
    }
  | { readonly stage: 'public'; readonly at: Instant; readonly to: PostAudience }
  | { readonly stage: 'sent back'; readonly note: Said }
  | { readonly stage: 'left' | 'taken back' | 'removed' };

export interface Post {
  readonly id: PostId;
  readonly person: PersonId | null;
  readonly seeded: 'adult' | 'text' | null;
  readonly group: GroupId;
  readonly passage: PassageId;
  readonly stop: number;
  readonly do: Doing;
  readonly text: Said | Seed;
  readonly word: Said | null;
  readonly offset: number | null;
  readonly to: PostId | null;
  readonly place: Range | null;
  readonly fixUp: FixUp | null;
  readonly round: number;
  readonly stage: PostStage;
  /** The first draft's judgement: the evidence. */
  readonly first: Judgement | null;
  readonly latest: Judgement | null;
  readonly second: Judgement | null;
  readonly overruled: { readonly level: Level; readonly as: 'literal' | 'inferential' | null } | null;
  readonly saidWhere: Relationship | null;
  readonly findings: readonly Finding[];
  readonly given: Given;
  readonly help: Help;
  readonly led: boolean;
  readonly late: boolean;
  readonly at: Instant;
  /** School day in the class's zone, "2026-11-25". */
  readonly day: string;
  readonly response: (typeof responses)[number] | null;
  readonly outcome: (typeof outcomes)[number] | null;
}

/** Who has been where in the open segment. */
export interface SegmentState {
  readonly stop: number;
  readonly leader: PersonId | null;
  readonly partner: PersonId | null;
  readonly active: readonly PersonId[];
  readonly seen: readonly PersonId[];
  /** Who has predicted or passed, and so sees the segment. */
  readonly passed: readonly PersonId[];
  readonly nudged: readonly PersonId[];
  readonly offeredTo: readonly PersonId[] | null;
  readonly spareAsked: boolean;
  readonly openedAt: Instant;
  /** The class's version at its opening; names its card. */
  readonly card: number;
  readonly times: SegmentTimes;
  /** The step of help that was last given, by "person/do". */
  readonly helped: Readonly<Record<string, number>>;
}

export interface Leg {
  readonly endsAt: Instant | null;
  readonly segments: number;
  readonly done: number;
  readonly leaders: readonly PersonId[];
  readonly quietPassed: readonly PersonId[];
  /** Who has had the one nudge of the leg. */
  readonly nudged: readonly PersonId[];
  /** The school day of each segment that was opened. */
  readonly openedOn: readonly string[];
  readonly sessionOn: LocalTime | null;
}

/** A group's practice, a union by phase. */
export type Practice =
  | { readonly phase: 'none' }
  | {
      readonly phase: 'waiting';
      readonly practice: PracticeId;
      readonly passage: PassageId;
      readonly nextStop: number;
      readonly leg: Leg | null;
      readonly opensAt: Instant;
      /** Null while the leg's segments are done and nothing opens. */
      readonly opensOn: LocalTime | null;
      /** Who has predicted or passed before the next segment opens. */
      readonly passed: readonly PersonId[];
      readonly lastClosed: { readonly segment: SegmentState; readonly at: Instant } | null;
    }
  | {
      readonly phase: 'open';
      readonly practice: PracticeId;
      readonly passage: PassageId;
      readonly leg: Leg;
      readonly segment: SegmentState;
    }
  | {
      readonly phase: 'paused';
      readonly practice: PracticeId;
      readonly passage: PassageId;
      readonly why: EventOf<'practice-paused'>['why'];
      readonly since: Instant;
      readonly was: Extract<Practice, { phase: 'waiting' | 'open' }>;
    };

export interface Group {
  readonly id: GroupId;
  readonly name: string;
  readonly open: readonly Strategy[];
  /** Strategies just opened, for which an adult leads first. */
  readonly justOpened: readonly Strategy[];
  readonly queue: readonly PassageId[];
  /** Everyone's place in the lot, front first, over passages. */
  readonly lot: readonly PersonId[];
  readonly lastLeader: PersonId | null;
  readonly led: Readonly<Record<PersonId, number>>;
  readonly practice: Practice;
  readonly finished: readonly { readonly passage: PassageId; readonly at: Instant }[];
  readonly aloneTimes: number;
  /** Legs begun, over passages. */
  readonly legs: number;
  /** Version at which the posts that wait now began to wait; names the staff's one message about them. */
  readonly waitingFrom: number;
  /** What a close changed, so that it can be undone. */
  readonly beforeClose: BeforeClose | null;
}

/** A group as it stood when its last segment closed. */
export interface BeforeClose {
  readonly at: Instant;
  readonly practice: Extract<Practice, { phase: 'open' }>;
  readonly queue: readonly PassageId[];
  readonly lot: readonly PersonId[];
  readonly lastLeader: PersonId | null;
  readonly led: Readonly<Record<PersonId, number>>;
  readonly finished: Group['finished'];
}

export interface Alarm {
  readonly id: AlarmId;
  readonly person: PersonId;
  readonly at: Instant;
  readonly escalatesAt: Instant;
  readonly acknowledgedBy: PersonId | null;
  readonly escalated: boolean;
}

/** A rehearsal of the chain of calls; of nobody but the adult who tries it. */
export interface Trial {
  readonly id: AlarmId;
  readonly by: PersonId;
  readonly at: Instant;
  readonly escalatesAt: Instant;
  readonly acknowledgedBy: PersonId | null;
  readonly escalated: boolean;
}

/** The class: everything that decide needs, rebuilt from the journal by evolve alone. */
export interface ClassState {
  readonly id: ClassId;
  /** Number of events evolved; ids are minted from it. */
  readonly version: number;
  readonly made: boolean;
  /** When the last event came: the machine was awake then. */
  readonly lastAt: Instant;
  readonly name: string;
  readonly settings: Settings;
  readonly people: Readonly<Record<PersonId, Person>>;
  readonly groups: Readonly<Record<GroupId, Group>>;
  readonly shelf: Readonly<Record<PassageId, ShelfPassage>>;
  readonly posts: Readonly<Record<PostId, Post>>;
  readonly alarms: Readonly<Record<AlarmId, Alarm>>;
  /** Rehearsals of alarms, apart from them, so that nothing counts them in. */
  readonly trials: Readonly<Record<AlarmId, Trial>>;
  /** The class's own line between literal and inferential, added to the judge's: a chance, -0.15..0.15, and when it last moved. */
  readonly line: { readonly shift: number; readonly movedAt: Instant };
  /** When each word comes back, by person and word in lower case. */
  readonly reviews: Readonly<Record<PersonId, Readonly<Record<string, Instant>>>>;
  /** How often in a row a word was known, by person and word. */
  readonly reviewSteps: Readonly<Record<PersonId, Readonly<Record<string, number>>>>;
  /** Posts of a group on a passage, oldest first, by "group/passage". */
  readonly postsOf: Readonly<Record<string, readonly PostId[]>>;
  /** Posts that are drafts or wait for an adult. */
  readonly pending: readonly PostId[];
  /** Meanings that a tutor confirmed (`meaning-confirmed`), by the word in lower case. */
  readonly meanings: Readonly<Record<string, Said>>;
}
