import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Evaluation } from './row.js';
import { evaluateScreen } from './screen.js';

/** The screen on posts of our own: open halves, on which it was tuned, and sealed ones. */
export const screening: Evaluation = {
  name: 'screen',
  run() {
    const sets = dirname(dirname(fileURLToPath(import.meta.resolve('#fixtures/sets/screen/README.md'))));
    return evaluateScreen(sets).map((figure) => ({
      ...figure,
      baselines: [],
      ceiling: null,
      more: !figure.figure.startsWith('false'),
    }));
  },
};
