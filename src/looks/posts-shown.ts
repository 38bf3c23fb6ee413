import { wordsOf } from '../../shared/said.js';
import type { Block } from '../../shared/messages.js';
import { askedWord } from '../progress/words-to-review.js';
import type { Post } from '../practice/state.js';
import { nameOf, say, type Asked } from './asked.js';
import { quotation } from './blocks.js';

/** A post's words as children see them, with the word it is about; where the words are gone it says so. */
export function postText(asked: Asked, post: Post): string {
  const words = wordsOf(post.text) ?? say(asked, 'words gone');
  const word = askedWord(asked.state, post);
  return word === null ? words : `${word}: ${words}`;
}

/** Who said it and what kind of post it is: "Wren asked". What the bot seeded is marked as its own. */
export function postBy(asked: Asked, post: Post): string {
  if (post.seeded === 'text') return say(asked, 'by bot');
  if (post.seeded === 'adult') return say(asked, 'by adult');
  return say(asked, `by ${post.do}`, { who: nameOf(asked.state, post.person) });
}

/** A post as a quotation. */
export function postQuotation(asked: Asked, post: Post): Block {
  return quotation(postText(asked, post), postBy(asked, post));
}
