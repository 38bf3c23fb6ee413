import { dirname, join } from 'node:path';
import type { Concern, Learned } from '../../safety/learned.js';
import { learnedRules, thresholdFor } from '../../safety/learned.js';
import { makeScreen } from '../../safety/screen.js';
import { chancesLeftOut, fitConcern } from './fit-screen.js';
import { readScreenCases, type ScreenCase } from './screen-cases.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

const concerns = ['alarm', 'hurtful', 'personal'] as const;

/** Share of the posts that no rule holds and that ought to be left which a concern may hold, on writers left out; ours, within two in a hundred false holds. */
const budget: Readonly<Record<Concern, { readonly set: ScreenCase['set']; readonly most: number }>> = {
  alarm: { set: 'alarm-open', most: 0.05 },
  hurtful: { set: 'moderation-open', most: 0.01 },
  personal: { set: 'personal-open', most: 0.01 },
};

/** What the rules alone find in a post. */
interface Ruled {
  readonly hold: boolean;
  readonly alarm: boolean;
}

function ruledOf(cases: readonly ScreenCase[], knows: (word: string) => boolean): readonly Ruled[] {
  const screen = makeScreen(knows);
  const learned = new Set(Object.values(learnedRules));
  return cases.map(({ text, passage, names }) => {
    const findings = screen({ text, names, ...(passage === null ? {} : { passage }) }).findings.filter(
      ({ rule }) => !learned.has(rule),
    );
    return { hold: findings.length > 0, alarm: findings.some(({ kind }) => kind === 'alarm') };
  });
}

/** The lowest threshold that keeps the budget of false findings among posts of the concern's set. */
function thresholdOf(cases: readonly ScreenCase[], ruled: readonly Ruled[], chances: readonly number[], concern: Concern): number {
  const { set, most } = budget[concern];
  const left = cases.flatMap((one, i) =>
    one.set === set && one.labels[concern] === false && !one.hold ? [{ chance: chances[i] ?? 0, ruled: ruled[i], features: one.features }] : [],
  );
  const falls = left
    .filter((one) => one.ruled?.[concern === 'alarm' ? 'alarm' : 'hold'] !== true)
    .map(({ chance, features }) => (thresholdFor(features, concern, 0) > chance ? 0 : chance))
    .toSorted((a, b) => b - a);
  const allowed = Math.floor(most * left.length);
  return Math.min(0.95, Math.max(0.2, (falls[allowed] ?? 0) + 0.001));
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
    tell(`${set}, writer ${writer} left out, ${by}: found ${found} of ${of}, wrongly ${wrong} of ${others}\n`);
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
