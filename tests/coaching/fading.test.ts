import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EvidenceRow } from '../../shared/evidence.js';
import type { GroupId, PersonId } from '../../shared/ids.js';
import {
  givens,
  helps,
  strategies,
  type Given,
  type Help,
  type Level,
  type Strategy,
} from '../../shared/strategies.js';
import { fade } from '../../src/coaching/fading.js';

/** Fading is common practice, no source: these are the defaults of the settings. */
let clock = 0;
function turn(
  strategy: Strategy,
  level: Level | null,
  help: Help,
  rest: { given?: Given; day?: string } = {},
): EvidenceRow {
  clock += 1;
  return {
    key: `k${clock}`,
    post: null,
    person: 'p-1' as PersonId,
    group: 'g-1' as GroupId,
    passage: null,
    stop: 0,
    do: strategy,
    level,
    postedLevel: level,
    value: null,
    probability: null,
    reasons: [],
    given: rest.given ?? 'typed',
    help,
    late: false,
    led: false,
    at: clock,
    day: rest.day ?? '2026-11-25',
    settledBy: 'first judgement',
    word: null,
  };
}
const turns = (strategy: Strategy, help: Help, levels: readonly (Level | null)[], day?: string) =>
  levels.map((level) => turn(strategy, level, help, day === undefined ? {} : { day }));

describe('one strategy', () => {
  test.each<[string, Help, (Level | null)[], Help | null]>([
    ['stems go after three good turns in a row', 'guided', [2, 3, 2], 'independent'],
    ['two good turns are not enough by default', 'guided', [2, 3], null],
    ['a turn below breaks the row', 'guided', [2, 2, 1, 2, 2], null],
    ['support comes back after two turns in a row below', 'independent', [3, 1, 0], 'guided'],
    ['one turn below brings nothing back', 'independent', [3, 3, 1], null],
    ['an adult stops leading when three of four turns are adequate', 'shared', [2, 1, 2, 2], 'guided'],
    ['an adult goes on leading when three of five are', 'shared', [2, 1, 2, 1, 2], null],
    ['three turns are too few for an adult to stop leading', 'modelled', [2, 2, 2], null],
    ['four good turns move from modelled to shared', 'modelled', [2, 2, 2, 3], 'shared'],
    ['below the most help there is no more', 'modelled', [0, 0], null],
    ['beyond the least help nothing fades', 'independent', [3, 3, 3, 3, 3], null],
    ['what is not settled is no turn', 'guided', [2, null, 2, null, 2], 'independent'],
    ['nothing yet', 'guided', [], null],
  ])('%s', (_, help, levels, expected) => {
    expect(fade(turns('question', help, levels), 'question', help)).toBe(expected);
  });

  test('turns under another help don’t count', () => {
    const rows = [...turns('question', 'shared', [2, 2, 2, 2]), ...turns('question', 'guided', [2])];
    expect(fade(rows, 'question', 'guided')).toBeNull();
  });
  test('typed and said turns are not pooled', () => {
    const rows = [
      turn('question', 2, 'guided'),
      turn('question', 2, 'guided', { given: 'said' }),
      turn('question', 2, 'guided'),
    ];
    expect(fade(rows, 'question', 'guided')).toBeNull();
  });
  test('support isn’t cut while the texts get harder, but it still comes back', () => {
    const settings = {
      adequate: 2,
      goodRun: 3,
      poorRun: 2,
      window: [4, 5],
      share: 0.75,
      harderText: true,
    } as const;
    expect(fade(turns('question', 'guided', [2, 2, 2]), 'question', 'guided', settings)).toBeNull();
    expect(fade(turns('question', 'guided', [0, 0]), 'question', 'guided', settings)).toBe('shared');
  });
});

describe('all four strategies never lose help at once', () => {
  test('the last one due waits until another has been tried on a later day', () => {
    const due = strategies.flatMap((strategy) => turns(strategy, 'guided', [2, 2, 2]));
    const now = strategies.map((strategy) => fade(due, strategy, 'guided'));
    expect(now).toEqual(['independent', 'independent', 'independent', null]);
    const later = [
      ...due,
      ...(['question', 'clarify', 'sum-up'] as const).flatMap((strategy) =>
        turns(strategy, 'independent', [2], '2026-11-26'),
      ),
      ...turns('predict', 'guided', [2], '2026-11-26'),
    ];
    expect(fade(later, 'predict', 'guided')).toBe('independent');
  });

  test('whatever the turns', () => {
    const row = fc.tuple(
      fc.constantFrom(...strategies),
      fc.constantFrom<Level[]>(0, 1, 2, 3),
      fc.constantFrom(...helps),
      fc.constantFrom(...givens),
      fc.constantFrom('2026-11-25', '2026-11-26'),
    );
    fc.assert(
      fc.property(fc.array(row, { maxLength: 40 }), fc.constantFrom(...helps), (raw, preset) => {
        const rows = [
          ...raw.map(([strategy, level, help, given, day]) => turn(strategy, level, help, { given, day })),
          ...strategies.flatMap((strategy) => turns(strategy, preset, [2, 2, 3, 3])),
        ];
        const less = strategies.filter((strategy) => {
          const next = fade(rows, strategy, preset);
          return next !== null && helps.indexOf(next) > helps.indexOf(preset);
        });
        expect(less.length).toBeLessThan(strategies.length);
      }),
      { numRuns: 500 },
    );
  });
});
