/**
 * How often a judge errs about "level 2 or more". Before a class has checked enough, the error measured on labelled data
 * stands in; later what its own tutor found on posts drawn at random, drawn a little towards that.
 */
import { strategies, type Strategy } from '../../shared/strategies.js';
import type { ClassState } from '../practice/state.js';
import { judgedLevel, randomPosts } from './week-check.js';

/**
 * Measured by `evaluate`: of story questions decided on, those called otherwise than by experts; of sum-ups of like length,
 * pairs put in the wrong order; of children's meanings and predictions of our sealed sets, those told apart wrongly. None of
 * them is quite the error about a level, but none is smaller than it can be known to be.
 */
export const measuredError: Readonly<Record<Strategy, number>> = {
  question: 0.13,
  clarify: 0.28,
  'sum-up': 0.22,
  predict: 0.2,
};

/** So many checks the measured error counts for. */
const before = 20;
/** An error of one half says nothing, so none is taken to be larger. */
const most = 0.45;

/** The error of each judge in a class, 0..0.45. */
export function judgeErrors(state: ClassState): Readonly<Record<Strategy, number>> {
  const checked = randomPosts(state).flatMap((post) => {
    const judged = judgedLevel(post);
    if (judged === null || post.overruled === null) return [];
    return [{ do: post.do, wrong: judged >= 2 !== post.overruled.level >= 2 }];
  });
  const errors = strategies.map((strategy) => {
    const own = checked.filter((one) => one.do === strategy);
    const wrong = own.filter((one) => one.wrong).length;
    const error = (wrong + before * measuredError[strategy]) / (own.length + before);
    return [strategy, Math.min(most, error)] as const;
  });
  return Object.fromEntries(errors) as Record<Strategy, number>;
}
