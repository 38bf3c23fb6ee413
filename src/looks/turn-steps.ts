import type { Block, Choice } from '../../shared/messages.js';
import { outcomes, responses } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import { relationships } from '../../shared/strategies.js';
import { under } from '../practice/lookup.js';
import type { Post } from '../practice/state.js';
import type { Step } from '../practice/turn.js';
import { nameOf, say, type Asked } from './asked.js';
import { choice, choices, form, heading, look, move, pick, quotation, reading } from './blocks.js';
import { postQuotation } from './posts-shown.js';
import { sentenceField } from './step-fields.js';

function postOf(asked: Asked, step: Extract<Step, { post: unknown }>): Post | null {
  return asked.state.posts[step.post] ?? null;
}

function segmentOf(asked: Asked, post: Post, further = 0) {
  return asked.state.shelf[post.passage]?.reading.segments[post.stop + further] ?? null;
}

/** A step that one press begins; null for those that show something first. */
export function stepChoice(asked: Asked, step: Step, main = false): Choice | null {
  switch (step.step) {
    case 'look first':
      return choice(say(asked, 'do predict'), look('step', { do: 'predict' }), main);
    case 'take the lead':
      return choice(say(asked, 'take the lead'), move('take-lead'), main);
    case 'do': {
      const on = step.to === null ? null : (asked.state.posts[step.to] ?? null);
      const args = {
        do: step.do,
        ...(step.to === null ? {} : { [step.do === 'answer' ? 'question' : 'to']: step.to }),
      };
      const label =
        step.do === 'answer' && on?.person != null
          ? say(asked, 'do answer to', { asker: nameOf(asked.state, on.person) })
          : say(asked, `do ${step.do}`);
      return choice(label, look('step', args), main);
    }
    case 'check prediction':
    case 'respond':
    case 'say where':
    case 'finish draft':
    case 'review word':
      return null;
    default:
      return step satisfies never;
  }
}

function respond(asked: Asked, post: Post, main: boolean): readonly Block[] {
  const segment = segmentOf(asked, post);
  const [meant, again, helpful] = responses;
  const asks = asked.by.id === asked.state.posts[post.to ?? post.id]?.person;
  const helps = move('respond', { post: post.id, response: helpful });
  return [
    heading(say(asked, 'respond')),
    postQuotation(asked, post),
    ...choices(null, [
      ...(asks
        ? [choice(say(asked, 'meant'), move('respond', { post: post.id, response: meant }), main)]
        : []),
      choice(say(asked, 'helpful'), helps, main && !asks),
    ]),
    ...(segment === null
      ? []
      : [
          form(
            say(asked, 'look again'),
            move('respond', { post: post.id, response: again }),
            [sentenceField(asked, segment, 'tap look again')],
            say(asked, 'look again'),
          ),
        ]),
  ];
}

function checkPrediction(asked: Asked, post: Post, main: boolean): readonly Block[] {
  const next = segmentOf(asked, post, 1);
  const options = outcomes.map((value) => ({ value, label: say(asked, `outcome ${value}`) }));
  return [
    heading(say(asked, 'check prediction')),
    postQuotation(asked, post),
    form(
      say(asked, 'check prediction'),
      move('check-prediction', { post: post.id }),
      [
        pick('outcome', say(asked, 'pick outcome'), options),
        ...(next === null ? [] : [sentenceField(asked, next, 'tap shows')]),
      ],
      say(asked, 'keep'),
      main,
    ),
  ];
}

function sayWhere(asked: Asked, post: Post, main: boolean): readonly Block[] {
  return [
    postQuotation(asked, post),
    form(
      say(asked, 'say where'),
      move('say-where', { post: post.id }),
      [
        pick(
          'where',
          say(asked, 'pick where'),
          relationships.map((value) => ({ value, label: say(asked, `where ${value}`) })),
        ),
      ],
      say(asked, 'keep'),
      main,
    ),
  ];
}

function reviewWord(asked: Asked, word: string, main: boolean): readonly Block[] {
  const meaning = under(asked.state.meanings, word);
  const words = meaning === undefined ? null : wordsOf(meaning);
  return [
    heading(say(asked, 'review word')),
    reading(word),
    ...(words === null ? [] : [quotation(words, say(asked, 'it means'))]),
    ...choices(say(asked, 'know it'), [
      choice(say(asked, 'yes'), move('review-word', { word, known: 'yes' }), main),
      choice(say(asked, 'not yet'), move('review-word', { word, known: 'no' })),
    ]),
  ];
}

/** A step that shows something before it is done; nothing for a draft (it stands with the own posts) or for what one press begins. */
export function stepBlocks(asked: Asked, step: Step, main: boolean): readonly Block[] {
  if (step.step === 'review word') return reviewWord(asked, step.word, main);
  if (step.step !== 'check prediction' && step.step !== 'respond' && step.step !== 'say where') return [];
  const post = postOf(asked, step);
  if (post === null) return [];
  if (step.step === 'respond') return respond(asked, post, main);
  return step.step === 'check prediction' ? checkPrediction(asked, post, main) : sayWhere(asked, post, main);
}
