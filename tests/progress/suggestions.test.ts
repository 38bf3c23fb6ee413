import { describe, expect, it } from 'vitest';
import type { EvidenceRow } from '../../shared/evidence.js';
import { said } from '../../shared/said.js';
import { fill, type Catalogue } from '../../src/coaching/catalogue.js';
import { digestWords } from '../../src/coaching/digest-words.js';
import { gather } from '../../src/progress/facts.js';
import { suggestionRules } from '../../src/progress/suggestion-rules.js';
import { suggestionsFor } from '../../src/progress/suggestions.js';
import type { Post } from '../../src/practice/state.js';
import { day, finch, group, held, monday, plover, post, row, tries, withPosts, wren } from './a-class.js';
import { questionJudged, sumUpJudged } from './judged.js';

interface Seen {
  readonly posts: readonly Post[];
  readonly rows?: readonly EvidenceRow[];
}

const at = monday + 9 * day;
const facts = ({ posts, rows = [] }: Seen) => gather({ state: withPosts(posts), group, rows, at });
const asks = (by: typeof wren): Post => post(by, 'clarify', 'a rope maybe', { word: said(by, 'mooring') });
const sumUp = (copied: number): Post =>
  post(wren, 'sum-up', 'boats lie on the mud', { first: sumUpJudged(1, copied) });
const clarify = (levels: (0 | 1 | 2)[]): Seen => tries(wren, 'clarify', levels);
const asked = post(wren, 'question', 'why do they wait', { first: questionJudged(2, 'inferential') });
const answered = post(finch, 'answer', 'no water', { to: asked.id });

function questions(values: ('literal' | 'inferential')[]): Seen {
  const posts = values.map((value) =>
    post(finch, 'question', `a ${value} one`, { first: questionJudged(2, value) }),
  );
  return { posts, rows: posts.map((one) => row(one, 2)) };
}

/** Every rule with what it speaks up for and what it must leave alone. */
const examples: Record<string, { matches: Seen; mustNot: Seen }> = {
  'weak strategy': {
    matches: tries(wren, 'sum-up', [0, 1, 1, 0, 1]),
    mustNot: tries(wren, 'sum-up', [0, 1, 1, 0]),
  },
  'word of many': {
    matches: { posts: [asks(wren), asks(finch)] },
    mustNot: { posts: [asks(wren), asks(wren)] },
  },
  'pasted sum-up': { matches: { posts: [sumUp(0.8)] }, mustNot: { posts: [sumUp(0.3)] } },
  'below twice': { matches: tries(wren, 'sum-up', [2, 1, 0]), mustNot: tries(wren, 'sum-up', [0, 1, 2]) },
  'only in the text': {
    matches: questions(['literal', 'literal', 'literal']),
    mustNot: questions(['literal', 'inferential', 'literal']),
  },
  'not led': { matches: { posts: [post(plover, 'question', 'why mud')] }, mustNot: { posts: [asked] } },
  'prediction unchecked': {
    matches: { posts: [post(wren, 'predict', 'they sail')] },
    mustNot: { posts: [post(wren, 'predict', 'they sail', { outcome: 'partly' })] },
  },
  'only names words': { matches: clarify([1, 0]), mustNot: clarify([1, 2]) },
  'question unanswered': { matches: { posts: [asked] }, mustNot: { posts: [asked, answered] } },
  'not answered': {
    matches: { posts: [asked, post(finch, 'sum-up', 'boats wait')] },
    mustNot: { posts: [asked, answered] },
  },
  'worth hearing': { matches: tries(wren, 'question', [3]), mustNot: tries(wren, 'question', [1]) },
  'any post': { matches: { posts: [asked] }, mustNot: { posts: [] } },
};

