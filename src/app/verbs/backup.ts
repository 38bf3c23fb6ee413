import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { databaseFile } from '../../store/open-database.js';
import { openSqliteStore } from '../../store/sqlite-store.js';
import type { Store } from '../../store/store.js';
import { askForBackup } from '../backup-request.js';
import type { Verb } from '../io.js';
import { configFor } from '../school.js';

/** The store of a folder, null where a running server has it. */
async function openUnlessServed(folder: string): Promise<Store | null> {
  try {
    return await openSqliteStore(folder);
  } catch (why) {
    if (why instanceof Fault && why.code === 'in use') return null;
    throw why;
  }
}

/** Copies the store into a new file, by itself or through the server that runs on it. */
export const verb: Verb = {
  name: 'backup',
  usage: 'backup FILE [--data DIR]',
  words:
    'copies all that is kept into a new file, also while the server runs; keep it as safe as the data folder',
  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { data: { type: 'string' } },
    });
    const [file] = positionals;
    if (file === undefined || positionals.length > 1)
      throw new Fault('usage', 'Cannot back up, expected one new file', `Use: ${verb.usage}`);
    const { data } = configFor(io, values.data);
    if (!existsSync(databaseFile(data))) {
      throw new Fault(
        'not found',
        `Cannot back up, expected data in ${data}, got none`,
        'Give the data folder with --data, or set TURNSTONE_DATA.',
      );
    }
    const store = await openUnlessServed(data);
    if (store === null) await askForBackup(data, resolve(file));
    else {
      try {
        await store.backup(file);
      } finally {
        await store.close();
      }
    }
    io.err(
      `Copied to ${file}. The files “key” and “erased” in the data folder are not in it: keep those too.`,
    );
    return 0;
  },
};
