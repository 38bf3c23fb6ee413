import type { Block, Choice, Message } from '../../shared/messages.js';
import { turnOf } from '../practice/turn-of.js';
import type { Step, Turn } from '../practice/turn.js';
import { answer, nameOf, say, type Asked } from './asked.js';
import {
  choice,
  choices,
  form,
  heading,
  list,
  look,
  move,
  prose,
  quotation,
  reading,
  typed,
} from './blocks.js';
import { ownBlocks } from './own-posts.js';
import { postQuotation } from './posts-shown.js';
import { stepBlocks, stepChoice } from './turn-steps.js';

/** Words that a card before the first segment names at most. */
const wordsOnCard = 3;

function whereWeAre(asked: Asked, turn: Turn): readonly Block[] {
  const until = turn.until === null ? null : asked.port.when(turn.until);
  const state = (): string | null => {
    switch (turn.phase) {
      case 'none':
        return say(asked, 'no text yet');
      case 'paused':
        return say(asked, 'paused');
      case 'waiting':
        return until === null ? say(asked, 'opens later') : say(asked, 'opens', { when: until });
      case 'done':
        return say(asked, 'done here');
      case 'look first':
        return say(asked, 'look first');
      case 'open':
        return until === null ? null : say(asked, 'open until', { when: until });
      default:
        return turn.phase satisfies never;
    }
  };
  const leads = (): string | null => {
    if (turn.phase !== 'open' && turn.phase !== 'done') return null;
    if (turn.leads) return say(asked, 'you lead');
    return turn.leader === null ? null : say(asked, 'leads', { leader: nameOf(asked.state, turn.leader) });
  };
  return [leads(), state()].filter((line) => line !== null).map(prose);
}

function soFar(asked: Asked, turn: Turn): readonly Block[] {
  if (turn.soFar.length === 0) return [];
  return [heading(say(asked, 'so far')), ...turn.soFar.map((text) => quotation(text, null))];
}

/** The segment that may be read now; before the first one the words to look out for. */
function text(asked: Asked, turn: Turn): readonly Block[] {
  const passage = turn.passage === null ? undefined : asked.state.shelf[turn.passage];
  if (passage === undefined || turn.stop === null) return [];
  const { segments } = passage.reading;
  const segment = segments[turn.stop];
  if (segment !== undefined) {
    return [
      heading(say(asked, 'part of', { n: turn.stop + 1, many: segments.length })),
      reading(segment.text),
    ];
  }
  const words = segments
    .flatMap(({ hardWords }) => hardWords)
    .toSorted((a, b) => b.difficulty - a.difficulty)
    .map(({ word }) => word);
  return [
    ...(words.length === 0 ? [] : [prose(say(asked, 'words to know'))]),
    ...list([...new Set(words)].slice(0, wordsOnCard)),
  ];
}

/** The one next thing, large. */
function next(asked: Asked, step: Step | null): readonly Block[] {
  if (step === null) return [];
  const pressed = stepChoice(asked, step, true);
  if (pressed === null) return stepBlocks(asked, step, true);
  const pass: readonly Choice[] =
    step.step === 'look first' ? [choice(say(asked, 'not sure yet'), move('pass-prediction'))] : [];
  return choices(null, [pressed, ...pass]);
}

function also(asked: Asked, turn: Turn): readonly Block[] {
  const pressed = turn.also.map((step) => stepChoice(asked, step)).filter((one) => one !== null);
  const pass =
    turn.leads && turn.phase === 'open' ? [choice(say(asked, 'quiet pass'), move('quiet-pass'))] : [];
  return [
    ...turn.also.flatMap((step) => stepBlocks(asked, step, false)),
    ...choices(pressed.length === 0 ? null : say(asked, 'you can also'), [...pressed, ...pass]),
  ];
}

function talk(asked: Asked, turn: Turn): readonly Block[] {
  if (turn.talk.length === 0) return [];
  const answered = new Set(Object.values(asked.state.posts).map(({ to }) => to));
  return [
    heading(say(asked, 'the talk')),
    ...turn.talk.flatMap((post) => [
      postQuotation(asked, post),
      ...(post.person === asked.by.id && !answered.has(post.id)
        ? choices(null, [choice(say(asked, 'take back'), move('take-back', { post: post.id }))])
        : []),
    ]),
  ];
}

function elsewhere(asked: Asked): readonly Block[] {
  return [
    ...choices(null, [
      choice(say(asked, 'for you'), look('for-you')),
      choice(say(asked, 'where are we'), look('where-are-we')),
      choice(say(asked, 'our words'), look('words')),
    ]),
    form(
      say(asked, 'tell a grown-up'),
      move('tell-grown-up'),
      [typed('text', 'text', say(asked, 'tell what'), { required: false })],
      say(asked, 'tell a grown-up'),
    ),
  ];
}

/** A pupil's page: the text, the one next thing to do, what else can be done, the talk. */
export function turn(asked: Asked): readonly Message[] {
  const now = turnOf(asked.state, asked.by.id, asked.at);
  const title = now.passage === null ? undefined : asked.state.shelf[now.passage]?.reading.title;
  const draft = now.next?.step === 'finish draft' ? now.next.post : null;
  const summary = title ?? say(asked, 'no text yet');
  return [
    answer(asked, summary, [
      heading(title ?? say(asked, 'my page')),
      ...whereWeAre(asked, now),
      ...soFar(asked, now),
      ...text(asked, now),
      ...next(asked, now.next),
      ...ownBlocks(asked, now.own, draft),
      ...also(asked, now),
      ...talk(asked, now),
      ...elsewhere(asked),
    ]),
  ];
}
