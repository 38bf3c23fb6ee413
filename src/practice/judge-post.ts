import type { GroupId, PassageId, PersonId } from '../../shared/ids.js';
import type { Judgement, JudgeInput } from '../../shared/judgements.js';
import { wordsOf } from '../../shared/said.js';
import type { Doing } from '../../shared/strategies.js';
import type { Range } from '../../shared/text.js';
import type { Deciding } from './deciding.js';
import { isSent, postsOn, segmentText, under } from './lookup.js';
import type { Post } from './state.js';

/** What of a draft a judge looks at. */
export interface Judged {
  readonly do: Doing;
  readonly text: string;
  readonly person: PersonId | null;
  readonly group: GroupId;
  readonly passage: PassageId;
  readonly stop: number;
  readonly word: string | null;
  readonly offset: number | null;
  readonly to: Post | null;
  readonly place: Range | null;
  readonly fixUp: string | null;
}

/** Judges a draft; null for an addition, which isn't judged. */
export function judgePost(d: Deciding, draft: Judged): Judgement | null {
  const input = inputOf(d, draft);
  return input === null ? null : d.tools.judges.judge(input);
}

/** A post as its judge sees it, null where its words are gone. */
export function judgedOf(d: Deciding, post: Post): Judged | null {
  const text = wordsOf(post.text);
  if (text === null) return null;
  const word = post.word === null ? null : wordsOf(post.word);
  const to = post.to === null ? null : (d.state.posts[post.to] ?? null);
  return { ...post, text, word, to };
}

function inputOf(d: Deciding, draft: Judged): JudgeInput | null {
  const { text, passage, stop } = draft;
  const segment = segmentText(d.state, passage, stop);
  const gist = d.state.shelf[passage]?.gists[stop];
  const adults = gist === undefined ? {} : { gist };
  switch (draft.do) {
    case 'question':
      return {
        kind: 'question',
        segment,
        text,
        ...adults,
        peers: peersOf(d, draft),
        ...(d.state.line.shift === 0 ? {} : { line: d.state.line.shift }),
      };
    case 'sum-up':
      return { kind: 'sum-up', segment, text, ...adults, peers: peersOf(d, draft) };
    case 'clarify':
      return clarifyInput(d, draft, segment);
    case 'predict':
      return { kind: 'predict', segment, text };
    case 'answer':
      return { kind: 'answer', segment, question: (draft.to && wordsOf(draft.to.text)) ?? '', text };
    case 'add':
      return null;
    default:
      return draft.do satisfies never;
  }
}

/** Other pupils' posts of the same kind on the segment. */
function peersOf(d: Deciding, { group, passage, stop, do: doing, person }: Judged): readonly string[] {
  return postsOn(d.state, group, passage, stop)
    .filter((post) => post.do === doing && post.person !== person && isSent(post))
    .flatMap((post) => wordsOf(post.text) ?? []);
}

/** The word that was named, else the words that were tapped. */
function clarifyInput(d: Deciding, draft: Judged, segment: string): JudgeInput {
  const { place } = draft;
  const word = draft.word ?? (place === null ? '' : segment.slice(place.start, place.end));
  const offset = draft.offset ?? (draft.word === null ? (place?.start ?? null) : null);
  const meaning = under(d.state.meanings, word.toLowerCase());
  const known = meaning === undefined ? null : wordsOf(meaning);
  return {
    kind: 'clarify',
    segment,
    word,
    text: draft.text,
    ...(offset === null ? {} : { offset }),
    ...(known === null ? {} : { meaning: known }),
    ...(draft.fixUp === null ? {} : { fixUp: draft.fixUp }),
  };
}
