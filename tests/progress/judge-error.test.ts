import { describe, expect, it } from 'vitest';
import { asId, type PostId } from '../../shared/ids.js';
import { strategies } from '../../shared/strategies.js';
import type { Post } from '../../src/practice/state.js';
import { judgeErrors, measuredError } from '../../src/progress/judge-error.js';
import { randomPosts } from '../../src/progress/week-check.js';
import { day, monday, post, withPosts, wren } from './a-class.js';
import { questionJudged } from './judged.js';

/** Thirty weeks with one judged question each, which is thereby the one drawn; the tutor gives some another level. */
function checked(wrong: number): readonly Post[] {
  return Array.from({ length: 30 }, (_, n): Post => ({
    ...post(wren, 'question', `question ${n}`, {
      id: asId<PostId>(`error-${n}`),
      at: monday + n * 7 * day,
      first: questionJudged(2, 'inferential', 0.8),
    }),
    overruled: { level: n < wrong ? 1 : 2, as: null },
  }));
}

describe('How often a judge errs in a class', () => {
  it('is what was measured, as long as nobody has checked', () => {
    for (const strategy of strategies)
      expect(judgeErrors(withPosts([]))[strategy]).toBeCloseTo(measuredError[strategy], 9);
  });

  it('falls where a tutor agrees and rises where not, each strategy for itself', () => {
    expect(randomPosts(withPosts(checked(0)))).toHaveLength(30);
    const agreed = judgeErrors(withPosts(checked(0)));
    expect(agreed.question).toBeCloseTo((20 * measuredError.question) / 50, 9);
    expect(agreed.predict).toBeCloseTo(measuredError.predict, 9);
    const often = judgeErrors(withPosts(checked(15)));
    expect(often.question).toBeCloseTo((15 + 20 * measuredError.question) / 50, 9);
  });

  it('is never taken for one half or more', () => {
    expect(judgeErrors(withPosts(checked(30))).question).toBe(0.45);
  });
});
