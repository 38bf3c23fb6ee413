import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { restoreStore } from '../../store/restore.js';
import type { Verb } from '../io.js';
import { configFor } from '../school.js';

/** Puts a copy made by backup into an empty data folder. */
export const verb: Verb = {
  name: 'restore',
  usage: 'restore FILE --data DIR',
  words: 'puts a copy made by backup into a data folder that is empty or new',
  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { data: { type: 'string' } },
    });
    const [file] = positionals;
    if (file === undefined || positionals.length > 1)
      throw new Fault('usage', 'Cannot restore, expected one file', `Use: ${verb.usage}`);
    const config = configFor(io, values.data);
    await restoreStore(file, config.data);
    io.err(
      `Restored into ${config.data}. Put the key file back beside it, or slips and links made earlier no longer work.`,
    );
    return 0;
  },
};
