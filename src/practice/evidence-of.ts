import type { ClassEvent, EventOf } from '../../shared/events.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import type { PostId } from '../../shared/ids.js';
import type { Judgement } from '../../shared/judgements.js';
import type { Level } from '../../shared/strategies.js';
import { isStaff, segmentText } from './lookup.js';
import type { ClassState, Post } from './state.js';

/** Rows of evidence that an event makes or changes; written under their keys, the later over the earlier. */
export function evidenceOf(after: ClassState, event: ClassEvent): readonly EvidenceRow[] {
  if (event.type === 'live-noted') return [liveRow(after, event)];
  return 'post' in event ? rowsOf(after, event.post) : [];
}

function rowsOf(state: ClassState, id: PostId): readonly EvidenceRow[] {
  const post = state.posts[id];
  const row = post ? rowOf(state, post) : null;
  return row === null ? [] : [row];
}

/** A post as evidence: the first draft's level unless somebody has settled it; null for an adult's or a seeded post, and for what was never judged. */
export function rowOf(state: ClassState, post: Post): EvidenceRow | null {
  const { person, first, second, latest, overruled } = post;
  if (person === null || isStaff(state, person) || (first === null && overruled === null)) return null;
  const judgement = second ?? first;
  const sent = post.stage.stage === 'public' || post.stage.stage === 'held';
  return {
    key: post.id,
    post: post.id,
    person,
    group: post.group,
    passage: post.passage,
    stop: post.stop,
    do: post.do,
    level: overruled?.level ?? settledLevel(post, judgement),
    postedLevel: sent ? (latest?.level ?? null) : null,
    value: valueOf(post, judgement),
    probability: judgement?.probability ?? null,
    reasons: judgement?.reasons ?? [],
    given: post.given,
    help: post.help,
    late: post.late,
    led: post.led,
    at: post.at,
    day: post.day,
    settledBy: overruled !== null ? 'tutor' : second !== null ? 'second judgement' : 'first judgement',
    word: wordOf(state, post),
  };
}

/** "Unsure" is no try until the pupil or an answer has settled it. */
function settledLevel(post: Post, judgement: Judgement | null): Level | null {
  if (judgement?.kind === 'question' && judgement.value === 'unsure' && post.saidWhere === null) return null;
  return judgement?.level ?? null;
}

function valueOf(post: Post, judgement: Judgement | null): string | null {
  if (post.overruled?.as) return post.overruled.as;
  if (judgement?.kind === 'question' && judgement.value === 'unsure' && post.saidWhere !== null) {
    const inText = post.saidWhere === 'right there' || post.saidWhere === 'think and search';
    return inText ? 'literal' : 'inferential';
  }
  return judgement?.value ?? null;
}

/** The clarified word as it stands in the segment. */
function wordOf(state: ClassState, { first, latest, passage, stop }: Post): string | null {
  const judgement = latest ?? first;
  if (judgement?.kind !== 'clarify' || judgement.measures.found === null) return null;
  const { start, end } = judgement.measures.found;
  return segmentText(state, passage, stop).slice(start, end) || null;
}

function liveRow(state: ClassState, event: EventOf<'live-noted'>): EvidenceRow {
  return {
    key: `live-${state.version}`,
    post: null,
    person: event.person,
    group: event.group,
    passage: event.passage,
    stop: event.stop,
    do: event.do,
    level: event.level,
    postedLevel: null,
    value: null,
    probability: null,
    reasons: [],
    given: event.given,
    help: event.help,
    late: false,
    led: false,
    at: event.at,
    day: event.day,
    settledBy: 'tutor',
    word: null,
  };
}
