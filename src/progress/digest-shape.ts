import type { PersonId, PostId } from '../../shared/ids.js';
import type { Doing, Given, Level, Relationship, Strategy } from '../../shared/strategies.js';
import type { Instant } from '../../shared/time.js';
import type { Suggestion } from './suggestions.js';
import type { StrategyProgress } from './verdict.js';
import type { CheckedPost, TutorAgreement } from './week-check.js';

export type ProgressByStrategy = Readonly<Record<Strategy, StrategyProgress>>;

/** A quotation that stands for a pupil's tries at one thing, and why it was judged as it was, in a tutor's words. */
export interface QuotedTry {
  readonly text: string;
  readonly reason: string;
  readonly post: PostId | null;
  readonly do: Doing;
  readonly level: Level | null;
}

/** What has been seen of a pupil, without a verdict: counts by what was done, and the newest public words. */
export interface SeenSoFar {
  readonly counts: Readonly<Record<Doing, number>>;
  readonly quotations: readonly { readonly post: PostId; readonly do: Doing; readonly text: string }[];
}

export interface PupilDigest {
  readonly nickname: string;
  /** How often the pupil led. */
  readonly led: number;
  /** Posts that are public or wait for an adult. */
  readonly posts: number;
  /** From typed evidence alone. */
  readonly strategies: ProgressByStrategy;
  readonly evidence: readonly QuotedTry[];
  readonly person: PersonId;
  /** Evidence that was said, scribed or heard, each apart; only ways that occur. */
  readonly otherwise: readonly { readonly given: Given; readonly strategies: ProgressByStrategy }[];
  readonly seen: SeenSoFar;
  readonly away: boolean;
}

/** The group as a whole, from typed evidence. */
export interface GroupLine {
  readonly tries: number;
  readonly met: number;
  /** Questions by where the answer lives. */
  readonly mix: Readonly<Record<Relationship | 'unsure', number>>;
  readonly words: readonly string[];
}

/** A prediction that nobody has gone back to; the outcome is computed, for staff only, and null where it can't be known. */
export interface OpenPrediction {
  readonly post: PostId;
  readonly nickname: string;
  readonly text: string;
  readonly outcome: 'came true' | 'partly' | 'off track' | null;
}

export interface PostToCheck extends CheckedPost {
  readonly nickname: string;
  readonly do: Doing;
  readonly text: string;
  readonly level: Level | null;
}

/** What a tutor reads before the next session: the named fields of the command line first, then what the tutor's page adds. */
export interface Digest {
  readonly passages: readonly {
    readonly title: string;
    readonly segments: number;
    readonly closed: number;
  }[];
  readonly pupils: readonly PupilDigest[];
  /** Posts that wait for an adult. */
  readonly held: number;
  readonly alarms: number;
  readonly words: readonly {
    readonly word: string;
    readonly pupils: readonly string[];
    readonly meaning: string | null;
    readonly posts: readonly PostId[];
  }[];
  readonly next: readonly Suggestion[];
  readonly at: Instant;
  readonly group: GroupLine;
  readonly notLed: readonly string[];
  /** Pupils who answered nobody on the passage read now or last. */
  readonly notAnswered: readonly string[];
  readonly predictions: readonly OpenPrediction[];
  readonly agreement: TutorAgreement;
  readonly check: readonly PostToCheck[];
}
