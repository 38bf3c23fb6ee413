import type { Block, Choice } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import { feedback, type Feedback } from '../coaching/feedback.js';
import { goalOf, segmentText } from '../practice/lookup.js';
import type { Post } from '../practice/state.js';
import { say, type Asked } from './asked.js';
import { choice, choices, heading, list, look, move, prose, quotation } from './blocks.js';
import { postText } from './posts-shown.js';

/** At most two rounds of feedback: a third draft is posted or left. */
const lastRound = 3;

/** What a pupil is told about a draft, in whole sentences; null for what isn't judged or whose words are gone. */
function feedbackOn(asked: Asked, post: Post): Feedback | null {
  const judgement = post.latest ?? post.first;
  const text = wordsOf(post.text);
  if (judgement === null || text === null) return null;
  const word = post.word === null ? null : wordsOf(post.word);
  return feedback(judgement, {
    text,
    segment: segmentText(asked.state, post.passage, post.stop),
    goal: goalOf(asked.state, asked.by.id),
    register: asked.register,
    help: post.help,
    ...(word === null ? {} : { word }),
  });
}

/** A draft with its feedback and what can be done with it. */
export function draftBlocks(asked: Asked, post: Post, main: boolean): readonly Block[] {
  if (post.stage.stage !== 'draft') return [];
  const told = feedbackOn(asked, post);
  const lines = told === null ? [] : [told.good, told.next, told.prompt].filter((line) => line !== '');
  const goesOut = post.stage.postsItselfAt;
  const again: readonly Choice[] =
    post.round < lastRound
      ? [choice(say(asked, 'improve'), look('step', { do: post.do, post: post.id }))]
      : [];
  return [
    heading(say(asked, 'your draft')),
    quotation(postText(asked, post), null),
    ...lines.map(prose),
    ...(goesOut === null ? [] : [prose(say(asked, 'posts itself', { when: asked.port.when(goesOut) }))]),
    ...choices(null, [
      choice(say(asked, 'post it'), move('post-draft', { post: post.id }), main),
      ...again,
      choice(say(asked, 'leave it'), move('leave-draft', { post: post.id })),
    ]),
  ];
}

/** What was sent back, with the grown-up's note and a way to write it anew. */
function sentBackBlocks(asked: Asked, post: Post, main: boolean): readonly Block[] {
  if (post.stage.stage !== 'sent back') return [];
  const note = wordsOf(post.stage.note);
  return [
    heading(say(asked, 'sent back')),
    quotation(postText(asked, post), null),
    ...(note === null ? [] : [quotation(note, say(asked, 'a grown-up'))]),
    ...choices(null, [
      choice(say(asked, 'improve'), look('step', { do: post.do, post: post.id }), main),
      choice(say(asked, 'leave it'), move('leave-draft', { post: post.id })),
    ]),
  ];
}

/** Own drafts, what came back and what a grown-up looks at; `main` is the draft that is the one next thing. */
export function ownBlocks(asked: Asked, own: readonly Post[], main: Post['id'] | null): readonly Block[] {
  const waits = own.filter(({ stage }) => stage.stage === 'held');
  return [
    ...own.flatMap((post) => draftBlocks(asked, post, post.id === main)),
    ...own.flatMap((post) => sentBackBlocks(asked, post, post.id === main)),
    ...(waits.length === 0
      ? []
      : [
          heading(say(asked, 'with a grown-up')),
          prose(say(asked, 'a grown-up looks')),
          ...list(waits.map((post) => postText(asked, post))),
        ]),
  ];
}
