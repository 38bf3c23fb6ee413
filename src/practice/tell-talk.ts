import type { PersonId } from '../../shared/ids.js';
import type { Block, Choice } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import type { Telling } from '../../shared/tellings.js';
import { isShown, isStaff, postsOn, runningOf } from './lookup.js';
import type { ClassState, Post } from './state.js';
import {
  choice,
  choices,
  look,
  move,
  nameOf,
  prose,
  quoteOf,
  replace,
  say,
  speakTo,
  toChannel,
  toPerson,
  toStaff,
  speaker,
  withdraw,
  type Speak,
} from './told.js';

/** Names a post's message. */
export function postKey(post: Post): string {
  return `post/${post.id}`;
}

/** What others are told of a post that is now public. */
export function tellShown(state: ClassState, post: Post): readonly Telling[] {
  if (!isShown(post)) return ownSumUp(state, post);
  switch (post.do) {
    case 'question':
      return [say(postKey(post), toChannel(post.group), questionBlocks(state, post))];
    case 'answer':
      return tellAnswer(state, post);
    case 'predict':
    case 'clarify':
    case 'sum-up':
    case 'add':
      return [say(postKey(post), toChannel(post.group), plainBlocks(state, post))];
    default:
      return post.do satisfies never;
  }
}

/** A sum-up by somebody who doesn't lead goes to the tutor. */
function ownSumUp(state: ClassState, post: Post): readonly Telling[] {
  if (post.stage.stage !== 'public') return [];
  const speak = speaker(state.settings.register);
  const name = nameOf(state, post.person);
  return [
    say(postKey(post), toStaff(post.group), [prose(speak('own sum-up', { name })), quoteOf(state, post)]),
  ];
}

function leadIn(state: ClassState, speak: Speak, post: Post): string {
  const name = nameOf(state, post.person);
  const word = post.word === null ? null : wordsOf(post.word);
  switch (post.do) {
    case 'question':
      if (post.seeded !== null) return speak(post.seeded === 'adult' ? 'grown-up asks' : 'text asks');
      return speak('asks', { name });
    case 'answer':
      return speak('answers', { name });
    case 'predict':
      return speak('thinks', { name });
    case 'clarify':
      return word === null ? speak('looks at a place', { name }) : speak('looks at a word', { name, word });
    case 'sum-up':
      return speak('sums up', { name });
    case 'add':
      return speak('adds', { name });
    default:
      return post.do satisfies never;
  }
}

function plainBlocks(state: ClassState, post: Post): readonly Block[] {
  const speak = speakTo(state);
  const add: Choice | null =
    post.do === 'sum-up' ? choice(speak('add one thing'), look('step', { do: 'add', to: post.id })) : null;
  return [prose(leadIn(state, speak, post)), quoteOf(state, post), ...choices(add)];
}

/** Public answers to a question, oldest first. */
export function answersTo(state: ClassState, question: Post): readonly Post[] {
  return postsOn(state, question.group, question.passage, question.stop).filter(
    (post) => post.do === 'answer' && post.to === question.id && isShown(post),
  );
}

/** Whether the segment of a post is closed, so that everybody may see the answers. */
export function isBehind(state: ClassState, post: Post): boolean {
  const group = state.groups[post.group];
  const running = group ? runningOf(group.practice) : null;
  if (running?.passage !== post.passage) return true;
  return running.phase === 'waiting' ? running.nextStop > post.stop : running.segment.stop > post.stop;
}

/** A question before the group: while it is open who has answered, and once its segment is closed what. */
function questionBlocks(state: ClassState, question: Post): readonly Block[] {
  const speak = speakTo(state);
  const answers = answersTo(state, question);
  const names = [...new Set(answers.map((answer) => nameOf(state, answer.person)))].join(', ');
  const shown = isBehind(state, question)
    ? answers.flatMap((answer) => [prose(leadIn(state, speak, answer)), quoteOf(state, answer)])
    : answers.length > 0
      ? [prose(speak('answered', { names }))]
      : [];
  return [
    prose(leadIn(state, speak, question)),
    quoteOf(state, question),
    ...shown,
    ...choices(choice(speak('answer'), look('step', { do: 'answer', question: question.id }), true)),
  ];
}

/** A question's message again, where it has answers. */
export function questionTellings(state: ClassState, question: Post): readonly Telling[] {
  if (!isShown(question) || answersTo(state, question).length === 0) return [];
  return [replace(postKey(question), toChannel(question.group), questionBlocks(state, question))];
}

/** An answer goes to the asker; the group sees that there is one, and what it says once it has closed. */
function tellAnswer(state: ClassState, answer: Post): readonly Telling[] {
  const question = answer.to === null ? undefined : state.posts[answer.to];
  if (!question) return [];
  const asker = question.person;
  return [
    ...questionTellings(state, question),
    ...(asker === null || isStaff(state, asker) || asker === answer.person
      ? []
      : [toAsker(state, asker, answer)]),
  ];
}

function toAsker(state: ClassState, asker: PersonId, answer: Post): Telling {
  const speak = speakTo(state, asker);
  return say(`answer/${answer.id}`, toPerson(asker), [
    prose(speak('got answer', { name: nameOf(state, answer.person) })),
    quoteOf(state, answer),
    ...choices(
      choice(
        speak('that is it'),
        move('respond', { post: answer.id, response: 'that is what I meant' }),
        true,
      ),
      choice(speak('look again'), move('respond', { post: answer.id, response: 'look again here' })),
    ),
  ]);
}

/** Takes a post's messages back: its own, the asker's, and its place under the question. */
export function tellGone(state: ClassState, post: Post): readonly Telling[] {
  const question = post.to === null ? undefined : state.posts[post.to];
  if (post.do === 'answer' && question) {
    const asker = question.person;
    return [
      ...(isShown(question)
        ? [replace(postKey(question), toChannel(question.group), questionBlocks(state, question))]
        : []),
      ...(asker === null ? [] : [withdraw(`answer/${post.id}`, toPerson(asker))]),
    ];
  }
  const key = postKey(post);
  const own = post.do === 'sum-up' && !post.led;
  return [withdraw(key, toChannel(post.group)), ...(own ? [withdraw(key, toStaff(post.group))] : [])];
}
