import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ScreenInput, Screening } from '../../../shared/judgements.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { makeScreen } from '../../safety/screen.js';

/** One figure of a judge on labelled posts; the interval is Wilson's at 95 %, `n` what it was counted on. */
export interface Figure {
  readonly judge: string;
  readonly figure: string;
  readonly value: number;
  readonly interval: readonly [number, number];
  readonly n: number;
}

interface Labelled {
  readonly text: string;
  readonly passage: string | null;
  readonly names: readonly string[];
  readonly hold: boolean;
  readonly alarm: boolean;
}

/** The sets of the screen and what a post of each should set off. */
const sets = [
  { name: 'moderation', label: 'hold' },
  { name: 'personal', label: 'hold' },
  { name: 'alarm', label: 'alarm' },
] as const;
const parts = ['open', 'sealed'] as const;

/** Wilson's interval for `hits` of `n` at 95 %, 0..1; the whole range where there is nothing to count (Wilson 1927). */
export function wilson(hits: number, n: number): readonly [number, number] {
  if (n === 0) return [0, 1];
  const z = 1.959964;
  const share = hits / n;
  const middle = (share + (z * z) / (2 * n)) / (1 + (z * z) / n);
  const half = (z / (1 + (z * z) / n)) * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}

function rowsOf(file: string): readonly Labelled[] {
  return readFileSync(file, 'utf8')
    .split(/\r?\n/u)
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Labelled);
}

function figure(judge: string, name: string, hits: number, n: number): Figure {
  return { judge, figure: name, value: n === 0 ? 0 : hits / n, interval: wilson(hits, n), n };
}

function figuresOf(
  screen: (input: ScreenInput) => Screening,
  rows: readonly Labelled[],
  label: 'hold' | 'alarm',
  name: string,
): readonly Figure[] {
  const got = rows.map((row) => ({
    row,
    screening: screen({
      text: row.text,
      names: row.names,
      ...(row.passage === null ? {} : { passage: row.passage }),
    }),
  }));
  const wanted = got.filter(({ row }) => row[label]);
  const others = got.filter(({ row }) => !row[label]);
  const quiet = got.filter(({ row }) => !row.alarm);
  const count = (some: typeof got, which: 'hold' | 'alarm') =>
    some.filter(({ screening }) => screening[which]).length;
  return [
    figure(name, label === 'hold' ? 'recall' : 'alarm recall', count(wanted, label), wanted.length),
    figure(name, label === 'hold' ? 'false holds' : 'false alarms', count(others, label), others.length),
    ...(label === 'hold' ? [figure(name, 'false alarms', count(quiet, 'alarm'), quiet.length)] : []),
  ];
}

/** Measures the screen on the posts of a sets folder (`screen/moderation-open.jsonl` and so on), the open halves it was tuned on apart from the sealed ones. */
export function evaluateScreen(
  setsDir: string,
  only: readonly ('open' | 'sealed')[] = parts,
): readonly Figure[] {
  const lexicon = readLexicon();
  const screen = makeScreen((word) => lexicon.knows(word));
  return sets.flatMap(({ name, label }) =>
    only.flatMap((part) =>
      figuresOf(
        screen,
        rowsOf(join(setsDir, 'screen', `${name}-${part}.jsonl`)),
        label,
        `screen, ${name}, ${part}`,
      ),
    ),
  );
}
