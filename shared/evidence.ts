import type { GroupId, PassageId, PersonId, PostId } from './ids.js';
import type { Reason } from './judgements.js';
import type { Doing, Given, Help, Level } from './strategies.js';
import type { Instant } from './time.js';

/**
 * One try of one pupil, as the evidence table keeps it; written again under the same `post` when a tutor overrules or a
 * second judgement comes. `level` is null where there is none yet ("unsure" is no try until it is settled).
 */
export interface EvidenceRow {
  /** The post's id, or a key of its own for a note from a live session. */
  readonly key: string;
  readonly post: PostId | null;
  readonly person: PersonId;
  readonly group: GroupId;
  readonly passage: PassageId | null;
  readonly stop: number | null;
  readonly do: Doing;
  /** Level of the first draft: the evidence. */
  readonly level: Level | null;
  /** Level of the draft that was posted: gain. */
  readonly postedLevel: Level | null;
  readonly value: string | null;
  /** How sure the judge was, 0..1. */
  readonly probability: number | null;
  readonly reasons: readonly Reason[];
  readonly given: Given;
  readonly help: Help;
  readonly late: boolean;
  /** Whether the pupil led when giving it. */
  readonly led: boolean;
  readonly at: Instant;
  /** School day in the class's zone, "2026-11-25": a sitting. */
  readonly day: string;
  /** Who had the last word on `level`. */
  readonly settledBy: 'first judgement' | 'second judgement' | 'tutor';
  /** The clarified word as it stands in the segment, null where it isn't found there. */
  readonly word: string | null;
}
