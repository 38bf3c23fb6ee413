import { wordsOf } from '../../shared/said.js';
import type { Block } from '../../shared/messages.js';
import type { GroupId } from '../../shared/ids.js';
import type { Finding } from '../../shared/judgements.js';
import type { ClassState, Post } from '../practice/state.js';
import { doingWords } from '../progress/doing-words.js';
import { askedWord } from '../progress/words-to-review.js';
import { nameOf, staff, type StaffKey } from './asked.js';
import { quotation } from './blocks.js';

/** What staff call a post: "Wren: question, part 2". */
export function staffBy(state: ClassState, post: Post): string {
  const who = post.seeded === null ? nameOf(state, post.person) : staff(`seeded ${post.seeded}`);
  const slots = { who, doing: doingWords(post.do), part: post.stop + 1 };
  return staff(post.stop < 0 ? 'post before' : post.late ? 'post late' : 'post', slots);
}

/** A post's words for staff, with the word it is about; gone words say so. */
export function staffText(state: ClassState, post: Post): string {
  const words = wordsOf(post.text) ?? staff('words gone');
  const word = askedWord(state, post);
  return word === null ? words : `${word}: ${words}`;
}

/** A post as a quotation for staff. */
export function staffQuotation(state: ClassState, post: Post): Block {
  return quotation(staffText(state, post), staffBy(state, post));
}

/** What a screen found, in words, with the place quoted; an alarm's place is never quoted. */
export function findingWords(post: Post, finding: Finding): string {
  const kind = staff(`finding ${finding.kind}` as StaffKey);
  const text = wordsOf(post.text);
  if (text === null || finding.kind === 'alarm' || finding.place.in !== 'text') return kind;
  const quoted = text.slice(finding.place.start, finding.place.end).trim();
  return quoted === '' ? kind : `${kind}: “${quoted}”`;
}

/** Posts that wait for an adult, those that wait longest first. */
export function heldPosts(state: ClassState, group: GroupId | null = null): readonly Post[] {
  return Object.values(state.posts)
    .filter((post) => post.stage.stage === 'held' && (group === null || post.group === group))
    .toSorted((a, b) => a.at - b.at);
}
