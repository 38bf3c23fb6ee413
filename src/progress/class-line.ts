/**
 * A class's own line between literal and inferential. Every judge errs, and a tutor's pupils may ask in ways that the
 * judge reads too often as one kind. Of the questions drawn at random for the week's check, those are counted whose kind
 * the tutor gave otherwise. From a dozen checked since the line last moved on, and where they lean one way so clearly
 * that a fair coin would do so in at most one case of twenty (sign test), the line moves one step that way. It never
 * moves further than three steps, staff are told, and a setting takes it back. Numbers ours, no source.
 */
import type { ClassState, Post } from '../practice/state.js';
import { chanceBelow } from './beta.js';
import { randomPosts } from './week-check.js';

/** The least checked, the chance of a coin, the size of a step and the farthest, as a chance 0..1. */
export const lineRules = { checked: 12, coin: 0.05, step: 0.05, farthest: 0.15 } as const;

/** Where the line goes, with what led there: questions checked, and those that the tutor called `side` and the judge didn't. */
export interface LineStep {
  readonly to: number;
  readonly side: 'literal' | 'inferential';
  readonly checked: number;
  readonly differed: number;
}

interface Pair {
  readonly judged: 'literal' | 'inferential';
  readonly tutor: 'literal' | 'inferential';
}

function pairOf({ do: doing, first, second, overruled }: Post): readonly Pair[] {
  const judged = second ?? first;
  if (doing !== 'question' || judged?.kind !== 'question' || !overruled?.as) return [];
  return judged.value === 'unsure' ? [] : [{ judged: judged.value, tutor: overruled.as }];
}

/** Chance that a fair coin falls one way at least `many` times of `all`. */
function coinChance(many: number, all: number): number {
  return many === 0 ? 1 : chanceBelow(0.5, many, all - many + 1);
}

/** The next step of the class's line, null where it stays. A positive line calls more questions literal. */
export function nextLine(state: ClassState): LineStep | null {
  const pairs = randomPosts(state)
    .filter(({ at }) => at >= state.line.movedAt)
    .flatMap(pairOf);
  if (pairs.length < lineRules.checked) return null;
  const toward = (side: Pair['tutor']): number =>
    pairs.filter(({ judged, tutor }) => tutor === side && judged !== side).length;
  const counts = { literal: toward('literal'), inferential: toward('inferential') };
  const side = counts.literal > counts.inferential ? 'literal' : 'inferential';
  const differed = counts[side];
  if (coinChance(differed, counts.literal + counts.inferential) > lineRules.coin) return null;
  const steps = Math.round(state.line.shift / lineRules.step) + (side === 'literal' ? 1 : -1);
  const to = steps * lineRules.step;
  return Math.abs(to) > lineRules.farthest + 1e-9
    ? null
    : { to: Number(to.toFixed(2)), side, checked: pairs.length, differed };
}
