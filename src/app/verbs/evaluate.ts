import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { runEvaluate } from '../evaluate/evaluate.js';
import type { Verb } from '../io.js';

/** Measures the judges on labelled data. */
export const verb: Verb = {
  name: 'evaluate',
  usage: 'evaluate --data DIR [--json] [--floor]',
  words: 'measures the judges on labelled data beside simple baselines',
  run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: { data: { type: 'string' }, json: { type: 'boolean' }, floor: { type: 'boolean' } },
    });
    if (values.data === undefined)
      throw new Fault('usage', 'Cannot evaluate, expected --data', `Use: ${verb.usage}`);
    return runEvaluate(
      { data: values.data, json: values.json ?? false, floor: values.floor ?? false },
      io.out,
      io.err,
    );
  },
};
