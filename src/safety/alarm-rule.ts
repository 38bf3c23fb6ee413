import { patternOf, type Pattern } from './alarm-pattern.js';

/** A rule of alarm over the concepts of a post's sentences (see `alarm-words.ts` and `alarm-pattern.ts`). */
export interface AlarmRule {
  readonly name: string;
  readonly kind: 'alarm';
  readonly patterns: readonly Pattern[];
  /** Silent where one of these stands in the same sentence. */
  readonly unless: readonly Pattern[];
  /** A strong rule calls an adult by itself, a weak one where the learned layer doesn't think it harmless. */
  readonly strong: boolean;
  /** An example that matches, one that must not; "Wren" and "Finch" are nicknames in both. */
  readonly example: string;
  readonly not: string;
}

/** One row of a table of rules; patterns are parted by ";". */
export interface AlarmRow {
  readonly name: string;
  readonly when: string;
  readonly unless?: string;
  readonly weak?: true;
  readonly example: string;
  readonly not: string;
}

function patternsOf(text: string): readonly Pattern[] {
  return text
    .split(';')
    .filter((one) => one.trim() !== '')
    .map(patternOf);
}

/** Reads a table of rules. */
export function alarmRulesOf(rows: readonly AlarmRow[]): readonly AlarmRule[] {
  return rows.map(({ name, when, unless = '', weak, example, not }) => ({
    name,
    kind: 'alarm',
    patterns: patternsOf(when),
    unless: patternsOf(unless),
    strong: weak !== true,
    example,
    not,
  }));
}
