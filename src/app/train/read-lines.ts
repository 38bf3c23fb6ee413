import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Fault } from '../../../shared/fault.js';

/** Reads a file of JSON Lines in the data folder, blank lines skipped; throws `Fault` where it isn't there or a line isn't JSON. */
export function readLines<Shape>(dir: string, file: string): readonly Shape[] {
  const path = join(dir, file);
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    throw new Fault(
      'usage',
      `Cannot read ${path}, expected a file of labelled data, got none`,
      'Give the data folder with --data.',
    );
  }
  return text
    .replace(/^\uFEFF/, '')
    .split('\n')
    .flatMap((line, i) => (line.trim() === '' ? [] : [parsed<Shape>(line, path, i + 1)]));
}

function parsed<Shape>(line: string, path: string, number: number): Shape {
  try {
    return JSON.parse(line) as Shape;
  } catch {
    throw new Fault(
      'usage',
      `Cannot read line ${number} of ${path}, expected JSON, got something else`,
      'Mend or leave out the line.',
    );
  }
}
