import { wordsOf } from '../../shared/said.js';
import type { PostId } from '../../shared/ids.js';
import type { Look } from '../../shared/looks.js';
import type { Block, Message } from '../../shared/messages.js';
import { isShown } from '../practice/lookup.js';
import { rowsIn } from '../progress/in-group.js';
import { reviewDays } from '../progress/review-days.js';
import { stumbledWords, type StumbledWord } from '../progress/words-to-review.js';
import { answer, nameOf, say, staff, type Asked } from './asked.js';
import {
  choice,
  choices,
  form,
  heading,
  look,
  move,
  prose,
  quotation,
  strongProse,
  typed,
} from './blocks.js';
import { groupsAsked } from './groups-asked.js';
import { staffBy } from './staff-posts.js';

async function wordsIn(
  asked: Asked,
  group: Parameters<typeof groupsAsked>[1],
): Promise<readonly StumbledWord[]> {
  const rows = await asked.port.store.evidence({ classId: asked.state.id });
  return groupsAsked(asked, group).flatMap((one) =>
    stumbledWords(asked.state, one.id, rowsIn(asked.state, one.id, rows)),
  );
}

function shownPost(asked: Asked, id: PostId): boolean {
  const post = asked.state.posts[id];
  return post !== undefined && isShown(post);
}

/** Children see a word once its post is public, and the meaning that a tutor confirmed; never a guess as if it were known. */
function forPupils(asked: Asked, words: readonly StumbledWord[]): readonly Block[] {
  const shown = words.filter(({ posts }) => posts.some((post) => shownPost(asked, post)));
  if (shown.length === 0) return [prose(say(asked, 'no words yet'))];
  return shown.map(({ word, meaning }) => strongProse(`${word}:`, meaning ?? say(asked, 'no meaning yet')));
}

function confirmForms(asked: Asked, { word, posts, meaning }: StumbledWord): readonly Block[] {
  return posts.flatMap((id) => {
    const post = asked.state.posts[id];
    if (post === undefined) return [];
    const guess = wordsOf(post.text);
    return [
      ...(guess === null ? [] : [quotation(guess, staffBy(asked.state, post))]),
      ...(meaning === null && guess !== null
        ? choices(null, [choice(staff('confirm guess'), move('confirm-meaning', { post: id }))])
        : []),
      form(
        staff('own meaning', { word }),
        move('confirm-meaning', { post: id }),
        [typed('text', 'meaning', staff('meaning label'), { max: 300, hint: staff('meaning hint') })],
        staff('confirm'),
      ),
    ];
  });
}

function forStaff(asked: Asked, words: readonly StumbledWord[]): readonly Block[] {
  if (words.length === 0) return [prose(staff('no words'))];
  return words.flatMap((word) => [
    heading(word.word),
    prose(staff('word asked', { who: word.pupils.map((person) => nameOf(asked.state, person)).join(', ') })),
    prose(
      word.meaning === null
        ? staff('meaning open')
        : staff('meaning is', { meaning: word.meaning, days: reviewDays.join(', ') }),
    ),
    ...confirmForms(asked, word),
  ]);
}

/** Words that the group stumbled on: to children with confirmed meanings, to staff with guesses to confirm. */
export async function words(
  asked: Asked,
  { group }: Extract<Look, { type: 'words' }>,
): Promise<readonly Message[]> {
  const stumbled = await wordsIn(asked, group);
  if (asked.by.role !== 'pupil') {
    const title = staff('words title');
    return [answer(asked, title, [heading(title), ...forStaff(asked, stumbled)])];
  }
  const title = say(asked, 'our words');
  return [
    answer(asked, title, [
      heading(title),
      ...forPupils(asked, stumbled),
      ...choices(null, [choice(say(asked, 'back'), look('turn'))]),
    ]),
  ];
}
