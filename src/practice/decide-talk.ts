import type { GroupId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { reviewDays } from '../progress/review-days.js';
import { openPractice } from './advance.js';
import { actorOf, add, groupAt, refuse, timeOf, type Deciding } from './deciding.js';
import { ownPost } from './drafts.js';
import { hasRead } from './has-read.js';
import { dayOf } from './hours.js';
import { isSent, isShown, isStaff, postsOn, runningOf, under } from './lookup.js';
import type { Post } from './state.js';
import { wakeUp } from './wake-up.js';

type TalkMove = MoveOf<
  | 'visit'
  | 'pass-prediction'
  | 'say-where'
  | 'respond'
  | 'check-prediction'
  | 'ask-help'
  | 'tell-grown-up'
  | 'review-word'
>;

const dayLength = 24 * 3_600_000;
const lastHelp = 4;

/** What pupils do beside posting. */
export function decideTalk(d: Deciding, move: TalkMove): void {
  switch (move.type) {
    case 'visit':
      return visit(d);
    case 'pass-prediction':
      return passPrediction(d);
    case 'say-where':
      return sayWhere(d, move);
    case 'respond':
      return respond(d, move);
    case 'check-prediction':
      return checkPrediction(d, move);
    case 'ask-help':
      return askHelp(d, move);
    case 'tell-grown-up':
      // Calls an adult before any rule is asked, so that nothing is left to decide here.
      return;
    case 'review-word':
      return reviewWord(d, move);
    default:
      return move satisfies never;
  }
}

/** A visit is noted once a segment and once a day, so that the journal doesn't grow with every look. */
function visit(d: Deciding): void {
  const person = actorOf(d);
  if (person.role !== 'pupil') return;
  if (person.group !== null) wakeUp(d, person.group);
  const segment = person.group === null ? null : (openPractice(d, person.group)?.segment ?? null);
  const unseen = segment !== null && !segment.seen.includes(person.id);
  const time = timeOf(d);
  const today = person.lastSeen !== null && dayOf(time, person.lastSeen) === dayOf(time, d.act.at);
  if (!unseen && today) return;
  add(d, { type: 'person-seen', person: person.id, group: person.group, stop: segment?.stop ?? null });
}

function groupOfActor(d: Deciding): GroupId {
  return (
    actorOf(d).group ?? refuse('not found', 'Cannot do that, expected somebody of a group', 'Ask a grown-up.')
  );
}

function passPrediction(d: Deciding): void {
  const id = groupOfActor(d);
  wakeUp(d, id);
  const person = actorOf(d);
  const running = runningOf(groupAt(d, id).practice);
  if (running === null) {
    return refuse('wrong time', 'Cannot pass, expected a text to read, got none', 'Wait for the next text.');
  }
  const stop = running.phase === 'open' ? running.segment.stop : running.nextStop;
  const passed = running.phase === 'open' ? running.segment.passed : running.passed;
  if (passed.includes(person.id)) return;
  if (running.phase === 'open' && !running.segment.seen.includes(person.id)) {
    add(d, { type: 'person-seen', person: person.id, group: id, stop });
  }
  add(d, { type: 'prediction-passed', person: person.id, stop });
}

function sayWhere(d: Deciding, move: MoveOf<'say-where'>): void {
  const post = ownPost(d, move.post);
  if (post.do !== 'question') {
    refuse(
      'bad input',
      'Cannot take that, expected a question of your own, got another',
      'Pick your question.',
    );
  }
  add(d, { type: 'where-said', post: post.id, where: move.where });
}

/** The asker says what an answer is worth, after a day anyone may; the leader marks a helpful one. */
function respond(d: Deciding, move: MoveOf<'respond'>): void {
  const person = actorOf(d);
  const answer = d.state.posts[move.post];
  const question = answer?.to ? d.state.posts[answer.to] : undefined;
  if (answer?.do !== 'answer' || !question || !isShown(answer)) {
    return refuse(
      'not found',
      'Cannot say that, expected an answer of the group, got none',
      'Pick an answer.',
    );
  }
  if (!isStaff(d.state, person.id)) {
    if (
      person.group !== answer.group ||
      answer.person === person.id ||
      !mayRespond(d, move, question, answer)
    ) {
      refuse('wrong time', 'Cannot say that yet, expected the asker', 'Wait a day. Then you can say it.');
    }
  }
  add(d, { type: 'response-given', post: answer.id, response: move.response, place: move.place ?? null });
}

function mayRespond(d: Deciding, move: MoveOf<'respond'>, question: Post, answer: Post): boolean {
  const person = actorOf(d).id;
  if (question.person === person || leadOn(d, answer, person)) return true;
  const since = answer.stage.stage === 'public' ? d.act.at - answer.stage.at : 0;
  return move.response !== 'helpful' && since >= dayLength;
}

/** Whether somebody leads the segment of a post, or led it last. */
function leadOn(d: Deciding, post: Post, person: string): boolean {
  const group = d.state.groups[post.group];
  const running = group ? runningOf(group.practice) : null;
  if (running?.passage !== post.passage) return false;
  const segment = running.phase === 'open' ? running.segment : running.lastClosed?.segment;
  return segment?.stop === post.stop && (segment.leader === person || segment.partner === person);
}

function checkPrediction(d: Deciding, move: MoveOf<'check-prediction'>): void {
  const post = ownPost(d, move.post);
  if (post.do !== 'predict' || !isSent(post)) {
    refuse('bad input', 'Cannot check that, expected a guess of your own, got another', 'Pick your guess.');
  }
  if (!isKnown(d, post)) {
    refuse(
      'wrong time',
      'Cannot check that yet, expected the next part to be read',
      'Read the next part first.',
    );
  }
  add(d, { type: 'prediction-checked', post: post.id, outcome: move.outcome, place: move.place ?? null });
}

/** Whether the segment that a prediction is about lies before its author. */
function isKnown(d: Deciding, post: Post): boolean {
  const group = groupAt(d, post.group);
  const running = runningOf(group.practice);
  if (running?.passage !== post.passage) return true;
  const about = post.stop + 1;
  if (running.phase === 'waiting') return running.nextStop > about;
  if (running.segment.stop !== about) return running.segment.stop > about;
  return post.person !== null && hasRead(d.state, group, post.person);
}

/** Help comes in steps; the shared turn only after two tries. */
function askHelp(d: Deciding, move: MoveOf<'ask-help'>): void {
  const id = groupOfActor(d);
  const person = actorOf(d).id;
  const practice = openPractice(d, id);
  if (practice === null) {
    return refuse(
      'wrong time',
      'Cannot help with that now, expected an open part',
      'Wait for the next part.',
    );
  }
  const { stop, helped } = practice.segment;
  const before = helped[`${person}/${move.do}`] ?? 0;
  const tries = postsOn(d.state, id, practice.passage, stop)
    .filter((post) => post.person === person && post.do === move.do)
    .reduce((sum, post) => sum + post.round, 0);
  const step = Math.min(before + 1, tries >= 2 ? lastHelp : lastHelp - 1);
  add(d, { type: 'help-given', person, do: move.do, stop, step });
}

function reviewWord(d: Deciding, move: MoveOf<'review-word'>): void {
  const person = actorOf(d).id;
  const word = move.word.toLowerCase();
  if (under(d.state.reviews[person], word) === undefined) {
    refuse(
      'not found',
      'Cannot take that word, expected one of your words, got another',
      'Pick a word of the list.',
    );
  }
  const before = under(d.state.reviewSteps[person], word) ?? 0;
  const step = move.known ? before + 1 : 0;
  const days = reviewDays[Math.max(0, Math.min(step, reviewDays.length) - 1)] ?? reviewDays[0];
  const nextAt = d.act.at + days * dayLength;
  add(d, { type: 'word-reviewed', person, word: move.word, known: move.known, nextAt, step });
}
