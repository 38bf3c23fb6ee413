import type { PostId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { said, wordsOf } from '../../shared/said.js';
import type { Level } from '../../shared/strategies.js';
import { nextLine } from '../progress/class-line.js';
import { settle } from './advance.js';
import { actorOf, add, personAt, refuse, timeOf, type Deciding } from './deciding.js';
import { dayOf } from './hours.js';
import { judgePost, judgedOf } from './judge-post.js';
import { isStaff, runningOf, segmentText } from './lookup.js';
import { acknowledge, tryAlarm } from './decide-alarms.js';
import { afterShown, audienceOf } from './send-post.js';
import type { Post } from './state.js';

type StaffMove = MoveOf<
  | 'note-live'
  | 'note-led'
  | 'release'
  | 'send-back'
  | 'remove'
  | 'overrule'
  | 'confirm-meaning'
  | 'acknowledge-alarm'
  | 'try-alarm'
>;

const dayLength = 24 * 3_600_000;

/** What adults say of posts and alarms, and what they note in a live session. */
export function decideStaff(d: Deciding, move: StaffMove): void {
  switch (move.type) {
    case 'note-live':
      return noteLive(d, move);
    case 'note-led':
      return noteLed(d, move);
    case 'release':
      return releaseAll(d, move.posts);
    case 'send-back':
      return sendBack(d, move);
    case 'remove':
      return remove(d, move.post);
    case 'overrule':
      return overrule(d, move);
    case 'confirm-meaning':
      return confirmMeaning(d, move);
    case 'acknowledge-alarm':
      return acknowledge(d, move.alarm);
    case 'try-alarm':
      return tryAlarm(d);
    default:
      return move satisfies never;
  }
}

function levelOf(level: number): Level {
  if (level === 0 || level === 1 || level === 2 || level === 3) return level;
  return refuse('bad input', `Cannot note level ${level}, expected 0 to 3`, 'Pick a level from 0 to 3.');
}

function noteLive(d: Deciding, move: MoveOf<'note-live'>): void {
  const person = personAt(d, move.person);
  const group = person.group === null ? undefined : d.state.groups[person.group];
  if (person.role !== 'pupil' || !group) {
    return refuse('bad input', 'Cannot note that, expected a pupil of a group, got another', 'Pick a pupil.');
  }
  const running = runningOf(group.practice);
  const passage = running?.passage ?? group.finished.at(-1)?.passage ?? null;
  const now = running?.phase === 'open' ? running.segment.stop : running ? running.nextStop : null;
  add(d, {
    ...{ type: 'live-noted', person: person.id, group: group.id, passage, stop: move.stop ?? now },
    ...{
      do: move.do,
      level: levelOf(move.level),
      help: move.help ?? person.help[move.do],
      given: move.given,
    },
    ...{ text: move.text === undefined ? null : said(person.id, move.text) },
    day: dayOf(timeOf(d), d.act.at),
  });
}

function noteLed(d: Deciding, move: MoveOf<'note-led'>): void {
  const person = personAt(d, move.person);
  if (person.role !== 'pupil' || person.group === null) {
    return refuse('bad input', 'Cannot note that, expected a pupil of a group, got another', 'Pick a pupil.');
  }
  add(d, { type: 'live-led', person: person.id, group: person.group });
}

function postAt(d: Deciding, id: PostId): Post {
  return (
    d.state.posts[id] ??
    refuse(
      'not found',
      'Cannot do that, expected a post of this class, got another',
      'Pick a post of the list.',
    )
  );
}

/** Releases what still waits of a list; what another adult has dealt with meanwhile is left as it is. */
function releaseAll(d: Deciding, ids: readonly PostId[]): void {
  const waiting = [...new Set(ids)].filter((id) => postAt(d, id).stage.stage === 'held');
  if (waiting.length === 0) {
    refuse(
      'wrong time',
      'Cannot release that, expected a post that waits, got none',
      'Look at what waits now.',
    );
  }
  for (const id of waiting) release(d, postAt(d, id));
  for (const group of new Set(waiting.map((id) => postAt(d, id).group))) settle(d, group);
}

/** A held draft is judged when it is released; what is released after the close is late. */
function release(d: Deciding, post: Post): void {
  const { stage } = post;
  if (stage.stage !== 'held') return;
  const draft = stage.why === 'doubtful' && !isStaff(d.state, post.person) ? judgedOf(d, post) : null;
  const judgement = draft === null ? null : judgePost(d, draft);
  add(d, {
    type: 'post-released',
    post: post.id,
    judgement,
    late: post.late || !isInTime(d, post),
    to: audienceOf(d, post),
  });
  afterShown(d, post);
}

/** Whether what a post belongs to is still open; a prediction is in time as long as what it is about isn't closed. */
function isInTime(d: Deciding, post: Post): boolean {
  const group = d.state.groups[post.group];
  const running = group ? runningOf(group.practice) : null;
  if (running?.passage !== post.passage) return false;
  const about = post.do === 'predict' ? post.stop + 1 : post.stop;
  if (running.phase === 'waiting') return post.do === 'predict' && about === running.nextStop;
  return post.stop === running.segment.stop || about === running.segment.stop;
}

function sendBack(d: Deciding, move: MoveOf<'send-back'>): void {
  const post = postAt(d, move.post);
  if (post.stage.stage !== 'held') {
    refuse(
      'wrong time',
      'Cannot send that back, expected a post that waits, got another',
      'Remove it instead.',
    );
  }
  add(d, { type: 'post-sent-back', post: post.id, note: said(actorOf(d).id, move.note) });
}

function remove(d: Deciding, id: PostId): void {
  const post = postAt(d, id);
  if (post.stage.stage === 'removed') return;
  add(d, { type: 'post-removed', post: id });
}

function overrule(d: Deciding, move: MoveOf<'overrule'>): void {
  const post = postAt(d, move.post);
  if (post.person === null || isStaff(d.state, post.person) || post.do === 'add') {
    refuse('bad input', 'Cannot overrule that, expected a pupil’s post that is judged', 'Pick another post.');
  }
  add(d, {
    type: 'overruled',
    post: post.id,
    level: levelOf(move.level),
    as: post.do === 'question' ? (move.as ?? null) : null,
    note: move.note === undefined ? null : said(actorOf(d).id, move.note),
  });
  const step = d.state.settings.questionLine === 'follow the tutor' ? nextLine(d.state) : null;
  if (step !== null) add(d, { type: 'line-moved', ...step });
}

/** The word as it stands in the segment, else as the pupil named it. */
function clarifiedWord(d: Deciding, post: Post): string | null {
  const judgement = post.latest ?? post.first;
  if (judgement?.kind === 'clarify' && judgement.measures.found !== null) {
    const { start, end } = judgement.measures.found;
    return segmentText(d.state, post.passage, post.stop).slice(start, end) || null;
  }
  return post.word === null ? null : wordsOf(post.word);
}

function confirmMeaning(d: Deciding, move: MoveOf<'confirm-meaning'>): void {
  const post = postAt(d, move.post);
  const word = post.do === 'clarify' ? clarifiedWord(d, post) : null;
  const own = post.text.kind === 'said' ? post.text : null;
  const meaning = move.meaning === undefined ? own : said(actorOf(d).id, move.meaning);
  if (word === null || meaning === null || wordsOf(meaning) === null) {
    return refuse(
      'bad input',
      'Cannot confirm that, expected a clarified word with its meaning',
      'Write the meaning.',
    );
  }
  add(d, { type: 'meaning-confirmed', post: post.id, word, meaning, reviewAt: d.act.at + dayLength });
}
