import type { PersonId } from '../../shared/ids.js';
import type { Doing } from '../../shared/strategies.js';
import { isSent, openFor, postsOn } from './lookup.js';
import type { ClassState, Group, Post, Practice } from './state.js';

/** A practice with an open segment. */
export type OpenPractice = Extract<Practice, { phase: 'open' }>;

/** Sent posts on the open segment, oldest first. */
export function sentNow(state: ClassState, group: Group, practice: OpenPractice): readonly Post[] {
  return postsOn(state, group.id, practice.passage, practice.segment.stop).filter(isSent);
}

/** Whether somebody leads the open segment, alone or as a partner. */
export function leadsNow({ segment }: OpenPractice, person: PersonId | null): boolean {
  return person !== null && (segment.leader === person || segment.partner === person);
}

const replies: readonly Doing[] = ['answer', 'add'];

/** Whether a post answers or adds to another's. */
export function isReply({ do: doing }: Post): boolean {
  return replies.includes(doing);
}

/** The question with which whoever led, or the pair, opened the talk; a change of leader doesn't undo it. */
export function leaderQuestion(state: ClassState, group: Group, practice: OpenPractice): Post | null {
  const posts = sentNow(state, group, practice);
  return (
    posts.find((post) => post.do === 'question' && (post.led || leadsNow(practice, post.person))) ?? null
  );
}

/** Whether the talk is open: the leader's question, or one that stands in for it, is there or waits. */
export function talkIsOpen(state: ClassState, group: Group, practice: OpenPractice): boolean {
  return practice.segment.spareAsked || leaderQuestion(state, group, practice) !== null;
}

/**
 * Whether a pupil has done their share of the open segment (rule 6): one thing of one's own and one reply; who leads asks
 * and sums up. What is closed for a pupil isn't asked for, and a reply isn't where there is nothing to reply to.
 */
export function isDone(state: ClassState, group: Group, practice: OpenPractice, person: PersonId): boolean {
  const posts = sentNow(state, group, practice);
  const mine = posts.filter((post) => post.person === person);
  const open = openFor(state, person);
  if (leadsNow(practice, person)) {
    const ours = posts.filter((post) => leadsNow(practice, post.person));
    const has = (doing: 'question' | 'sum-up'): boolean =>
      !open.includes(doing) || ours.some((post) => post.do === doing);
    return mine.length > 0 && has('question') && has('sum-up');
  }
  const own = open.length === 0 || mine.some((post) => !isReply(post));
  return own && (mine.some(isReply) || !replyIsAsked(group, posts, person));
}

function replyIsAsked(group: Group, posts: readonly Post[], person: PersonId): boolean {
  return (
    group.open.includes('question') || posts.some((post) => post.do === 'question' && post.person !== person)
  );
}

/** Whether everybody who is active has done their share. */
export function allDone(state: ClassState, group: Group, practice: OpenPractice): boolean {
  const { active } = practice.segment;
  return active.length > 0 && active.every((person) => isDone(state, group, practice, person));
}

/** Enough for a close at the day's end: a question, a sum-up, and replies from half of the others, at least one. */
export function quorumIsMet(state: ClassState, group: Group, practice: OpenPractice): boolean {
  const posts = sentNow(state, group, practice);
  const others = practice.segment.active.filter((person) => !leadsNow(practice, person));
  const replied = others.filter((person) => posts.some((post) => post.person === person && isReply(post)));
  const has = (doing: 'question' | 'sum-up'): boolean =>
    !group.open.includes(doing) || posts.some((post) => post.do === doing);
  const needed = replyIsAsked(group, posts, '' as PersonId) ? Math.max(1, Math.ceil(others.length / 2)) : 0;
  return posts.length > 0 && has('question') && has('sum-up') && replied.length >= needed;
}
