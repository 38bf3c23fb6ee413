import { dirname, join } from 'node:path';
import { alarmRules } from '../../safety/alarms.js';
import type { Concern, Learned } from '../../safety/learned.js';
import { learnedRules, thresholdFor } from '../../safety/learned.js';
import { makeScreen } from '../../safety/screen.js';
import { chancesLeftOut, fitConcern } from './fit-screen.js';
import { readScreenCases, type ScreenCase } from './screen-cases.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

const concerns = ['alarm', 'hurtful', 'personal'] as const;

/** Shares of posts that ought to be left which a concern may hold beside the rules, by set, on writers left out; ours, so that rules and all concerns stay within two in a hundred false holds. */
const budgets: Readonly<Record<Concern, Readonly<Partial<Record<ScreenCase['set'], number>>>>> = {
  alarm: { 'alarm-open': 0.05, 'moderation-open': 0.02, 'personal-open': 0.02 },
  hurtful: { 'moderation-open': 0.005, 'alarm-open': 0.02 },
  personal: { 'moderation-open': 0.005, 'personal-open': 0.01 },
};

/** What the rules alone find in a post. */
interface Ruled {
  readonly hold: boolean;
  readonly alarm: boolean;
}

function ruledOf(cases: readonly ScreenCase[], knows: (word: string) => boolean): readonly Ruled[] {
  const screen = makeScreen(knows);
  const weak = alarmRules.filter(({ strong }) => !strong).map(({ name }) => name);
  const learned = new Set([...Object.values(learnedRules), ...weak]);
  return cases.map(({ text, passage, names }) => {
    const findings = screen({ text, names, ...(passage === null ? {} : { passage }) }).findings.filter(
      ({ rule }) => !learned.has(rule),
    );
    return { hold: findings.length > 0, alarm: findings.some(({ kind }) => kind === 'alarm') };
  });
}

/** The lowest threshold that keeps a concern's budgets. */
function thresholdOf(
  cases: readonly ScreenCase[],
  ruled: readonly Ruled[],
  chances: readonly number[],
  concern: Concern,
): number {
  const lowest = Object.entries(budgets[concern]).map(([set, most]) => {
    const left = cases.flatMap((one, i) => (one.set === set && !one.hold ? [{ one, i }] : []));
    const falls = left
      .filter(({ i }) => ruled[i]?.[concern === 'alarm' ? 'alarm' : 'hold'] !== true)
      .map(({ one, i }) => ({ chance: chances[i] ?? 0, least: thresholdFor(one.features, concern, 0) }))
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
  chances: Readonly<Record<Concern, readonly number[]>>,
  from: Readonly<Record<Concern, number>>,
): readonly LeftOutFigure[] {
  const over = (concern: Concern, i: number) =>
    (chances[concern][i] ?? 0) >= thresholdFor(cases[i]?.features ?? [], concern, from[concern]);
  const says = {
    rules: (i: number, label: 'hold' | 'alarm') => ruled[i]?.[label] === true,
    learned: (i: number, label: 'hold' | 'alarm') =>
      label === 'alarm' ? over('alarm', i) : concerns.some((concern) => over(concern, i)),
    joined: (i: number, label: 'hold' | 'alarm') => says.rules(i, label) || says.learned(i, label),
  };
  const keys = [...new Set(cases.map(({ set, writer }) => `${set} ${writer}`))];
  return keys.flatMap((key) => {
    const [set = '', writer = ''] = key.split(' ');
    const label = set.startsWith('alarm') ? 'alarm' : 'hold';
    const mine = cases.flatMap((one, i) => (one.set === set && one.writer === writer ? [{ one, i }] : []));
    const is = (one: ScreenCase) => (label === 'alarm' ? one.labels.alarm === true : one.hold);
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
  readonly models: Readonly<Record<Concern, Learned>>;
  readonly figures: readonly LeftOutFigure[];
}

/** Learns the screen's layer from the open sets and the practice posts. */
export function learnScreen(knows: (word: string) => boolean): TrainedScreen {
  const cases = readScreenCases(knows);
  const ruled = ruledOf(cases, knows);
  const by = <Value>(make: (concern: Concern) => Value): Readonly<Record<Concern, Value>> => ({
    alarm: make('alarm'),
    hurtful: make('hurtful'),
    personal: make('personal'),
  });
  const chances = by((concern) => chancesLeftOut(cases, concern));
  const from = by((concern) => thresholdOf(cases, ruled, chances[concern], concern));
  return {
    models: by((concern) => ({ from: from[concern], ...fitConcern(cases, concern, () => true) })),
    figures: figuresOf(cases, ruled, chances, from),
  };
}

/** Learns the screen's layer and writes it beside the screen; gives the path. */
export function trainScreen(knows: (word: string) => boolean, tell: (line: string) => void): string {
  const { models, figures } = learnScreen(knows);
  for (const { set, writer, by, found, of, wrong, others } of figures)
    tell(
      `${set}, writer ${writer} left out, ${by}: found ${found} of ${of}, wrongly ${wrong} of ${others}\n`,
    );
  const path = join(dirname(weightsPath('screen')), '../../safety/weights/screen.json');
  const header = {
    version: 1,
    data: 'fixtures/sets/screen: alarm, moderation and personal, open halves; alarm-practice',
    licence: 'MIT (our own)',
    date: '2026',
    figures: {},
  };
  writeWeights(path, header, models);
  return path;
}
