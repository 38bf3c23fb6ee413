import { relationships, strategies, type Relationship } from '../../shared/strategies.js';
import { fill } from '../coaching/catalogue.js';
import { digestWords } from '../coaching/digest-words.js';
import type { Post } from '../practice/state.js';
import type { GroupLine } from './digest-shape.js';
import type { Facts } from './facts.js';
import { isMet } from './verdict.js';

/** Where the answer to a question lives: the asker's word first, then the newest judgement's. */
function whereOf(post: Post): Relationship | 'unsure' {
  if (post.saidWhere !== null) return post.saidWhere;
  const judged = post.second ?? post.latest ?? post.first;
  if (judged?.kind !== 'question' || judged.value === 'unsure') return 'unsure';
  return judged.measures.relationship ?? 'unsure';
}

/** The group as a whole: tries met, where there are enough to say so, and the mix of its questions. */
export function groupLine(facts: Facts): GroupLine {
  const tries = facts.rows.filter(
    (row) => row.given === 'typed' && row.level !== null && strategies.some((one) => one === row.do),
  );
  const met = tries.filter(isMet).length;
  const questions = facts.sent.filter((post) => post.do === 'question' && post.person !== null);
  const mix = Object.fromEntries(
    [...relationships, 'unsure' as const].map((where) => [
      where,
      questions.filter((post) => whereOf(post) === where).length,
    ]),
  ) as Record<Relationship | 'unsure', number>;
  const enough = tries.length >= facts.settings.tries;
  const line = fill(digestWords[enough ? 'group line' : 'group line early'], { met, tries: tries.length });
  return {
    tries: tries.length,
    met,
    mix,
    words: questions.length === 0 ? [line] : [line, fillMix(mix)],
  };
}

function fillMix(mix: Readonly<Record<Relationship | 'unsure', number>>): string {
  return fill(digestWords['question mix'], {
    rightThere: mix['right there'],
    thinkAndSearch: mix['think and search'],
    authorAndMe: mix['author and me'],
    onMyOwn: mix['on my own'],
    unsure: mix.unsure,
  });
}
