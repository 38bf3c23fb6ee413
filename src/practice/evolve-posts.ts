import type { EventOf, HoldReason, PostAudience } from '../../shared/events.js';
import type { GroupId, PostId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { putPost, withGroup, withItem, withPost, withSegment } from './changing.js';
import type { ClassState, Post, PostStage } from './state.js';

type PostChange = EventOf<
  | 'draft-judged'
  | 'draft-held'
  | 'draft-posted'
  | 'post-waits'
  | 'post-released'
  | 'post-sent-back'
  | 'post-removed'
  | 'draft-left'
  | 'post-taken-back'
  | 'question-seeded'
  | 'staff-reminded'
>;

/** The class after something about a post on its way from draft to public. */
export function evolvePosts(state: ClassState, event: PostChange): ClassState {
  switch (event.type) {
    case 'draft-judged':
      return takeDraft(state, event, { stage: 'draft', postsItselfAt: event.postsItselfAt });
    case 'draft-held':
      return takeDraft(waits(state, event.group), event, heldStage(event, 'doubtful'));
    case 'draft-posted':
      return withPost(state, event.post, (post) => ({ ...post, stage: shown(event.at, event.to) }));
    case 'post-waits':
      return hold(state, event);
    case 'post-released':
      return withPost(state, event.post, (post) => ({
        ...post,
        stage: shown(event.at, event.to),
        first: post.first ?? event.judgement,
        latest: event.judgement ?? post.latest,
        late: event.late,
      }));
    case 'post-sent-back':
      return withPost(state, event.post, (post) => ({
        ...post,
        stage: { stage: 'sent back', note: event.note },
      }));
    case 'post-removed':
      return withPost(state, event.post, (post) => ({ ...post, stage: { stage: 'removed' } }));
    case 'draft-left':
      return withPost(state, event.post, (post) => ({ ...post, stage: { stage: 'left' } }));
    case 'post-taken-back':
      return withPost(state, event.post, (post) => ({ ...post, stage: { stage: 'taken back' } }));
    case 'question-seeded':
      return seed(state, event);
    case 'staff-reminded':
      return remind(state, event);
    default:
      return event satisfies never;
  }
}

function shown(at: Instant, to: PostAudience): PostStage {
  return { stage: 'public', at, to };
}

function heldStage(event: EventOf<'draft-held' | 'post-waits'>, why: HoldReason): PostStage {
  return { stage: 'held', why, since: event.at, times: event.times, reminded: 'no' };
}

/** Posts of a group that wait for an adult. */
export function heldOf(state: ClassState, group: GroupId | null): readonly Post[] {
  return state.pending.flatMap((id) => {
    const post = state.posts[id];
    return post?.stage.stage === 'held' && (group === null || post.group === group) ? [post] : [];
  });
}

/** Notes where a new row of waiting posts begins, which names the one message about them. */
function waits(state: ClassState, group: GroupId): ClassState {
  if (heldOf(state, group).length > 0) return state;
  return withGroup(state, group, (one) => ({ ...one, waitingFrom: state.version + 1 }));
}

function hold(state: ClassState, event: EventOf<'post-waits'>): ClassState {
  const post = state.posts[event.post];
  if (!post) return state;
  return withPost(waits(state, post.group), event.post, (one) => ({
    ...one,
    stage: heldStage(event, event.why),
  }));
}

function takeDraft(
  state: ClassState,
  event: EventOf<'draft-judged' | 'draft-held'>,
  stage: PostStage,
): ClassState {
  const judgement = event.type === 'draft-judged' ? event.judgement : null;
  const before = state.posts[event.post];
  if (before) {
    return withPost(state, event.post, (post) => ({
      ...post,
      text: event.text,
      place: event.place,
      fixUp: event.fixUp,
      round: event.round,
      stage,
      first: post.first ?? judgement,
      latest: judgement ?? post.latest,
      findings: event.findings,
    }));
  }
  const { post: id, person, group, passage, stop, do: doing, text, word, offset, to, place, fixUp } = event;
  const { round, findings, given, help, led, late, at, day } = event;
  const post: Post = {
    ...{ id, person, seeded: null, group, passage, stop, do: doing, text, word, offset, to, place, fixUp },
    ...{ round, stage, first: judgement, latest: judgement, second: null, overruled: null, saidWhere: null },
    ...{ findings, given, help, led, late, at, day, response: null, outcome: null },
  };
  const added = addPost(state, post);
  const looked = doing === 'predict' ? withPassed(added, group, person, stop + 1) : added;
  return { ...looked, pending: [...looked.pending, id] };
}

/** Whoever has predicted sees the segment that the prediction is about. */
function withPassed(state: ClassState, group: GroupId, person: Post['person'], stop: number): ClassState {
  return withSegment(state, group, (segment) =>
    segment.stop === stop && person !== null
      ? { ...segment, passed: withItem(segment.passed, person) }
      : segment,
  );
}

function addPost(state: ClassState, post: Post): ClassState {
  const place = `${post.group}/${post.passage}`;
  const there: readonly PostId[] = state.postsOf[place] ?? [];
  return {
    ...state,
    posts: putPost(state.posts, post),
    postsOf: { ...state.postsOf, [place]: [...there, post.id] },
  };
}

function seed(state: ClassState, event: EventOf<'question-seeded'>): ClassState {
  const practice = state.groups[event.group]?.practice;
  if (practice?.phase !== 'open') return state;
  const post: Post = {
    ...{ id: event.post, person: null, seeded: event.from, group: event.group, passage: practice.passage },
    ...{ stop: event.stop, do: 'question', text: { kind: 'seed', text: event.text }, word: null },
    ...{ offset: null, to: null, place: null, fixUp: null, round: 1, stage: shown(event.at, 'group') },
    ...{ first: null, latest: null, second: null, overruled: null, saidWhere: null, findings: [] },
    ...{ given: 'typed', help: 'guided', led: false, late: false, at: event.at, day: '' },
    ...{ response: null, outcome: null },
  };
  return withSegment(addPost(state, post), event.group, (segment) => ({ ...segment, spareAsked: true }));
}

/** One reminder is about everything that waits, so that adults get one bundle and not one for each post; what has not waited long is called again by its own deputy's hour. */
function remind(state: ClassState, event: EventOf<'staff-reminded'>): ClassState {
  if (event.of !== 'held' && event.of !== 'held, deputy') return state;
  return heldOf(state, event.group).reduce(
    (after, { id }) =>
      withPost(after, id, (post) => {
        const { stage } = post;
        if (stage.stage !== 'held' || stage.reminded === 'deputy') return post;
        const deputy = event.of === 'held, deputy' && stage.times.remindAt <= event.at;
        return { ...post, stage: { ...stage, reminded: deputy ? 'deputy' : 'tutor' } };
      }),
    state,
  );
}
