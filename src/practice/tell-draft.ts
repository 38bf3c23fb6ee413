import { feedback } from '../coaching/feedback.js';
import type { EventOf } from '../../shared/events.js';
import type { PersonId } from '../../shared/ids.js';
import type { Judgement } from '../../shared/judgements.js';
import type { Block } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import { relationships } from '../../shared/strategies.js';
import type { Telling } from '../../shared/tellings.js';
import { goalOf, isStaff, registerOf, segmentText } from './lookup.js';
import type { ClassState, Post } from './state.js';
import {
  choice,
  choices,
  look,
  move,
  nameOf,
  prose,
  quoteOf,
  say,
  speakTo,
  toPerson,
  withdraw,
  type Speak,
} from './told.js';

/** Rounds that are answered with feedback; the next draft gets thanks. */
const feedbackRounds = 2;

/** Names a draft's message; each round has its own. */
function draftKey(post: Post, round = post.round): string {
  return `draft/${post.id}/${round}`;
}

/** Private feedback on a draft, with what can be done with it. */
export function tellDraft(state: ClassState, event: EventOf<'draft-judged'>): readonly Telling[] {
  const post = state.posts[event.post];
  if (!post || post.person === null) return [];
  const { person } = post;
  const speak = speakTo(state, person);
  const staffs = isStaff(state, person);
  const words = staffs ? [] : feedbackWords(state, speak, post, person);
  const more = !staffs && post.round <= feedbackRounds;
  const before = post.round > 1 ? [withdraw(draftKey(post, post.round - 1), toPerson(person))] : [];
  return [
    ...before,
    say(draftKey(post), toPerson(person), [
      prose(speak('draft here')),
      quoteOf(state, post),
      ...words.map(prose),
      ...choices(
        choice(speak('post it'), move('post-draft', { post: post.id }), true),
        more ? choice(speak('improve it'), look('step', { do: post.do, post: post.id })) : null,
        choice(speak('leave it'), move('leave-draft', { post: post.id })),
      ),
      ...where(speak, post, words.length > 1),
      ...(staffs ? [] : [prose(speak(post.latest?.level === 0 ? 'staff later' : 'sends itself'))]),
    ]),
  ];
}

function feedbackWords(state: ClassState, speak: Speak, post: Post, person: PersonId): readonly string[] {
  const judgement = post.latest;
  if (judgement === null || post.round > feedbackRounds) return [speak('thanks')];
  return feedbackOn(state, post, person, judgement);
}

/** What coaching says of a judgement, in up to three lines. */
function feedbackOn(
  state: ClassState,
  post: Post,
  person: PersonId,
  judgement: Judgement,
): readonly string[] {
  const word = post.word === null ? null : wordsOf(post.word);
  const { good, next, prompt } = feedback(judgement, {
    text: (post.text.kind === 'said' ? wordsOf(post.text) : null) ?? '',
    segment: segmentText(state, post.passage, post.stop),
    goal: goalOf(state, person),
    register: registerOf(state, person),
    help: post.help,
    ...(word === null ? {} : { word }),
  });
  return [good, next, prompt].filter((line) => line !== '');
}

/** Where the computer can't tell, the asker is asked where the answer lives. */
function where(speak: Speak, post: Post, asked: boolean): readonly Block[] {
  if (post.latest?.kind !== 'question' || post.latest.value !== 'unsure' || !post.latest.measures.isQuestion)
    return [];
  return [
    {
      type: 'choices',
      // Feedback on the goal has asked already.
      prompt: asked ? null : speak('where is it'),
      choices: relationships.map((kind) =>
        choice(speak(kind), move('say-where', { post: post.id, where: kind })),
      ),
    },
  ];
}

/** Names what an author was last told of a post that was sent. */
function sentKey(post: Post): string {
  return `sent/${post.id}/${post.round}`;
}

/** The author of a post that went through. */
export function tellPosted(
  state: ClassState,
  post: Post,
  how: EventOf<'draft-posted'>['how'],
): readonly Telling[] {
  if (post.person === null) return [];
  const speak = speakTo(state, post.person);
  const own = post.stage.stage === 'public' && post.stage.to === 'staff';
  const key = how === 'by itself' ? 'sent by itself' : own ? 'sent to tutor' : 'sent';
  return [
    withdraw(draftKey(post), toPerson(post.person)),
    say(sentKey(post), toPerson(post.person), [prose(speak(key))]),
  ];
}

/** The author of a post that waits for an adult. */
export function tellHeld(state: ClassState, post: Post): readonly Telling[] {
  if (post.person === null) return [];
  const before = post.latest === null ? post.round - 1 : post.round;
  return [
    ...(before > 0 ? [withdraw(draftKey(post, before), toPerson(post.person))] : []),
    say(sentKey(post), toPerson(post.person), [prose(speakTo(state, post.person)('grown-up looks'))]),
  ];
}

/** The author of a post that an adult has let through. */
export function tellReleased(state: ClassState, post: Post): readonly Telling[] {
  if (post.person === null) return [];
  const key = post.stage.stage === 'public' && post.stage.to === 'staff' ? 'sent to tutor' : 'released';
  const message = say(sentKey(post), toPerson(post.person), [prose(speakTo(state, post.person)(key))]);
  return message.do === 'say' ? [{ ...message, do: 'replace' }] : [];
}

/** The author of a post that came back with a note. */
export function tellSentBack(state: ClassState, event: EventOf<'post-sent-back'>): readonly Telling[] {
  const post = state.posts[event.post];
  if (!post || post.person === null) return [];
  const speak = speakTo(state, post.person);
  const note: Block = {
    type: 'quotation',
    text: wordsOf(event.note) ?? speak('words gone'),
    by: nameOf(state, event.note.by),
  };
  return [
    withdraw(sentKey(post), toPerson(post.person)),
    say(`back/${post.id}/${state.version}`, toPerson(post.person), [
      prose(speak('sent back')),
      note,
      prose(speak('draft here')),
      quoteOf(state, post),
      ...choices(
        choice(speak('improve it'), look('step', { do: post.do, post: post.id }), true),
        choice(speak('leave it'), move('leave-draft', { post: post.id })),
      ),
    ]),
  ];
}

/** The author of a post that is gone: taken back or left by themselves, or removed by an adult. */
export function tellGoneTo(
  state: ClassState,
  post: Post,
  key: 'removed' | 'taken back' | 'left',
): readonly Telling[] {
  if (post.person === null) return [];
  const to = toPerson(post.person);
  return [
    withdraw(key === 'left' ? draftKey(post) : sentKey(post), to),
    say(`gone/${post.id}/${state.version}`, to, [prose(speakTo(state, post.person)(key))]),
  ];
}
