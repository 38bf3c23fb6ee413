import type { Instant } from '../../shared/time.js';
import { diskFault } from './disk-fault.js';
import { erasedList } from './erased-list.js';
import { openStore } from './kysely-store.js';
import { databaseFile, openFile } from './open-database.js';
import type { Store } from './store.js';

/** Opens the store of a data folder for this process alone, bringing its schema up to date; throws `Fault` 'in use' or 'disk' with what to do. `now` is the clock, for tests. */
export async function openSqliteStore(
  folder: string,
  { now = Date.now }: { readonly now?: () => Instant } = {},
): Promise<Store> {
  const where = `the data folder ${folder}`;
  try {
    return await openStore(openFile(folder), where, now, erasedList(folder));
  } catch (error) {
    throw diskFault(error, `open ${databaseFile(folder)}`, where);
  }
}
