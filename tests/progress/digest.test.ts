import { describe, expect, it } from 'vitest';
import { asId, type AlarmId, type PostId } from '../../shared/ids.js';
import { said } from '../../shared/said.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import { digestOf } from '../../src/progress/digest.js';
import type { Post } from '../../src/practice/state.js';
import {
  aClass,
  aGroup,
  day,
  finch,
  group,
  held,
  monday,
  plover,
  post,
  row,
  tern,
  tries,
  withPosts,
  wren,
} from './a-class.js';
import { harbour } from './a-shelf.js';
import { questionJudged, sumUpJudged } from './judged.js';

const at = monday + 10 * day;
const digest = (posts: readonly Post[], rows: readonly EvidenceRow[] = [], more = {}) =>
  digestOf({ state: withPosts(posts, more), group, rows, at });

describe('The digest', () => {
  it('of a class that has done nothing has every field and says not enough yet', () => {
    const empty = digestOf({ state: aClass(), group, rows: [], at });
    expect(empty.passages).toEqual([{ title: 'The Sleeping Harbour', segments: 3, closed: 2 }]);
    expect(empty.pupils.map(({ nickname, led, posts }) => ({ nickname, led, posts }))).toEqual([
      { nickname: 'Wren', led: 2, posts: 0 },
      { nickname: 'Finch', led: 1, posts: 0 },
      { nickname: 'Plover', led: 0, posts: 0 },
    ]);
    for (const pupil of empty.pupils) {
      expect(Object.keys(pupil.strategies)).toEqual(['question', 'clarify', 'sum-up', 'predict']);
      for (const one of Object.values(pupil.strategies)) {
        expect(one).toMatchObject({ tries: 0, met: 0, verdict: 'not enough yet', trend: null });
        expect(one.low).toBeCloseTo(0.025, 6);
        expect(one.high).toBeCloseTo(0.975, 6);
      }
      expect(pupil.evidence).toEqual([]);
    }
    expect(empty).toMatchObject({ held: 0, alarms: 0, words: [], next: [], predictions: [], check: [] });
    expect(empty.notLed).toEqual(['Plover']);
  });

  it('gives the same bytes for the same input', () => {
    const { posts, rows } = tries(wren, 'sum-up', [0, 1, 0, 1, 0, 1]);
    expect(JSON.stringify(digest(posts, rows))).toBe(JSON.stringify(digest(posts, rows.toReversed())));
  });

  it('never pools what was typed with what was said, scribed or heard', () => {
    const typed = tries(wren, 'sum-up', [1, 1]);
    const told = tries(wren, 'sum-up', [2, 3, 2]);
    const spoken = told.rows.map((one) => ({ ...one, given: 'said' as const }));
    const [first] = digest([...typed.posts, ...told.posts], [...typed.rows, ...spoken]).pupils;
    expect(first?.strategies['sum-up']).toMatchObject({ tries: 2, met: 0 });
    expect(first?.otherwise.map(({ given }) => given)).toEqual(['said']);
    expect(first?.otherwise[0]?.strategies['sum-up']).toMatchObject({ tries: 3, met: 3 });
  });

  it('quotes a try with its reason in words, and says when the words are gone', () => {
    const kept = post(wren, 'sum-up', 'boats wait for water', { first: sumUpJudged(2) });
    const gone = post(finch, 'sum-up', '', {
      first: sumUpJudged(1),
      text: { kind: 'said', by: finch, gone: 'expired' },
    });
    const { pupils } = digest([kept, gone], [row(kept, 2), row(gone, 1)]);
    expect(pupils[0]?.evidence).toEqual([
      {
        text: 'boats wait for water',
        reason: 'Level 2 by the judge.',
        post: kept.id,
        do: 'sum-up',
        level: 2,
      },
    ]);
    expect(pupils[1]?.evidence[0]?.text).toBe('(The words are gone; the number stays.)');
    expect(pupils[1]?.strategies['sum-up']).toMatchObject({ tries: 1, met: 0 });
  });

  it("says that a level is the tutor's own", () => {
    const kept = post(wren, 'sum-up', 'boats wait', {
      first: sumUpJudged(1),
      overruled: { level: 3, as: null },
    });
    const { pupils } = digest([kept], [row(kept, 3, { settledBy: 'tutor' })]);
    expect(pupils[0]?.evidence[0]?.reason).toBe('Level 3, by your own word.');
  });

  it('counts what waits and what alarmed, and shows no word of an alarm', () => {
    const waits = post(wren, 'question', 'why mud', { stage: held('doubtful', at) });
    const alarm = asId<AlarmId>('al-1');
    const found = digest([waits], [], {
      alarms: {
        [alarm]: { id: alarm, person: wren, at, escalatesAt: at, acknowledgedBy: null, escalated: false },
      },
    });
    expect(found).toMatchObject({ held: 1, alarms: 1 });
  });

  it('leaves out drafts and what was taken back', () => {
    const draft = post(wren, 'question', 'secret', { stage: { stage: 'draft', postsItselfAt: null } });
    const back = post(wren, 'question', 'secret', { stage: { stage: 'taken back' } });
    const found = digest([draft, back]);
    expect(found.pupils[0]?.posts).toBe(0);
    expect(JSON.stringify(found)).not.toContain('secret');
  });

  it('gathers the words that pupils stumbled on, most pupils first, with the confirmed meaning alone', () => {
    const asks = (by: typeof wren, word: string) =>
      post(by, 'clarify', 'maybe a rope', { word: said(by, word), first: null });
    const posts = [asks(finch, 'creeps'), asks(wren, 'Mooring'), asks(finch, 'mooring')];
    expect(digest(posts).words).toEqual([
      { word: 'mooring', pupils: ['Wren', 'Finch'], meaning: null, posts: [posts[1]?.id, posts[2]?.id] },
      { word: 'creeps', pupils: ['Finch'], meaning: null, posts: [posts[0]?.id] },
    ]);
    const known = digest(posts, [], { meanings: { mooring: said(tern, 'a place to tie a boat') } });
    expect(known.words[0]?.meaning).toBe('a place to tie a boat');
  });

  it('lists predictions whose part is closed and that nobody went back to', () => {
    const open = post(wren, 'predict', 'they will sail', { stop: 0 });
    const checked = post(finch, 'predict', 'it will rain', { stop: -1, outcome: 'changed' });
    const early = post(plover, 'predict', 'they will sleep', { stop: 1 });
    expect(digest([open, checked, early]).predictions.map(({ text }) => text)).toEqual(['they will sail']);
  });

  it("tells the group's line only where there are enough tries, and the mix of its questions", () => {
    const one = post(wren, 'question', 'why mud', { first: questionJudged(2, 'inferential') });
    const two = post(finch, 'question', 'when noon', { saidWhere: 'think and search' });
    const early = digest([one, two], [row(one, 2)]);
    expect(early.group.words[0]).toContain('too few');
    expect(early.group.mix).toMatchObject({ 'author and me': 1, 'think and search': 1, unsure: 0 });
    const many = tries(wren, 'question', [1, 2, 2, 2, 3]);
    expect(digest(many.posts, many.rows).group.words[0]).toBe(
      'The group so far: 4 of 5 typed tries met the mark (level 2 or more).',
    );
  });

  it('names who has answered nobody', () => {
    const asked = post(wren, 'question', 'why mud');
    const answered = post(finch, 'answer', 'because the tide is out', { to: asked.id });
    expect(digest([asked, answered]).notAnswered).toEqual(['Wren', 'Plover']);
  });
});

