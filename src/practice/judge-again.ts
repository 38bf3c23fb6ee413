import type { GroupId, PassageId } from '../../shared/ids.js';
import { wordsOf } from '../../shared/said.js';
import { add, type Deciding } from './deciding.js';
import { isSent, postsOn, segmentText } from './lookup.js';
import type { Post } from './state.js';

/** Looks at predictions again once the segment that they are about is read: what became of them is for staff. */
export function judgePredictionsAgain(d: Deciding, group: GroupId, passage: PassageId, stop: number): void {
  const next = segmentText(d.state, passage, stop + 1);
  for (const post of postsOn(d.state, group, passage, stop)) {
    const text = wordsOf(post.text);
    if (post.do !== 'predict' || post.first === null || post.second !== null || text === null) continue;
    if (!isSent(post) || post.late) continue;
    const segment = segmentText(d.state, passage, stop);
    const judgement = d.tools.judges.judge({ kind: 'predict', segment, text, next });
    add(d, { type: 'judged-again', post: post.id, judgement });
  }
}

/** Looks at a pupil's question again once it has its first answer. */
export function judgeQuestionAgain(d: Deciding, question: Post, answer: string): void {
  const text = wordsOf(question.text);
  if (question.first?.kind !== 'question' || question.second !== null || text === null) return;
  const { passage, stop } = question;
  const gist = d.state.shelf[passage]?.gists[stop];
  const judgement = d.tools.judges.judge({
    kind: 'question',
    segment: segmentText(d.state, passage, stop),
    text,
    answer,
    ...(gist === undefined ? {} : { gist }),
  });
  add(d, { type: 'judged-again', post: question.id, judgement });
}
