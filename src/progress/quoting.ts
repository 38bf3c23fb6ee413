import type { PersonId, PostId } from '../../shared/ids.js';
import { wordsOf } from '../../shared/said.js';
import { digestWords } from '../coaching/digest-words.js';
import { fill } from '../coaching/catalogue.js';
import type { ClassState } from '../practice/state.js';

/** A text on one line, cut between words with "…" where it is longer than `most` characters. */
export function shortened(text: string, most: number): string {
  const line = text.replace(/\s+/gu, ' ').trim();
  if (line.length <= most) return line;
  const cut = line.slice(0, most);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), most - 30)).trimEnd()}…`;
}

/** A post as the digest quotes it: its words, or that they are gone or sealed. */
export function quoteOf(state: ClassState, post: PostId | null): string {
  const found = post === null ? undefined : state.posts[post];
  if (found?.stage.stage === 'held' && found.stage.why === 'alarm') return fill(digestWords['words sealed']);
  const words = found === undefined ? null : wordsOf(found.text);
  if (words !== null) return words;
  return fill(digestWords[post === null ? 'no words kept' : 'words gone']);
}

/** What a person is called here, also where the nickname is gone. */
export function nameOf(state: ClassState, person: PersonId | null): string {
  const found = person === null ? undefined : state.people[person];
  return (found === undefined ? null : wordsOf(found.nickname)) ?? fill(digestWords['name gone']);
}
