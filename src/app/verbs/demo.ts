import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { demoPassages } from '../demo-class.js';
import type { Verb } from '../io.js';
import { runRehearsal } from './rehearse.js';

const pathOf = (name: string): string => fileURLToPath(import.meta.resolve(`#fixtures/${name}`));

/** A whole practice of the invented class in the terminal. */
export const verb: Verb = {
  name: 'demo',
  usage: 'demo [--json]',
  words: 'shows a whole practice of the invented class in the terminal, digest included',
  run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { json: { type: 'boolean' } } });
    return runRehearsal(
      demoPassages.map(pathOf),
      pathOf('posts/demo.jsonl'),
      { seed: 4, json: values.json ?? false, grade: 5 },
      io,
    );
  },
};
