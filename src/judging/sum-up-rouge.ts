/*
 * Overlap of word sequences, after Lin 2004 (ACL anthology W04-1013):
 *   ROUGE-N = matched n-grams / n-grams of the reference
 *   ROUGE-L: R = LCS / reference, P = LCS / candidate, F = (1 + b^2) R P / (R + b^2 P)
 *   ROUGE-S = matched skip-bigrams, F with b = 1
 */
import { commonInOrder } from './sum-up-overlap.js';

function counted(items: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const item of items) counts.set(item, (counts.get(item) ?? 0) + 1);
  return counts;
}

function matched(candidate: readonly string[], reference: readonly string[]): number {
  const left = counted(candidate);
  let found = 0;
  for (const [item, count] of counted(reference)) found += Math.min(count, left.get(item) ?? 0);
  return found;
}

function grams(words: readonly string[], n: number): readonly string[] {
  return words.slice(0, Math.max(0, words.length - n + 1)).map((_, at) => words.slice(at, at + n).join(' '));
}

function skips(words: readonly string[]): readonly string[] {
  return words.flatMap((word, at) => words.slice(at + 1).map((later) => `${word} ${later}`));
}

function joined(recall: number, precision: number, beta: number): number {
  const below = recall + beta ** 2 * precision;
  return below === 0 ? 0 : ((1 + beta ** 2) * recall * precision) / below;
}

/** Share of the reference's n-grams that the candidate holds, 0..1; 0 where the reference has none. */
export function rougeN(candidate: readonly string[], reference: readonly string[], n: number): number {
  const all = grams(reference, n);
  return all.length === 0 ? 0 : matched(grams(candidate, n), all) / all.length;
}

/** Longest common subsequence as F, 0..1; `beta` above 1 favours recall. */
export function rougeL(candidate: readonly string[], reference: readonly string[], beta = 1): number {
  if (candidate.length === 0 || reference.length === 0) return 0;
  const common = commonInOrder(candidate, reference);
  return joined(common / reference.length, common / candidate.length, beta);
}

/** Pairs of words in order, whatever stands between, as F, 0..1. */
export function rougeSkip(candidate: readonly string[], reference: readonly string[], beta = 1): number {
  const [mine, theirs] = [skips(candidate), skips(reference)];
  if (mine.length === 0 || theirs.length === 0) return 0;
  const found = matched(mine, theirs);
  return joined(found / theirs.length, found / mine.length, beta);
}
