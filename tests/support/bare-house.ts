import { calendar } from '../../src/app/calendar.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { silentLog } from '../../src/app/log.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { fakeJudges } from './fake-judges.js';

/** The real house over a store in memory, with judges of the test's own and its clock; nobody is in it yet. */
export async function openBareHouse(
  now: () => number,
): Promise<{ readonly store: Store; readonly house: OpenHouse }> {
  const store = await memoryStore({ now });
  const house = openHouse({
    store,
    judges: fakeJudges,
    calendar,
    clock: { now },
    log: silentLog,
    key: 'a key of at least thirty-two letters',
    baseUrl: () => 'http://127.0.0.1',
    seed: () => 7,
  });
  return { store, house };
}
