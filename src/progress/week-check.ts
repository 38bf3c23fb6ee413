/**
 * The tutor's small check on the judges: six posts a week, three drawn at random and the three that the judges are least
 * sure of. How well tutor and judges agree is reckoned from the random ones alone, since the unsure ones are the hardest.
 * A week begins on Monday, UTC; the draw is by a hash of class, week and post, so that it is the same on every look.
 */
import type { PostId } from '../../shared/ids.js';
import type { Level } from '../../shared/strategies.js';
import type { Instant } from '../../shared/time.js';
import type { ClassState, Post } from '../practice/state.js';
import { kappaInWords, kappaRange, tableOf, weightedKappaOf } from './kappa.js';

const week = 7 * 86_400_000;
/** From Thursday, 1 January 1970, back to its Monday. */
const toMonday = 3 * 86_400_000;
const ofEach = 3;

/** One post for the tutor to look at, and why it was picked. */
export interface CheckedPost {
  readonly post: PostId;
  readonly why: 'at random' | 'least sure';
  /** Whether a tutor has given it a level of their own. */
  readonly done: boolean;
}

/** How the judges agree with the tutor on the random posts; shares 0..1. */
export interface TutorAgreement {
  readonly checked: number;
  readonly same: number;
  /** Kappa with squared weights over levels 0..3, null where not computable. */
  readonly kappa: number | null;
  /** 95 % of kappa, from drawing the same checks again and again; null where kappa is. */
  readonly low: number | null;
  readonly high: number | null;
  readonly words: string;
}

function weekOf(at: Instant): number {
  return Math.floor((at + toMonday) / week);
}

/** A hash of 32 bits, even enough for a draw: the text's units folded in one by one, then mixed. */
export function drawNumber(text: string): number {
  let mixed = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    mixed = Math.imul(mixed ^ text.charCodeAt(at), 0x01000193);
  }
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x45d9f3b);
  return (mixed ^ (mixed >>> 15)) >>> 0;
}

/** The level that the judges gave by themselves; null where they gave none. */
export function judgedLevel(post: Post): Level | null {
  return (post.second ?? post.first)?.level ?? null;
}

/** Pupils' posts that were judged, by the week in which they were written. */
function judgedByWeek(state: ClassState): ReadonlyMap<number, readonly Post[]> {
  const weeks = new Map<number, Post[]>();
  for (const post of Object.values(state.posts)) {
    const pupils = post.person !== null && state.people[post.person]?.role === 'pupil';
    if (!pupils || post.first === null || post.stage.stage === 'removed') continue;
    const which = weekOf(post.at);
    const posts = weeks.get(which);
    if (posts) posts.push(post);
    else weeks.set(which, [post]);
  }
  return weeks;
}

function drawn(state: ClassState, posts: readonly Post[], which: number): readonly Post[] {
  const judged = posts.filter((post) => judgedLevel(post) !== null);
  const number = new Map(judged.map((post) => [post.id, drawNumber(`${state.id}/${which}/${post.id}`)]));
  return judged.toSorted((a, b) => (number.get(a.id) ?? 0) - (number.get(b.id) ?? 0)).slice(0, ofEach);
}

/** The posts drawn at random for the checks of all weeks so far. */
export function randomPosts(state: ClassState): readonly Post[] {
  return [...judgedByWeek(state)].flatMap(([which, posts]) => drawn(state, posts, which));
}

/** At most six posts of the week that holds `at`: three at random, then the three that the judges are least sure of. */
export function postsToCheck(state: ClassState, at: Instant): readonly CheckedPost[] {
  const posts = judgedByWeek(state).get(weekOf(at)) ?? [];
  const random = drawn(state, posts, weekOf(at));
  const sureness = (post: Post): number => (post.second ?? post.first)?.probability ?? 1;
  const unsure = posts
    .filter((post) => !random.includes(post))
    .toSorted((a, b) => sureness(a) - sureness(b))
    .slice(0, ofEach);
  const entry = (post: Post, why: CheckedPost['why']): CheckedPost => ({
    post: post.id,
    why,
    done: post.overruled !== null,
  });
  return [
    ...random.map((post) => entry(post, 'at random')),
    ...unsure.map((post) => entry(post, 'least sure')),
  ];
}

/** Agreement of tutor and judges over the random posts of every week so far. */
export function agreementWithTutor(state: ClassState): TutorAgreement {
  const pairs = randomPosts(state).flatMap((post): [number, number][] => {
    const judged = judgedLevel(post);
    return judged === null || post.overruled === null ? [] : [[judged, post.overruled.level]];
  });
  const { kappa } = weightedKappaOf(tableOf(pairs, 4));
  return {
    checked: pairs.length,
    same: pairs.filter(([judged, tutor]) => judged === tutor).length,
    kappa,
    ...kappaRange(pairs, 4, drawNumber(state.id)),
    words: kappaInWords(kappa),
  };
}
