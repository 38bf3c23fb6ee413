import { writeFileSync } from 'node:fs';
import type { WeightsHeader } from '../../judging/question-model.js';

/** Numbers are kept to so many digits that count. */
const digits = 4;

/** Writes weights as JSON with their header first; one line for each table of weights, so that a change can be read. */
export function writeWeights(path: string, header: WeightsHeader, model: object): void {
  const parts = Object.entries({ header, ...model }).map(
    ([name, part]) => `"${name}": ${JSON.stringify(part, shorten)}`,
  );
  writeFileSync(path, `{\n${parts.join(',\n')}\n}\n`);
}

function shorten(_key: string, value: unknown): unknown {
  if (typeof value !== 'number' || Number.isInteger(value)) return value;
  const short = Number(value.toPrecision(digits));
  return Math.abs(short) < 1e-5 ? 0 : short;
}
