import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { weightsPath } from '../train/weights-path.js';
import { belowFloor } from './floor.js';
import { measureInThreads } from './in-threads.js';
import { evaluations } from './registry.js';
import { tableOf } from './table.js';

/** Writes a piece of text somewhere. */
export type Write = (text: string) => unknown;

/** What `evaluate` is asked for. */
export interface EvaluateOptions {
  /** Folder with the labelled data. */
  readonly data: string;
  readonly json: boolean;
  /** Compare with the committed figures. */
  readonly floor: boolean;
}

/** Measures all judges: a table or JSON (`{"rows":[..]}`) to `out`, progress to `err`. 0 when done, 1 where a figure fell below its floor; throws `Fault` where data are missing. */
export async function runEvaluate(
  { data, json, floor }: EvaluateOptions,
  out: Write,
  err: Write,
): Promise<number> {
  const started = performance.now();
  const names = evaluations.map(({ name }) => name);
  let shown = '';
  const rows = await measureInThreads(names, data, (share, name) => {
    const now = bar(share, name);
    if (now !== shown) err(now);
    shown = now;
  });
  err(`${bar(1, 'done')}\n${Math.round((performance.now() - started) / 1000)} s\n`);
  await out(json ? `${JSON.stringify({ rows })}\n` : tableOf(rows));
  if (!floor) return 0;
  const below = belowFloor(rows, committedFigures());
  for (const sentence of below) err(`below its floor: ${sentence}\n`);
  return below.length > 0 ? 1 : 0;
}

function committedFigures(): Readonly<Record<string, number>> {
  return JSON.parse(readFileSync(weightsPath('figures'), 'utf8')) as Record<string, number>;
}

function bar(share: number, name: string): string {
  const full = Math.round(share * 30);
  return `\r[${'#'.repeat(full)}${' '.repeat(30 - full)}] ${name.padEnd(28)}`;
}
