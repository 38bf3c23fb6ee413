import type { Message } from '../../shared/messages.js';
import { turnOf } from '../practice/turn.js';
import { answer, say, type Asked } from './asked.js';
import { choice, choices, heading, look, prose } from './blocks.js';
import { ownBlocks } from './own-posts.js';
import { stepBlocks } from './turn-steps.js';

/** What came for one pupil: own drafts with their feedback, what was sent back, answers to look at, words to look at again. */
export function forYou(asked: Asked): readonly Message[] {
  const { next, also } = turnOf(asked.state, asked.by.id, asked.at);
  const mine = Object.values(asked.state.posts)
    .filter((post) => post.person === asked.by.id)
    .filter(({ stage: { stage } }) => stage === 'draft' || stage === 'held' || stage === 'sent back')
    .toSorted((a, b) => b.at - a.at);
  const steps = [...(next === null ? [] : [next]), ...also];
  const blocks = [
    ...ownBlocks(asked, mine, null),
    ...steps.flatMap((step) => stepBlocks(asked, step, false)),
  ];
  return [
    answer(asked, say(asked, 'for you'), [
      heading(say(asked, 'for you')),
      ...(blocks.length === 0 ? [prose(say(asked, 'nothing for you'))] : blocks),
      ...choices(null, [choice(say(asked, 'back'), look('turn'), true)]),
    ]),
  ];
}
