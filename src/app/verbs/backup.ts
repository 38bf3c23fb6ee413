import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import type { Verb } from '../io.js';
import { inSchool } from '../school.js';

/** Copies the store into a new file. */
export const verb: Verb = {
  name: 'backup',
  usage: 'backup FILE [--data DIR]',
  words: 'copies all that is kept into a new file; keep it as safe as the data folder',
  run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { data: { type: 'string' } },
    });
    const [file] = positionals;
    if (file === undefined || positionals.length > 1)
      throw new Fault('usage', 'Cannot back up, expected one new file', `Use: ${verb.usage}`);
    return inSchool(io, values.data, async (school) => {
      await school.store.backup(file);
      io.err(`Copied to ${file}. The key in the data folder is not in it: keep that too.`);
      return 0;
    });
  },
};
