import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import type { Verb } from '../io.js';
import { runTrain } from '../train/train.js';

/** Learns the judges' weights anew from labelled data. */
export const verb: Verb = {
  name: 'train',
  usage: 'train --data DIR',
  words: 'learns the judges’ weights anew from labelled data; same data, same weights',
  run(args) {
    const { values } = parseArgs({ args: [...args], options: { data: { type: 'string' } } });
    if (values.data === undefined)
      throw new Fault('usage', 'Cannot train, expected --data', `Use: ${verb.usage}`);
    return runTrain({ data: values.data }, process.stdout, process.stderr);
  },
};
