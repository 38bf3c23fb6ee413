/**
 * What the next session could do, as data: each rule finds whom and which post it is about, and how strongly the evidence
 * speaks (0..1). Weights rank the rules among each other and are ours; the order follows what a tutor wants to know first
 * (common practice, no source). The sentences stand in the catalogue under the rule's name.
 */
import { wordsOf } from '../../shared/said.js';
import type { PersonId } from '../../shared/ids.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import { strategies } from '../../shared/strategies.js';
import type { Post } from '../practice/state.js';
import type { Facts } from './facts.js';
import { uncheckedPredictions } from './predictions.js';
import { isMet } from './verdict.js';

/** One thing to do: about whom, from which post, and the figures that its reason names. */
export interface Candidate {
  readonly person: PersonId;
  readonly post: Post;
  readonly strength: number;
  readonly figures: Readonly<Record<string, string | number>>;
}

export interface SuggestionRule {
  readonly name: string;
  readonly weight: number;
  readonly find: (facts: Facts) => readonly Candidate[];
}

/** Copied runs of half of a sum-up's words make it a near copy (from memory: Keck 2006). */
const nearCopy = 0.5;

function postOf(facts: Facts, row: EvidenceRow | undefined): Post | undefined {
  return row?.post == null ? undefined : facts.state.posts[row.post];
}

/** Whether a post can be taken up in a session: its words are there, and no adult has stopped it or has yet to look at a doubt. */
function canBeTakenUp(post: Post): boolean {
  if (wordsOf(post.text) === null) return false;
  switch (post.stage.stage) {
    case 'public':
    case 'draft':
    case 'left':
      return true;
    case 'held':
      return post.stage.why === 'everything' || post.stage.why === 'nothing yet';
    case 'sent back':
    case 'taken back':
    case 'removed':
      return false;
    default:
      return post.stage satisfies never;
  }
}

function candidate(
  person: PersonId,
  post: Post | undefined,
  strength: number,
  figures: Candidate['figures'] = {},
): readonly Candidate[] {
  return post === undefined || !canBeTakenUp(post)
    ? []
    : [{ person, post, strength: Math.min(1, Math.max(0, strength)), figures }];
}

function ownPosts(facts: Facts, person: PersonId, what?: Post['do']): readonly Post[] {
  return facts.sent.filter((post) => post.person === person && (what === undefined || post.do === what));
}

function eachPupil(
  find: (facts: Facts, person: PersonId) => readonly Candidate[],
): (facts: Facts) => readonly Candidate[] {
  return (facts) => facts.pupils.flatMap(({ id }) => find(facts, id));
}

const weakStrategy = eachPupil((facts, person) =>
  strategies.flatMap((strategy) => {
    const progress = facts.progress.get(person)?.[strategy];
    if (progress?.verdict !== 'weak') return [];
    const tries = facts.rows.filter(
      (row) => row.person === person && row.do === strategy && row.given === 'typed',
    );
    const missed = tries.findLast((row) => row.level !== null && !isMet(row));
    const { met, tries: of } = progress;
    return candidate(person, postOf(facts, missed), 1 - met / of, { strategy, met, of });
  }),
);

const wordOfMany = (facts: Facts): readonly Candidate[] =>
  facts.words
    .filter((word) => word.pupils.length >= 2 && word.meaning === null)
    .flatMap((word) => {
      const last = word.posts.at(-1);
      const post = last === undefined ? undefined : facts.state.posts[last];
      const share = word.pupils.length / Math.max(1, facts.pupils.length);
      return post?.person == null
        ? []
        : candidate(post.person, post, share, { word: word.word, many: word.pupils.length });
    });

const pastedSumUp = eachPupil((facts, person) => {
  const pasted = ownPosts(facts, person, 'sum-up').filter(
    ({ first }) => first?.kind === 'sum-up' && first.measures.copied >= nearCopy,
  );
  const last = pasted.at(-1);
  const copied = last?.first?.kind === 'sum-up' ? last.first.measures.copied : 0;
  return candidate(person, last, pasted.length / 3, {
    times: pasted.length,
    percent: Math.round(100 * copied),
  });
});

