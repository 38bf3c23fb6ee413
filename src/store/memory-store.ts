import type { Instant } from '../../shared/time.js';
import { noList } from './erased-list.js';
import { openStore } from './kysely-store.js';
import { openMemory } from './open-database.js';
import type { Store } from './store.js';

/** A store in memory, gone when closed: the same code without a file. */
export async function memoryStore({ now = Date.now }: { readonly now?: () => Instant } = {}): Promise<Store> {
  return openStore(openMemory(), 'the memory', now, noList);
}
