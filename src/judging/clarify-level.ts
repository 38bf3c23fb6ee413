import type { ClarifyJudgement } from '../../shared/judgements.js';
import type { Level } from '../../shared/strategies.js';

/** What decides on the level and value of a clarifying try. */
export interface ClarifyStanding {
  readonly named: boolean;
  readonly asksOrExplains: boolean;
  readonly meaning: boolean;
  readonly fixUp: boolean;
  readonly evidence: boolean;
  readonly matches: boolean;
  readonly against: boolean;
  readonly fit: number | null;
}

interface ClarifyRule {
  readonly rule: string;
  readonly level: Level;
  readonly value: ClarifyJudgement['value'];
  readonly holds: (standing: ClarifyStanding) => boolean;
}

/** Under this a meaning is most likely that of another word (on the open half of the meanings set). */
export const farBelow = 0.25;

/** Levels as the trade's table has them (common practice, no source). Only a definition of the text or the adult's meaning makes it "fits": nearness of words can't tell truth. */
const table: readonly ClarifyRule[] = [
  {
    rule: 'no hard place named',
    level: 0,
    value: 'nothing yet',
    holds: ({ named, asksOrExplains }) => !named && !asksOrExplains,
  },
  {
    rule: 'resolved with the text',
    level: 3,
    value: 'fits',
    holds: ({ matches, evidence, fixUp }) => matches && (evidence || fixUp),
  },
  { rule: 'meaning as defined', level: 2, value: 'fits', holds: ({ matches }) => matches },
  {
    rule: 'meaning turned round',
    level: 1,
    value: 'read it again',
    holds: ({ meaning, against, fixUp }) => meaning && against && !fixUp,
  },
  {
    rule: 'meaning of another word, it seems',
    level: 1,
    value: 'read it again',
    holds: ({ meaning, fit, fixUp, evidence }) =>
      meaning && fit !== null && fit < farBelow && !fixUp && !evidence,
  },
  { rule: 'meaning proposed', level: 2, value: 'read it again', holds: ({ meaning }) => meaning },
  {
    rule: 'trouble named with a fix-up',
    level: 2,
    value: 'names the trouble',
    holds: ({ fixUp }) => fixUp,
  },
  { rule: 'names a hard word only', level: 1, value: 'names the trouble', holds: () => true },
];

/** Level, value and the rule that gave them. */
export function clarifyLevel(standing: ClarifyStanding): ClarifyRule {
  return table.find(({ holds }) => holds(standing)) ?? table[table.length - 1]!;
}