describe('Moving and leaving', () => {
  it('a pupil who moved takes the evidence along; one who left is not listed', () => {
    const { posts, rows } = tries(wren, 'sum-up', [2, 2]);
    const other = asId<typeof group>('g-2');
    const state = withPosts(posts);
    const moved = {
      ...state,
      groups: { ...state.groups, [other]: aGroup({ id: other, finished: [{ passage: harbour, at }] }) },
      people: {
        ...state.people,
        [wren]: { ...state.people[wren]!, group: other },
        [finch]: { ...state.people[finch]!, removed: true },
      },
    };
    const there = digestOf({ state: moved, group: other, rows, at });
    expect(there.pupils.map(({ nickname }) => nickname)).toEqual(['Wren']);
    expect(there.pupils[0]?.strategies['sum-up'].tries).toBe(2);
    expect(digestOf({ state: moved, group, rows, at }).pupils.map(({ nickname }) => nickname)).toEqual([
      'Plover',
    ]);
  });
});

describe('Posts to check', () => {
  const posts = Array.from({ length: 10 }, (_, n) =>
    post(n % 2 === 0 ? wren : finch, 'question', `question ${n}`, {
      id: asId<PostId>(`check-${n}`),
      at: monday + n * 60_000,
      first: questionJudged(1, 'literal', 0.5 + n / 20),
    }),
  );
  const rows = posts.map((one) => row(one, 1));
  const inWeek = monday + 2 * day;

  it('are three at random and the three that the judge is least sure of, the same on every look', () => {
    const { check } = digestOf({ state: withPosts(posts), group, rows, at: inWeek });
    expect(check.map(({ why }) => why)).toEqual([
      'at random',
      'at random',
      'at random',
      'least sure',
      'least sure',
      'least sure',
    ]);
    const random = new Set(check.slice(0, 3).map((one) => one.post));
    const rest = posts.map((one) => one.id).filter((id) => !random.has(id));
    expect(check.slice(3).map((one) => one.post)).toEqual(rest.slice(0, 3));
    expect(digestOf({ state: withPosts(posts), group, rows, at: inWeek }).check).toEqual(check);
  });

  it('count for the agreement only where they were drawn at random', () => {
    const { check } = digestOf({ state: withPosts(posts), group, rows, at: inWeek });
    const settle = (which: 'at random' | 'least sure', level: 1 | 2) =>
      posts.map((one) =>
        check.some((found) => found.post === one.id && found.why === which)
          ? { ...one, overruled: { level, as: null } }
          : one,
      );
    const ofUnsure = digestOf({ state: withPosts(settle('least sure', 2)), group, rows, at: inWeek });
    expect(ofUnsure.agreement).toEqual({
      checked: 0,
      same: 0,
      kappa: null,
      low: null,
      high: null,
      words: 'not computable',
    });
    const ofRandom = digestOf({ state: withPosts(settle('at random', 1)), group, rows, at: inWeek });
    expect(ofRandom.agreement).toMatchObject({ checked: 3, same: 3, words: 'not computable' });
    const other = digestOf({ state: withPosts(settle('at random', 2)), group, rows, at: inWeek });
    expect(other.agreement).toMatchObject({ checked: 3, same: 0, kappa: 0 });
  });

  it('are drawn evenly: over many classes each of ten posts comes up about three times in ten', () => {
    const counts = new Map<string, number>();
    for (let n = 0; n < 1000; n += 1) {
      const state = { ...withPosts(posts), id: asId<ReturnType<typeof aClass>['id']>(`c-${n}`) };
      for (const { post: id, why } of digestOf({ state, group, rows, at: inWeek }).check) {
        if (why === 'at random') counts.set(id, (counts.get(id) ?? 0) + 1);
      }
    }
    // Five standard deviations of a binomial with 1000 draws at 0.3 are 72.
    for (const one of posts) expect(Math.abs((counts.get(one.id) ?? 0) - 300)).toBeLessThan(73);
  });
});
