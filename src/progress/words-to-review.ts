/**
 * Words that a group stumbled on. A meaning goes into review only when the tutor has confirmed it; what pupils guessed is
 * never taught back to them.
 */
import type { EvidenceRow } from '../../shared/evidence.js';
import type { GroupId, PersonId, PostId } from '../../shared/ids.js';
import { wordsOf } from '../../shared/said.js';
import type { ClassState, Post } from '../practice/state.js';
import { pupilsIn, sentIn } from './in-group.js';

/** A word that pupils asked about. */
export interface StumbledWord {
  readonly word: string;
  readonly pupils: readonly PersonId[];
  readonly posts: readonly PostId[];
  /** The meaning that the tutor confirmed, null while there is none (or its words are gone). */
  readonly meaning: string | null;
}

/** The word that a clarifying post is about, as the pupil wrote it or tapped it; null where there is none. */
export function askedWord(state: ClassState, { word, place, passage, stop, do: doing }: Post): string | null {
  if (word !== null) return wordsOf(word);
  if (doing !== 'clarify' || place === null) return null;
  const segment = state.shelf[passage]?.reading.segments[stop]?.text ?? '';
  return segment.slice(place.start, place.end) || null;
}

/** The word as it stands in the passage where it was found there, else as it was asked about, in lower case. */
function wordAsked(state: ClassState, post: Post, row: EvidenceRow | undefined): string | null {
  const asked = row?.word ?? askedWord(state, post);
  return asked === null || asked.trim() === '' ? null : asked.trim().toLowerCase();
}

/** Words that pupils of a group clarified, the ones that most pupils asked about first, then the newest. */
export function stumbledWords(
  state: ClassState,
  group: GroupId | null,
  rows: readonly EvidenceRow[],
): readonly StumbledWord[] {
  const byPost = new Map(rows.map((row) => [row.post, row]));
  const here = new Set(pupilsIn(state, group).map((person) => person.id));
  const found = new Map<string, { pupils: Set<PersonId>; posts: PostId[] }>();
  for (const post of sentIn(state, null)) {
    if (post.do !== 'clarify' || post.person === null || !here.has(post.person)) continue;
    const word = wordAsked(state, post, byPost.get(post.id));
    if (word === null) continue;
    const seen = found.get(word) ?? { pupils: new Set<PersonId>(), posts: [] };
    seen.pupils.add(post.person);
    seen.posts.push(post.id);
    found.set(word, seen);
  }
  return [...found]
    .map(([word, { pupils, posts }]) => ({
      word,
      pupils: [...pupils],
      posts,
      meaning: confirmedMeaning(state, word),
    }))
    .reverse()
    .toSorted((a, b) => b.pupils.length - a.pupils.length);
}

function confirmedMeaning(state: ClassState, word: string): string | null {
  const meaning = Object.hasOwn(state.meanings, word) ? state.meanings[word] : undefined;
  return meaning === undefined ? null : wordsOf(meaning);
}
