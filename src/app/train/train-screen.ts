import { alarmRules } from '../../safety/alarms.js';
import type { Learned } from '../../safety/learned.js';
import { learnedRule, thresholdFor } from '../../safety/learned.js';
import { makeScreen } from '../../safety/screen.js';
import { chancesLeftOut, fitAlarms } from './fit-screen.js';
import { readScreenCases, type ScreenCase } from './screen-cases.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

/** Shares of posts that ought to be left for which the layer may alarm beside the rules, by set, on writers left out; ours. */
const budget: Readonly<Partial<Record<ScreenCase['set'], number>>> = {
  'alarm-open': 0.05,
  'moderation-open': 0.02,
  'personal-open': 0.02,
};

/** What the rules alone find in a post. */
interface Ruled {
  readonly hold: boolean;
  readonly alarm: boolean;
}

function ruledOf(cases: readonly ScreenCase[], knows: (word: string) => boolean): readonly Ruled[] {
  const screen = makeScreen(knows);
  const weak = alarmRules.filter(({ strong }) => !strong).map(({ name }) => name);
  const learned = new Set([learnedRule, ...weak]);
  return cases.map(({ text, passage, names }) => {
    const findings = screen({ text, names, ...(passage === null ? {} : { passage }) }).findings.filter(
      ({ rule }) => !learned.has(rule),
    );
    return { hold: findings.length > 0, alarm: findings.some(({ kind }) => kind === 'alarm') };
  });
}

/** The lowest threshold that keeps the budget. */
function thresholdOf(
  cases: readonly ScreenCase[],
  ruled: readonly Ruled[],
  chances: readonly number[],
): number {
  const lowest = Object.entries(budget).map(([set, most]) => {
    const left = cases.flatMap((one, i) => (one.set === set && !one.hold ? [{ one, i }] : []));
    const falls = left
      .filter(({ i }) => ruled[i]?.alarm !== true)
      .map(({ one, i }) => ({ chance: chances[i] ?? 0, least: thresholdFor(one.features, 0) }))
      .map(({ chance, least }) => (chance < least ? 0 : chance))
      .toSorted((a, b) => b - a);
    return (falls[Math.floor(most * left.length)] ?? 0) + 0.001;
  });
  return Math.min(0.95, Math.max(0.3, ...lowest));
}

/** One row of what the screen does on writers left out. */
export interface LeftOutFigure {
  readonly set: string;
  readonly writer: string;
  readonly by: 'rules' | 'learned' | 'joined';
  readonly label: 'hold' | 'alarm';
  readonly found: number;
  readonly of: number;
  readonly wrong: number;
  readonly others: number;
}

function figuresOf(
  cases: readonly ScreenCase[],
  ruled: readonly Ruled[],
  chances: readonly number[],
  from: number,
): readonly LeftOutFigure[] {
  const over = (i: number) => (chances[i] ?? 0) >= thresholdFor(cases[i]?.features ?? [], from);
  const says = {
    rules: (i: number, label: 'hold' | 'alarm') => ruled[i]?.[label] === true,
    learned: over,
    joined: (i: number, label: 'hold' | 'alarm') => says.rules(i, label) || over(i),
  };
  const keys = [...new Set(cases.map(({ set, writer }) => `${set} ${writer}`))];
  return keys.flatMap((key) => {
    const [set = '', writer = ''] = key.split(' ');
    const label = set.startsWith('alarm') ? 'alarm' : 'hold';
    const mine = cases.flatMap((one, i) => (one.set === set && one.writer === writer ? [{ one, i }] : []));
    const is = (one: ScreenCase) => (label === 'alarm' ? one.alarm : one.hold);
    const wanted = mine.filter(({ one }) => is(one));
    const others = mine.filter(({ one }) => !is(one));
    return (['rules', 'learned', 'joined'] as const).map((by) => ({
      set,
      writer,
      by,
      label,
      found: wanted.filter(({ i }) => says[by](i, label)).length,
      of: wanted.length,
      wrong: others.filter(({ i }) => says[by](i, label)).length,
      others: others.length,
    }));
  });
}

/** The learned layer with thresholds from writers left out, and what it does on them. */
export interface TrainedScreen {
  readonly alarm: Learned;
  readonly figures: readonly LeftOutFigure[];
}

/** Learns the screen's layer from the open sets and the practice posts. */
export function learnScreen(knows: (word: string) => boolean): TrainedScreen {
  const cases = readScreenCases(knows);
  const ruled = ruledOf(cases, knows);
  const chances = chancesLeftOut(cases);
  const from = thresholdOf(cases, ruled, chances);
  return {
    alarm: { from, ...fitAlarms(cases, () => true) },
    figures: figuresOf(cases, ruled, chances, from),
  };
}

/** Learns the screen's layer and writes it beside the screen; gives the path. */
export function trainScreen(knows: (word: string) => boolean, tell: (line: string) => void): string {
  const { alarm, figures } = learnScreen(knows);
  for (const { set, writer, by, found, of, wrong, others } of figures)
    tell(
      `${set}, writer ${writer} left out, ${by}: found ${found} of ${of}, wrongly ${wrong} of ${others}\n`,
    );
  const path = weightsPath('screen', 'safety');
  const header = {
    version: 1,
    data: 'fixtures/sets/screen: alarm, moderation and personal, open halves; alarm-practice',
    licence: 'MIT (our own)',
    date: '2026',
    figures: {},
  };
  writeWeights(path, header, { alarm });
  return path;
}
