/**
 * A process that opens the store of a folder as an account that isn't root, and prints "open" or the fault as JSON.
 * The native module is loaded first, since that account may not read it.
 */
import { Fault } from '../../shared/fault.js';
import { memoryStore } from '../../src/store/memory-store.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';

await (await memoryStore()).close();
if (process.getuid?.() === 0) {
  process.setgid?.(65534);
  process.setuid?.(65534);
}
try {
  const store = await openSqliteStore(process.argv[2] ?? '');
  await store.close();
  process.stdout.write('open');
} catch (error) {
  if (!(error instanceof Fault)) throw error;
  process.stdout.write(JSON.stringify({ code: error.code, message: error.message, remedy: error.remedy }));
}
