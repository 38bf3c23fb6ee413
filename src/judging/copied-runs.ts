import type { Range } from '../../shared/text.js';
import type { Analysis } from '../text/analysis.js';

/*
 * Copied runs, robust to a word changed, misspelt, swapped or dropped here and there.
 *
 * Every word of the text that stands in the source is a match of two positions. Matches whose distance differs by at
 * most `band` lie in one band, in which small swaps and gaps do not matter. Along a band a run grows by what matches and
 * shrinks by what does not, as in local alignment; it ends at its best word. A run counts from six matched words with
 * three content words that are neither names nor unavoidable terms (ours, after Keck 2006, from memory: strings of
 * five words would make half of a ten-word sum-up a copy).
 */

/** A stretch of words that stands in the source, nearly word for word; token numbers, end exclusive. */
export interface CopiedRun {
  readonly first: number;
  readonly end: number;
  /** Where it stands in the source's text, UTF-16. */
  readonly source: Range;
}

const band = 2;
/** Distances within a band, the nearest first. */
const nearby = Array.from({ length: band }, (_, n) => [-n - 1, n + 1]).reduce(
  (all, pair) => [...all, ...pair],
  [0],
);
const shortest = { words: 6, contentWords: 3 };
/** How a run's score moves with a word; a run ends once it has lost `drop` since its best word. */
const score = { content: 1, small: 0.5, otherContent: -1.2, otherSmall: -0.5, drop: 3 };

/** Places of each key in the source, in order. */
function placesOf(keys: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  keys.forEach((key, at) => {
    const known = places.get(key);
    if (known) known.push(at);
    else places.set(key, [at]);
  });
  return places;
}

/** Matches by distance: for each distance (source minus text, shifted to 0) the text positions, in order. */
function matchesByDistance(
  textKeys: readonly string[],
  sourceKeys: readonly string[],
): ReadonlyMap<number, readonly number[]> {
  const places = placesOf(sourceKeys);
  const byDistance = new Map<number, number[]>();
  textKeys.forEach((key, at) => {
    for (const place of places.get(key) ?? []) {
      const distance = place - at + textKeys.length;
      const known = byDistance.get(distance);
      if (known) known.push(at);
      else byDistance.set(distance, [at]);
    }
  });
  return byDistance;
}

interface Band {
  /** For each text position the matched source position, or -1. */
  readonly at: Int32Array;
  readonly first: number;
  readonly last: number;
}

function bandAround(
  centre: number,
  length: number,
  matches: ReadonlyMap<number, readonly number[]>,
): Band | null {
  const at = new Int32Array(length).fill(-1);
  let first = length;
  let last = -1;
  let found = 0;
  for (const off of nearby) {
    for (const text of matches.get(centre + off) ?? []) {
      if (at[text] !== -1) continue;
      at[text] = text + centre + off - length;
      found++;
      if (text < first) first = text;
      if (text > last) last = text;
    }
  }
  return found < shortest.words ? null : { at, first, last };
}

/** What a run must hold to count: content words that are not free (names, unavoidable terms). */
interface Weighing {
  readonly content: readonly boolean[];
  readonly free: readonly boolean[];
}

function counts(from: number, to: number, { at }: Band, { content, free }: Weighing): boolean {
  let words = 0;
  let contentWords = 0;
  for (let n = from; n <= to; n++) {
    if (at[n] === -1) continue;
    words++;
    if (content[n] && !free[n]) contentWords++;
  }
  return words >= shortest.words && contentWords >= shortest.contentWords;
}

function sourceRange(from: number, to: number, { at }: Band, source: Analysis): Range {
  let first = Infinity;
  let last = -1;
  for (let n = from; n <= to; n++) {
    const place = at[n] ?? -1;
    if (place === -1) continue;
    if (place < first) first = place;
    if (place > last) last = place;
  }
  return { start: source.tokens[first]?.start ?? 0, end: source.tokens[last]?.end ?? 0 };
}

/** Runs along one band: grown word by word, cut at their best word. */
function runsAlong(along: Band, weighing: Weighing, source: Analysis): CopiedRun[] {
  const runs: CopiedRun[] = [];
  let from = -1;
  let sum = 0;
  let best = 0;
  let bestAt = -1;
  const close = () => {
    if (from >= 0 && bestAt >= from && counts(from, bestAt, along, weighing)) {
      runs.push({ first: from, end: bestAt + 1, source: sourceRange(from, bestAt, along, source) });
    }
    from = -1;
  };
  for (let n = along.first; n <= along.last; n++) {
    const matched = along.at[n] !== -1;
    if (from < 0) {
      if (!matched) continue;
      from = n;
      sum = 0;
      best = 0;
      bestAt = -1;
    }
    const content = weighing.content[n] === true;
    sum += matched
      ? content
        ? score.content
        : score.small
      : content
        ? score.otherContent
        : score.otherSmall;
    if (matched && sum > best) {
      best = sum;
      bestAt = n;
    } else if (sum <= 0 || sum < best - score.drop) {
      const again = bestAt;
      close();
      if (again >= 0) n = again;
    }
  }
  close();
  return runs;
}

/** Runs of the text that stand in the source nearly word for word. `textKeys` and `sourceKeys` are what words are compared by, one a token; `free` marks the text's names and unavoidable terms. */
export function copiedRuns(
  text: Analysis,
  textKeys: readonly string[],
  source: Analysis,
  sourceKeys: readonly string[],
  free: readonly boolean[],
): readonly CopiedRun[] {
  const weighing = { content: text.tokens.map(({ content }) => content), free };
  const matches = matchesByDistance(textKeys, sourceKeys);
  const runs: CopiedRun[] = [];
  for (const [centre, own] of matches) {
    if (!own.some((at) => weighing.content[at])) continue;
    const along = bandAround(centre, textKeys.length, matches);
    if (along) runs.push(...runsAlong(along, weighing, source));
  }
  return runs;
}
