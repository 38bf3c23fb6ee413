import { wordsOf } from '../../shared/said.js';
import { Fault } from '../../shared/fault.js';
import type { PostId } from '../../shared/ids.js';
import type { Look } from '../../shared/looks.js';
import type { Block, Message } from '../../shared/messages.js';
import { relationships, type Doing } from '../../shared/strategies.js';
import type { SegmentReading } from '../../shared/text.js';
import { questionStems } from '../coaching/help.js';
import { isShown } from '../practice/lookup.js';
import type { Post } from '../practice/state.js';
import { answer, found, say, type Asked } from './asked.js';
import { choice, choices, form, heading, look, move, reading } from './blocks.js';
import { placeOf, type Where } from './place-of.js';
import { postQuotation } from './posts-shown.js';
import { stepFields } from './step-fields.js';

type StepLook = Extract<Look, { type: 'step' }>;

function segmentAt(asked: Asked, where: Where): SegmentReading | null {
  if (where.passage === null || where.stop < 0) return null;
  return asked.state.shelf[where.passage]?.reading.segments[where.stop] ?? null;
}

/** The post that is answered or added to; only what the group may see. */
function about(asked: Asked, asks: PostId | undefined): Post | null {
  if (asks === undefined) return null;
  const post = asked.state.posts[asks];
  const mine = asked.by.role !== 'pupil' || post?.group === asked.by.group;
  return found(post !== undefined && mine && isShown(post) ? post : undefined, 'a post');
}

function ownDraft(asked: Asked, id: PostId): Post {
  const post = found(asked.state.posts[id], 'a draft');
  if (post.person !== asked.by.id) {
    throw new Fault('not allowed', 'Cannot open that, expected a draft of your own', 'Go back to your page.');
  }
  return post;
}

/** Stems to tap: each opens the same form with the stem in it. */
function stems(asked: Asked, doing: Doing): readonly Block[] {
  const independent = doing === 'question' && asked.by.help.question === 'independent';
  if (doing !== 'question' || independent) return [];
  const starts = relationships
    .filter((relationship) => relationship !== 'on my own')
    .flatMap((relationship) => questionStems(relationship, asked.register).slice(0, 2));
  return choices(
    say(asked, 'stems'),
    starts.map((start) => choice(start, look('step', { do: doing, start }))),
  );
}

/** "Why do you think …?" begins with "Why do you think ". */
function beginningOf(stem: string): string {
  return `${stem.replace(/…[^]*$/u, '').trimEnd()} `;
}

function helpChoice(asked: Asked, doing: Doing): readonly Block[] {
  if (asked.by.role !== 'pupil') return [];
  return choices(null, [
    choice(say(asked, 'help me'), move('ask-help', { do: doing })),
    choice(say(asked, 'back'), look('turn')),
  ]);
}

function improve(asked: Asked, post: Post): readonly Message[] {
  const segment = segmentAt(asked, { passage: post.passage, stop: post.stop });
  const title = say(asked, 'improve title');
  const text = wordsOf(post.text);
  const fields = stepFields(asked, post.do, segment, text === null ? {} : { text });
  const kept = fields.filter((field) => field.name !== 'word' && field.kind !== 'word');
  return [
    answer(asked, title, [
      heading(title),
      ...(segment === null ? [] : [reading(segment.text)]),
      form(title, move('improve-draft', { post: post.id }), kept, say(asked, 'show me'), true),
      ...helpChoice(asked, post.do),
    ]),
  ];
}

/** The form of a step: what is asked, the text it is about, and fields that can be tapped as far as can be. */
export function step(asked: Asked, { do: doing, question, to, post, start }: StepLook): readonly Message[] {
  if (post !== undefined) return improve(asked, ownDraft(asked, post));
  const on = about(asked, question ?? to);
  const where = on ?? placeOf(asked, doing === 'predict');
  const segment = segmentAt(asked, where);
  const title = say(asked, `do ${doing}`);
  const args = {
    do: doing,
    ...(on === null || doing !== 'answer' ? {} : { question: on.id }),
    ...(on === null || doing !== 'add' ? {} : { to: on.id }),
    ...(where.passage === null || doing === 'answer' ? {} : { stop: String(where.stop) }),
  };
  const fields = stepFields(asked, doing, segment, start === undefined ? {} : { text: beginningOf(start) });
  return [
    answer(asked, title, [
      heading(title),
      ...(on === null ? [] : [postQuotation(asked, on)]),
      ...(segment === null || doing === 'clarify' ? [] : [reading(segment.text)]),
      form(title, move('send-draft', args), fields, say(asked, 'show me'), true),
      ...stems(asked, doing),
      ...helpChoice(asked, doing),
    ]),
  ];
}