const belowTwice = eachPupil((facts, person) =>
  strategies.flatMap((strategy) => {
    const last = facts.rows
      .filter(
        (row) => row.person === person && row.do === strategy && row.given === 'typed' && row.level !== null,
      )
      .slice(-2);
    if (last.length < 2 || last.some(isMet) || facts.progress.get(person)?.[strategy].verdict === 'weak')
      return [];
    return candidate(person, postOf(facts, last.at(-1)), last.filter((row) => row.level === 0).length / 2, {
      strategy,
    });
  }),
);

const onlyInTheText = eachPupil((facts, person) => {
  const asked = facts.rows.filter(
    (row) => row.person === person && row.do === 'question' && row.level !== null,
  );
  if (asked.length < 3 || asked.some((row) => row.value !== 'literal')) return [];
  return candidate(person, postOf(facts, asked.at(-1)), asked.length / 6, { many: asked.length });
});

const notLed = eachPupil((facts, person) => {
  const most = Math.max(0, ...facts.led.values());
  if (most === 0 || (facts.led.get(person) ?? 0) > 0) return [];
  const own = ownPosts(facts, person);
  const best = own.findLast((post) => post.do === 'question') ?? own.at(-1);
  return candidate(person, best, most / 3, { most });
});

const unchecked = (facts: Facts): readonly Candidate[] =>
  uncheckedPredictions(facts).flatMap((post) =>
    post.person === null ? [] : candidate(post.person, post, post.latest?.level === 3 ? 1 : 0.5),
  );

const unanswered = (facts: Facts): readonly Candidate[] => {
  const answered = new Set(facts.sent.map((post) => post.to));
  return facts.talk
    .filter((post) => post.do === 'question' && post.stage.stage === 'public' && !answered.has(post.id))
    .flatMap((post) =>
      post.person === null ? [] : candidate(post.person, post, (post.first?.level ?? 1) / 3),
    );
};

const onlyNamesWords = eachPupil((facts, person) => {
  const tries = facts.rows.filter(
    (row) => row.person === person && row.do === 'clarify' && row.level !== null,
  );
  if (tries.length < 2 || tries.some((row) => (row.level ?? 0) > 1)) return [];
  return candidate(person, postOf(facts, tries.at(-1)), tries.length / 5, { many: tries.length });
});

const notAnswered = eachPupil((facts, person) => {
  const wrote = facts.talk.filter((post) => post.person === person);
  if (wrote.length === 0 || wrote.some((post) => post.do === 'answer' || post.do === 'add')) return [];
  const open = facts.talk.findLast(
    (post) =>
      post.do === 'question' &&
      post.person !== person &&
      post.person !== null &&
      post.stage.stage === 'public',
  );
  return candidate(person, open, 0.5);
});

const worthHearing = eachPupil((facts, person) => {
  const met = facts.rows.filter((row) => row.person === person && isMet(row));
  const best = met.findLast((row) => row.level === 3) ?? met.at(-1);
  return candidate(person, postOf(facts, best), best?.level === 3 ? 1 : 0.3);
});

const anyPost = eachPupil((facts, person) =>
  ownPosts(facts, person)
    .slice(-3)
    .flatMap((post) => candidate(person, post, 0.5)),
);

/** Every rule, the weightiest first. */
export const suggestionRules: readonly SuggestionRule[] = [
  { name: 'weak strategy', weight: 100, find: weakStrategy },
  { name: 'word of many', weight: 75, find: wordOfMany },
  { name: 'pasted sum-up', weight: 70, find: pastedSumUp },
  { name: 'below twice', weight: 60, find: belowTwice },
  { name: 'only in the text', weight: 55, find: onlyInTheText },
  { name: 'not led', weight: 50, find: notLed },
  { name: 'prediction unchecked', weight: 45, find: unchecked },
  { name: 'only names words', weight: 40, find: onlyNamesWords },
  { name: 'question unanswered', weight: 35, find: unanswered },
  { name: 'not answered', weight: 30, find: notAnswered },
  { name: 'worth hearing', weight: 10, find: worthHearing },
  { name: 'any post', weight: 0, find: anyPost },
];
