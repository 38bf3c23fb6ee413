import type { GroupId, PassageId, PersonId, PostId } from '../../shared/ids.js';
import type { Doing } from '../../shared/strategies.js';
import type { Post } from './state.js';

/** A step that a pupil can take now. */
export type Step =
  | { readonly step: 'look first'; readonly stop: number }
  | { readonly step: 'do'; readonly do: Doing; readonly to: PostId | null }
  | { readonly step: 'check prediction'; readonly post: PostId }
  | { readonly step: 'respond'; readonly post: PostId }
  | { readonly step: 'say where'; readonly post: PostId }
  | { readonly step: 'finish draft'; readonly post: PostId }
  | { readonly step: 'take the lead' }
  | { readonly step: 'review word'; readonly word: string };

/** What a pupil's page shows: where the group is, the one next thing, what else may be done, and the talk that this pupil may see. */
export interface Turn {
  readonly person: PersonId;
  readonly group: GroupId | null;
  readonly passage: PassageId | null;
  readonly stop: number | null;
  readonly phase: 'none' | 'waiting' | 'look first' | 'open' | 'done' | 'paused';
  readonly leads: boolean;
  readonly leader: PersonId | null;
  /** The one next thing; null when there is nothing to do now. */
  readonly next: Step | null;
  readonly also: readonly Step[];
  /** Public posts of the segment that this pupil may see, oldest first; others' answers only once own is given. */
  readonly talk: readonly Post[];
  /** Own drafts and posts that wait. */
  readonly own: readonly Post[];
  /** Sum-ups that closed the earlier segments, in order: "So far". */
  readonly soFar: readonly string[];
  /** When the next segment opens or this one closes; children see a day and a time. */
  readonly until: number | null;
}