describe('Rules for suggestions', () => {
  it('each have an example that matches and one that must not', () => {
    expect(Object.keys(examples).toSorted()).toEqual(suggestionRules.map(({ name }) => name).toSorted());
  });

  it.each(suggestionRules.map((rule) => ({ name: rule.name, rule })))('$name', ({ name, rule }) => {
    const example = examples[name];
    if (example === undefined) throw new Error(`No example for ${name}`);
    const [found] = rule.find(facts(example.matches));
    expect(found).toBeDefined();
    expect(rule.find(facts(example.mustNot))).toEqual([]);
    for (const part of ['text', 'reason']) {
      const entry = (digestWords as Catalogue)[`${name} ${part}`];
      const slots = { pupil: 'Wren', asker: 'Finch', quote: 'why mud', doing: 'question', ...found?.figures };
      expect(entry && fill(entry, slots)).toContain('Wren');
    }
  });

  it('say nothing about a post whose words are gone', () => {
    const gone = post(wren, 'question', '', { text: { kind: 'said', by: wren, gone: 'erased' } });
    expect(suggestionsFor(facts({ posts: [gone] }))).toEqual([]);
  });
});

describe('What must not be taken up', () => {
  it.each([
    { name: 'waits with a doubt', stage: held('doubtful', at) },
    { name: 'is an alarm', stage: held('alarm', at) },
    { name: 'was removed', stage: { stage: 'removed' } as const },
    { name: 'was taken back', stage: { stage: 'taken back' } as const },
  ])('a post that $name', ({ stage }) => {
    const posts = [post(finch, 'question', 'you stupid boat', { stage }), post(wren, 'sum-up', 'boats wait')];
    const own = tries(finch, 'sum-up', [0, 0, 0, 0, 0]);
    const stopped = own.posts.map((one) => ({ ...one, stage }));
    const found = suggestionsFor(facts({ posts: [...posts, ...stopped], rows: own.rows }));
    expect(found.map(({ pupil }) => pupil)).toEqual(['Wren']);
    expect(JSON.stringify(found)).not.toContain('stupid');
  });
});

const copiers: Seen = (() => {
  const own = tries(wren, 'sum-up', [0, 1, 1, 0, 1]);
  return {
    posts: [
      ...own.posts,
      sumUp(0.9),
      post(finch, 'predict', 'they will sail'),
      post(plover, 'question', 'why mud'),
    ],
    rows: own.rows ?? [],
  };
})();
const askers: Seen = (() => {
  const own = questions(['literal', 'literal', 'literal']);
  const heard = tries(plover, 'sum-up', [3]);
  return {
    posts: [...own.posts, ...heard.posts, asks(wren), asks(finch)],
    rows: [...(own.rows ?? []), ...heard.rows],
  };
})();

describe('Three suggestions', () => {
  it('name pupil, post and reason, and speak about three different pupils where there are three', () => {
    const three = suggestionsFor(facts(copiers));
    expect(three.map(({ rule, pupil }) => ({ rule, pupil }))).toEqual([
      { rule: 'weak strategy', pupil: 'Wren' },
      { rule: 'not led', pupil: 'Plover' },
      { rule: 'prediction unchecked', pupil: 'Finch' },
    ]);
    for (const { text, reason, pupil, post: id } of three) {
      expect(text + reason).toContain(pupil);
      expect(copiers.posts.map((one) => one.id)).toContain(id);
      expect(text).toMatch(/“.+”/u);
      expect(reason.length).toBeGreaterThan(20);
    }
  });

  it('differ between two classes', () => {
    const texts = (seen: Seen) => suggestionsFor(facts(seen)).map(({ text }) => text);
    expect(texts(askers)).toHaveLength(3);
    expect(texts(copiers).filter((text) => texts(askers).includes(text))).toEqual([]);
  });

  it('carry the figures that they rest on', () => {
    expect(suggestionsFor(facts(copiers))[0]).toMatchObject({
      text: 'Model summing up for Wren once, then share a turn, starting from “sum-up number 5 of mine”.',
      reason: 'Wren met the mark in 0 of 5 tries at it, on different days and passages.',
    });
  });
});
