import { wordsOf } from '../../shared/said.js';
import type { PostAudience, PostedHow } from '../../shared/events.js';
import type { PersonId } from '../../shared/ids.js';
import { openPractice, settle } from './advance.js';
import { add, groupAt, timeOf, type Deciding } from './deciding.js';
import { leadsNow } from './duty.js';
import { judgeQuestionAgain } from './judge-again.js';
import { isStaff } from './lookup.js';
import { holdReason } from './moderation.js';
import type { Post } from './state.js';
import { heldTimes } from './times.js';

/** Whether a post stands on the segment that is open now. */
export function isOnOpen(d: Deciding, post: Pick<Post, 'group' | 'passage' | 'stop'>): boolean {
  const practice = openPractice(d, post.group);
  return practice?.passage === post.passage && practice.segment.stop === post.stop;
}

/** The public sum-up is the leader's; another's own goes to the tutor. With nobody leading it is the group's. */
export function audienceOf(d: Deciding, post: Post): PostAudience {
  if (post.do !== 'sum-up' || post.led || post.person === null || isStaff(d.state, post.person))
    return 'group';
  const practice = openPractice(d, post.group);
  if (practice === null || !isOnOpen(d, post)) return 'staff';
  return practice.segment.leader === null || leadsNow(practice, post.person) ? 'group' : 'staff';
}

/** Sends a draft on: through at once, or waiting for an adult; the author counts as done either way. */
export function sendPost(d: Deciding, post: Post, how: PostedHow): void {
  const to = audienceOf(d, post);
  const staffs = isStaff(d.state, post.person);
  const why =
    staffs || to === 'staff' ? null : holdReason(d.state.settings, post.latest, how === 'by itself');
  const held =
    why ?? (to === 'staff' && how === 'by itself' && post.latest?.level === 0 ? 'nothing yet' : null);
  takeLeadBy(d, post);
  if (held !== null) {
    const times = heldTimes(timeOf(d), d.act.at, isLeadersQuestion(d, post));
    add(d, { type: 'post-waits', post: post.id, why: held, how, times });
  } else {
    add(d, { type: 'draft-posted', post: post.id, how, to });
    afterShown(d, post);
  }
  settle(d, post.group);
}

/** Whether a post is the question with which the leader of the open segment opens the talk. */
export function isLeadersQuestion(
  d: Deciding,
  post: Pick<Post, 'do' | 'person' | 'group' | 'passage' | 'stop'>,
): boolean {
  const practice = openPractice(d, post.group);
  return post.do === 'question' && practice !== null && isOnOpen(d, post) && leadsNow(practice, post.person);
}

/** Whether a question by somebody makes them the leader: the lead was offered, and nobody has opened the talk. */
export function wouldTakeLead(d: Deciding, person: PersonId): boolean {
  const group = d.state.people[person]?.group;
  const practice = group ? openPractice(d, group) : null;
  if (practice === null) return false;
  return practice.segment.offeredTo?.includes(person) === true && !practice.segment.spareAsked;
}

/** The first to post a question takes the lead that was offered. */
function takeLeadBy(d: Deciding, post: Post): void {
  if (post.do !== 'question' || post.person === null || !isOnOpen(d, post)) return;
  const practice = openPractice(d, post.group);
  if (practice === null || leadsNow(practice, post.person) || !wouldTakeLead(d, post.person)) return;
  const asked = Object.values(d.state.postsOf[`${post.group}/${post.passage}`] ?? []).some((id) => {
    const other = d.state.posts[id];
    return other !== undefined && other.id !== post.id && isLeadersQuestion(d, other) && isThrough(other);
  });
  if (asked) return;
  add(d, {
    type: 'leader-changed',
    group: post.group,
    stop: post.stop,
    leader: post.person,
    partner: null,
    from: practice.segment.leader,
    why: 'took the lead',
  });
}

function isThrough({ stage }: Post): boolean {
  return stage.stage === 'public' || stage.stage === 'held';
}

/** What a post that is now public leads to: the question that it answers is looked at again. */
export function afterShown(d: Deciding, post: Post): void {
  groupAt(d, post.group);
  const question = post.to === null ? undefined : d.state.posts[post.to];
  const answer = wordsOf(post.text);
  if (post.do === 'answer' && question && answer !== null) judgeQuestionAgain(d, question, answer);
}
