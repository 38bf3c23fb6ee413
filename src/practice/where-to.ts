import type { GroupId, PassageId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { timeOf, refuse, type Deciding } from './deciding.js';
import { isShown, postsOn, runningOf } from './lookup.js';
import type { Group, Person, Post } from './state.js';
import { lateUntil } from './times.js';

/** Where a new post belongs. */
export interface Spot {
  readonly group: GroupId;
  readonly passage: PassageId;
  readonly stop: number;
  readonly late: boolean;
  readonly to: Post | null;
}

/** Finds the segment, and the post that is replied to, for what somebody sends. */
export function spotFor(d: Deciding, group: Group, person: Person, move: MoveOf<'send-draft'>): Spot {
  if (move.do === 'answer') return answerSpot(d, group, person, move);
  const now = passageNow(d, group);
  const stop = move.stop ?? now.stop;
  const lowest = move.do === 'predict' ? -1 : 0;
  if (stop < lowest || stop > now.stop) {
    refuse(
      'wrong time',
      'Cannot take that yet, expected a part that is open, got another',
      'Go to the part that is open now.',
    );
  }
  const late = isLate(d, group, now.passage, stop, move.do === 'predict');
  const to = move.do === 'add' ? addedTo(d, group, now.passage, stop, move) : null;
  return { group: group.id, passage: now.passage, stop, late, to };
}

/** The passage and the last segment that can be written on now. */
function passageNow(d: Deciding, group: Group): { passage: PassageId; stop: number } {
  const running = runningOf(group.practice);
  if (running?.phase === 'open') return { passage: running.passage, stop: running.segment.stop };
  if (running !== null && (running.nextStop > 0 || running.leg !== null)) {
    return { passage: running.passage, stop: running.nextStop - 1 };
  }
  const last = group.finished.at(-1);
  const stop = last ? (d.state.shelf[last.passage]?.reading.segments.length ?? 1) - 1 : -1;
  if (last) return { passage: last.passage, stop };
  return refuse(
    'wrong time',
    'Cannot take that yet, expected a text to read, got none',
    'Wait for the next text.',
  );
}

/** A prediction belongs to the segment before the one that it is about, and is in time while that one is open. */
function isLate(d: Deciding, group: Group, passage: PassageId, stop: number, predicts: boolean): boolean {
  const finished = group.finished.findLast((one) => one.passage === passage);
  const running = runningOf(group.practice);
  if (running?.passage !== passage) {
    if (finished && d.act.at > lateUntil(timeOf(d), finished.at)) {
      refuse(
        'wrong time',
        'Cannot take that now, expected a text of the last school days, got an older one',
        'Go to the text that you read now.',
      );
    }
    return true;
  }
  if (running.phase === 'waiting') return !(predicts && stop === running.nextStop - 1);
  const open = running.segment.stop;
  return predicts ? stop < open - 1 : stop < open;
}

function answerSpot(d: Deciding, group: Group, person: Person, move: MoveOf<'send-draft'>): Spot {
  const id = move.question ?? move.to;
  const question = id === undefined ? newestQuestion(d, group, person) : d.state.posts[id];
  if (!question || question.group !== group.id || question.do !== 'question' || !isShown(question)) {
    return refuse(
      'not found',
      'Cannot take an answer, expected a question of the group, got none',
      'Pick a question and answer it.',
    );
  }
  const { passage, stop } = question;
  return { group: group.id, passage, stop, late: isLate(d, group, passage, stop, false), to: question };
}

function newestQuestion(d: Deciding, group: Group, person: Person): Post | undefined {
  const { passage, stop } = passageNow(d, group);
  return postsOn(d.state, group.id, passage, stop).findLast(
    (post) => post.do === 'question' && isShown(post) && post.person !== person.id,
  );
}

function addedTo(
  d: Deciding,
  group: Group,
  passage: PassageId,
  stop: number,
  move: MoveOf<'send-draft'>,
): Post {
  const posts = postsOn(d.state, group.id, passage, stop);
  const sumUp =
    move.to === undefined
      ? posts.findLast((post) => post.do === 'sum-up' && isShown(post))
      : posts.find((post) => post.id === move.to && isShown(post));
  return (
    sumUp ??
    refuse('not found', 'Cannot add to that, expected a sum-up of the group, got none', 'Wait for a sum-up.')
  );
}
