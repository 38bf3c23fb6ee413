import type { PredictJudgement } from '../../shared/judgements.js';
import type { Level } from '../../shared/strategies.js';

/** What decides on the level of a prediction. */
export interface PredictStanding {
  readonly words: number;
  readonly forward: boolean;
  readonly retelling: boolean;
  readonly vague: boolean;
  readonly grounded: number;
  /** A reason with words of the text, or a word that points at it. */
  readonly evidence: boolean;
  readonly linkedWords: number;
  readonly outcome: PredictJudgement['measures']['outcome'];
}

interface PredictRule {
  readonly rule: string;
  readonly level: Level;
  readonly holds: (standing: PredictStanding) => boolean;
}

const half = 0.5;
const wildBelow = 0.2;

/** Levels as the trade's table has them (common practice, no source). */
const table: readonly PredictRule[] = [
  { rule: 'nothing predicted', level: 0, holds: ({ words }) => words === 0 },
  { rule: 'tells what was read', level: 0, holds: ({ retelling }) => retelling },
  {
    rule: 'says nothing of what comes',
    level: 0,
    holds: ({ vague, linkedWords }) => vague && linkedWords < 2,
  },
  {
    rule: 'nothing in the text leads there',
    level: 0,
    holds: ({ grounded, linkedWords }) => grounded < wildBelow && linkedWords < 1,
  },
  { rule: 'could be, no clue given', level: 1, holds: ({ grounded }) => grounded < half },
  {
    rule: 'evidence given, and it came true',
    level: 3,
    holds: ({ evidence, outcome }) => evidence && outcome === 'came true',
  },
  { rule: 'tied to a clue in the text', level: 2, holds: () => true },
];

/** The level of a prediction with the rule that gave it. */
export function predictLevel(standing: PredictStanding): { readonly level: Level; readonly rule: string } {
  const row = table.find(({ holds }) => holds(standing));
  return { level: row?.level ?? 1, rule: row?.rule ?? '' };
}
