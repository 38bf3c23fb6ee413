import type { E } from './event-shape.js';
import type { AlarmId, GroupId, PassageId, PersonId, PostId } from './ids.js';
import type { Finding, Judgement } from './judgements.js';
import type { outcomes, responses } from './moves.js';
import type { Said, Sealed } from './said.js';
import type { Doing, FixUp, Given, Help, Level, Relationship, Strategy } from './strategies.js';
import type { Range } from './text.js';
import type { Instant } from './time.js';

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

export type HoldReason = 'doubtful' | 'everything' | 'nothing yet' | 'alarm';

/** What a draft carries, whether it was judged or held. */
interface Drafted {
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
  readonly findings: readonly Finding[];
  readonly given: Given;
  readonly help: Help;
  readonly led: boolean;
  readonly late: boolean;
  /** School day in the class's zone, "2026-11-25". */
  readonly day: string;
}

/** What a pupil sends, from draft to post. */
export type PostEvents =
  | E<
      'draft-judged',
      Drafted & {
        /** Null for an addition, which isn't judged, and for a late prediction made after seeing. */
        readonly judgement: Judgement | null;
        readonly postsItselfAt: Instant | null;
      }
    >
  | E<'draft-held', Drafted & { readonly times: HeldTimes }>
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
  /** What says how somebody did is null once the school year is over. */
  | E<'judged-again', { readonly post: PostId; readonly judgement: Judgement | null }>
  | E<
      'overruled',
      {
        readonly post: PostId;
        readonly level: Level | null;
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
        readonly level: Level | null;
        readonly help: Help;
        readonly given: Given;
        readonly text: Said | null;
        /** School day in the class's zone. */
        readonly day: string;
      }
    >
  | E<'live-led', { readonly person: PersonId; readonly group: GroupId }>;

/** Alarms; the words themselves are sealed. */
export type AlarmEvents =
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
  | E<'alarm-escalated', { readonly alarm: AlarmId }>
  /** A rehearsal: the chain of calls is walked, and nothing of it is about a pupil. */
  | E<'alarm-tried', { readonly alarm: AlarmId; readonly escalatesAt: Instant }>
  | E<'trial-acknowledged', { readonly alarm: AlarmId }>
  | E<'trial-escalated', { readonly alarm: AlarmId }>;
