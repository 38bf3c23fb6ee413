import type { Level } from '../../shared/strategies.js';

/** What decides on the level of a sum-up. */
export interface SumUpStanding {
  readonly words: number;
  readonly sentences: number;
  readonly segmentWords: number;
  /** Different content words that the segment holds too, or their synonyms. */
  readonly sharedWords: number;
  readonly onTopic: number;
  readonly copied: number;
  readonly coverage: number;
  /** Null without an adult's gist. */
  readonly gist: number | null;
  /** The text denies something and the gist doesn't, or the other way round. */
  readonly deniesOtherwise: boolean;
}

/** A row of the table: the first whose test holds gives the level. */
interface LevelRule {
  readonly rule: string;
  readonly level: Level;
  readonly holds: (standing: SumUpStanding) => boolean;
}

/** Near copy from half of the words on, moderate below a fifth (Keck 2006, from memory). */
export const copiedLines = { most: 0.5, some: 0.2 };
/** Below this a sum-up speaks of something else; from the sum-ups of another passage, of which 1 in 200 lies above. */
export const offTopicBelow = 0.25;
/** Lengths after common practice, no source: a segment's gist takes ten to twenty words, a whole passage's a third at most. */
const lengths = { least: 5, gist: 30, third: 0.35, sentences: 3, retold: 0.6, retoldFrom: 40 };
const gistLines = { met: 0.45, missed: 0.12, coverage: 0.3 };

/** Levels as the trade's table has them (common practice, no source); without an adult's gist nobody can know that a sum-up is accurate, so it stops at 2. */
const table: readonly LevelRule[] = [
  { rule: 'nothing told', level: 0, holds: ({ words }) => words < 2 },
  { rule: 'mostly copied', level: 1, holds: ({ copied }) => copied >= copiedLines.most },
  { rule: 'about something else', level: 0, holds: ({ onTopic }) => onTopic < offTopicBelow },
  {
    rule: 'names the topic only',
    level: 1,
    holds: ({ words, sharedWords }) => words < lengths.least || sharedWords < 2,
  },
  {
    rule: 'tells it all again',
    level: 1,
    holds: ({ words, segmentWords }) => words >= lengths.retoldFrom && words > lengths.retold * segmentWords,
  },
  {
    rule: 'misses the gist',
    level: 1,
    holds: ({ gist, coverage }) => gist !== null && gist < gistLines.missed && coverage < gistLines.coverage,
  },
  {
    rule: 'meets the gist in own words',
    level: 3,
    holds: (one) =>
      one.gist !== null &&
      one.gist >= gistLines.met &&
      one.copied < copiedLines.some &&
      one.sentences <= lengths.sentences &&
      one.words <= Math.max(lengths.gist, lengths.third * one.segmentWords) &&
      !one.deniesOtherwise,
  },
  { rule: 'tells the idea partly in own words', level: 2, holds: () => true },
];

/** The level of a sum-up with the rule that gave it. */
export function sumUpLevel(standing: SumUpStanding): { readonly level: Level; readonly rule: string } {
  const row = table.find(({ holds }) => holds(standing));
  return { level: row?.level ?? 2, rule: row?.rule ?? '' };
}
