import { describe, expect, it } from 'vitest';
import { asId, type PersonId, type PostId } from '../../shared/ids.js';
import { nextLine } from '../../src/progress/class-line.js';
import { agreementWithTutor, postsToCheck, randomPosts } from '../../src/progress/week-check.js';
import { decide } from '../../src/practice/decide.js';
import { evolve } from '../../src/practice/evolve.js';
import { tell } from '../../src/practice/tell.js';
import { fakeCalendar } from '../support/fake-calendar.js';
import { fakeJudges } from '../support/fake-judges.js';
import type { ClassState, Post } from '../../src/practice/state.js';
import { day, finch, monday, post, withPosts, wren } from './a-class.js';
import { questionJudged } from './judged.js';

const weeks = 6;
type Kind = 'literal' | 'inferential';

/** Ten judged questions in each of some weeks; those drawn at random are called by the tutor as `tutor` says. */
function checkedClass(
  judged: Kind,
  tutor: (nth: number) => Kind,
  more: Partial<ClassState> = {},
): ClassState {
  const posts: readonly Post[] = Array.from({ length: weeks * 10 }, (_, n) =>
    post(n % 2 === 0 ? wren : finch, 'question', `question ${n}`, {
      id: asId<PostId>(`line-${n}`),
      at: monday + Math.floor(n / 10) * 7 * day + (n % 10) * 60_000,
      first: questionJudged(judged === 'literal' ? 1 : 2, judged, 0.8),
    }),
  );
  const drawn = randomPosts(withPosts(posts));
  const nth = new Map(drawn.map(({ id }, at) => [id, at]));
  const settled = posts.map((one): Post => {
    const at = nth.get(one.id);
    return at === undefined ? one : { ...one, overruled: { level: 2, as: tutor(at) } };
  });
  return withPosts(settled, more);
}

describe('A class’s own line between literal and inferential', () => {
  it('moves a step where enough random checks differ and all lean one way', () => {
    const state = checkedClass('literal', (nth) => (nth % 3 === 0 ? 'inferential' : 'literal'));
    expect(nextLine(state)).toEqual({ to: -0.05, side: 'inferential', checked: 18, differed: 6 });
  });

  it('moves the other way where questions judged inferential are called literal', () => {
    const state = checkedClass('inferential', (nth) => (nth % 3 === 0 ? 'literal' : 'inferential'));
    expect(nextLine(state)).toMatchObject({ to: 0.05, side: 'literal' });
  });

  it('stays where the tutor agrees, and where four that differ may be chance (sign test, .0625)', () => {
    expect(nextLine(checkedClass('literal', () => 'literal'))).toBeNull();
    expect(nextLine(checkedClass('literal', (nth) => (nth < 4 ? 'inferential' : 'literal')))).toBeNull();
    expect(nextLine(checkedClass('literal', (nth) => (nth < 5 ? 'inferential' : 'literal')))).toMatchObject({
      differed: 5,
    });
  });

  it('stays within three steps, and counts only checks since it last moved', () => {
    const far = { line: { shift: -0.15, movedAt: 0 } };
    expect(nextLine(checkedClass('literal', () => 'inferential', far))).toBeNull();
    const lately = { line: { shift: -0.05, movedAt: monday + 3 * 7 * day } };
    expect(nextLine(checkedClass('literal', () => 'inferential', lately))).toBeNull();
    const once = { line: { shift: -0.05, movedAt: monday + day } };
    expect(nextLine(checkedClass('literal', () => 'inferential', once))).toMatchObject({
      to: -0.1,
      checked: 15,
    });
  });
});

describe('The week’s check', () => {
  it('asks about questions of which the judge was unsure, which never count for the agreement', () => {
    const unsure = Array.from({ length: 4 }, (_, n) =>
      post(wren, 'question', `question ${n}`, {
        id: asId<PostId>(`unsure-${n}`),
        first: questionJudged(null, 'unsure', 0.55),
      }),
    );
    const state = withPosts(unsure);
    const check = postsToCheck(state, unsure[0]?.at ?? 0);
    expect(check.map(({ why }) => why)).toEqual(['least sure', 'least sure', 'least sure']);
    expect(agreementWithTutor(state)).toMatchObject({ checked: 0, kappa: null, low: null });
  });

  it('gives kappa with its range, the same each time', () => {
    const state = checkedClass('literal', () => 'inferential');
    const first = agreementWithTutor(state);
    expect(first).toEqual(agreementWithTutor(state));
    expect(first.low).not.toBeNull();
    expect(first.low ?? 1).toBeLessThanOrEqual(first.kappa ?? -1);
    expect(first.high ?? -1).toBeGreaterThanOrEqual(first.kappa ?? 1);
  });
});

describe('A tutor’s check that makes the line move', () => {
  const tern = asId<PersonId>('t-tern');
  const tools = { judges: fakeJudges, calendar: fakeCalendar };
  const overrule = (state: ClassState, id: PostId) =>
    decide(
      state,
      {
        classId: state.id,
        by: tern,
        at: monday + weeks * 7 * day,
        seed: 1,
        given: 'typed',
        move: { type: 'overrule', post: id, level: 2, as: 'inferential' },
      },
      tools,
    );
  const whole = checkedClass('literal', (nth) => (nth < 5 ? 'inferential' : 'literal'));
  const last = randomPosts(whole)[0];
  const before: ClassState = {
    ...whole,
    posts: { ...whole.posts, ...(last ? { [last.id]: { ...last, overruled: null } } : {}) },
  };

  it('says so to staff and can be taken back', () => {
    const decision = overrule(before, last?.id ?? asId<PostId>(''));
    const events = 'events' in decision ? decision.events : [];
    expect(events.slice(-2).map(({ type }) => type)).toEqual(['overruled', 'line-moved']);
    const after = events.reduce(evolve, before);
    expect(after.line.shift).toBe(-0.05);
    const [said] = events.slice(-1).flatMap((event) => tell(after, event));
    expect(said?.do === 'say' && said.message.summary).toContain('you called 5 inferential');
    const back = evolve(after, {
      type: 'setting-changed',
      setting: 'question line',
      value: 'as measured',
      at: monday,
      by: tern,
    });
    expect(back.line.shift).toBe(0);
    const stays = overrule({ ...before, settings: back.settings }, last?.id ?? asId<PostId>(''));
    expect('events' in stays && stays.events.at(-1)?.type).toBe('overruled');
  });
});
