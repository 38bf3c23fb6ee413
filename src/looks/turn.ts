import type { Block, Message } from '../../shared/messages.js';
import type { SegmentReading } from '../../shared/text.js';
import { openFor } from '../practice/lookup.js';
import { turnOf, type Step, type Turn } from '../practice/turn.js';
import { answer, say, type Asked } from './asked.js';
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
import { whereWeStand } from './turn-where.js';
import { stepBlocks, stepChoice } from './turn-steps.js';

/** Words that a card before the first segment names at most. */
const wordsOnCard = 3;

function soFar(asked: Asked, turn: Turn): readonly Block[] {
  if (turn.soFar.length === 0) return [];
  return [heading(say(asked, 'so far')), ...turn.soFar.map((text) => quotation(text, null))];
}

/** Before the first segment: words to look out for, without their meaning. */
function card(asked: Asked, segments: readonly SegmentReading[]): readonly Block[] {
  const words = segments
    .flatMap(({ hardWords }) => hardWords)
    .toSorted((a, b) => b.difficulty - a.difficulty)
    .map(({ word }) => word);
  if (words.length === 0) return [];
  return [prose(say(asked, 'words to know')), ...list([...new Set(words)].slice(0, wordsOnCard))];
}

/** The segment that may be read now; who has to look first isn't shown it yet. */
function text(asked: Asked, { passage: id, stop, phase }: Turn): readonly Block[] {
  const passage = id === null ? undefined : asked.state.shelf[id];
  if (passage === undefined) return [];
  const { segments } = passage.reading;
  if (phase === 'look first') return (stop ?? 0) === 0 ? card(asked, segments) : [];
  const segment = stop === null ? undefined : segments[stop];
  if (segment === undefined || stop === null) return [];
  return [heading(say(asked, 'part of', { n: stop + 1, many: segments.length })), reading(segment.text)];
}

/** The one next thing, large. */
function next(asked: Asked, step: Step | null): readonly Block[] {
  if (step === null) return [];
  const pressed = stepChoice(asked, step, true);
  if (pressed === null) return stepBlocks(asked, step, true);
  if (step.step !== 'look first') return choices(null, [pressed]);
  const pass = move('pass-prediction');
  return openFor(asked.state, asked.by.id).includes('predict')
    ? choices(null, [pressed, choice(say(asked, 'not sure yet'), pass)])
    : choices(null, [choice(say(asked, 'have looked'), pass, true)]);
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
      ...whereWeStand(asked, now),
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
