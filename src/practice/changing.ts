import type { GroupId, PersonId, PostId } from '../../shared/ids.js';
import type { ClassState, Group, Person, Post, Practice, SegmentState } from './state.js';

/** The state with one group changed; unchanged where it isn't there. */
export function withGroup(state: ClassState, id: GroupId, change: (group: Group) => Group): ClassState {
  const group = state.groups[id];
  return group ? { ...state, groups: { ...state.groups, [id]: change(group) } } : state;
}

/** The state with a group's practice changed. */
export function withPractice(
  state: ClassState,
  id: GroupId,
  change: (practice: Practice, group: Group) => Practice,
): ClassState {
  return withGroup(state, id, (group) => ({ ...group, practice: change(group.practice, group) }));
}

/** The state with a group's open segment changed; unchanged where none is open. */
export function withSegment(
  state: ClassState,
  id: GroupId,
  change: (segment: SegmentState) => SegmentState,
): ClassState {
  return withPractice(state, id, (practice) =>
    practice.phase === 'open' ? { ...practice, segment: change(practice.segment) } : practice,
  );
}

/** The state with one person changed. */
export function withPerson(state: ClassState, id: PersonId, change: (person: Person) => Person): ClassState {
  const person = state.people[id];
  return person ? { ...state, people: { ...state.people, [id]: change(person) } } : state;
}

/** Records of posts that a running replay has to itself: it writes into them, and nobody else sees them meanwhile. */
const owned = new WeakSet<object>();

/** Runs a replay with a record of posts of its own, since copying thousands of posts for each event would take minutes. */
export function withOwnPosts(state: ClassState, run: (state: ClassState) => ClassState): ClassState {
  const after = run(ownPosts(state));
  owned.delete(after.posts);
  return after;
}

function ownPosts(state: ClassState): ClassState {
  const posts = { ...state.posts };
  owned.add(posts);
  return { ...state, posts };
}

/** The posts with one of them set. */
export function putPost(posts: ClassState['posts'], post: Post): ClassState['posts'] {
  if (!owned.has(posts)) return { ...posts, [post.id]: post };
  (posts as Record<PostId, Post>)[post.id] = post;
  return posts;
}

/** The posts without those that are named; the record stays whose it was. */
export function withoutPosts(posts: ClassState['posts'], gone: ReadonlySet<PostId>): ClassState['posts'] {
  const kept = Object.fromEntries(
    Object.entries(posts).filter(([id]) => !gone.has(id as PostId)),
  ) as ClassState['posts'];
  if (owned.has(posts)) owned.add(kept);
  return kept;
}

/** The state with one post changed, and the list of what is pending kept true. */
export function withPost(state: ClassState, id: PostId, change: (post: Post) => Post): ClassState {
  const before = state.posts[id];
  if (!before) return state;
  const post = change(before);
  const pends = post.stage.stage === 'draft' || post.stage.stage === 'held';
  const pended = state.pending.includes(id);
  const pending =
    pends === pended
      ? state.pending
      : pends
        ? [...state.pending, id]
        : state.pending.filter((other) => other !== id);
  return { ...state, posts: putPost(state.posts, post), pending };
}

/** A list with an item at its end, once. */
export function withItem<T>(list: readonly T[], item: T): readonly T[] {
  return list.includes(item) ? list : [...list, item];
}

/** A list without an item. */
export function withoutItem<T>(list: readonly T[], item: T): readonly T[] {
  return list.filter((other) => other !== item);
}
