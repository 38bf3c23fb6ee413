import type { Clock } from '../../shared/time.js';
import type { Store } from '../store/store.js';
import type { OpenHouse } from './house.js';
import type { Log } from './log.js';

/** Longest sleep in milliseconds, so that a machine that slept or a clock that was set is noticed soon. */
const longest = 30_000;

/** Lets time pass for every class whose due time has come, until stopped; a class that fails is tried again later and stops no other. */
export function startTicker(
  store: Store,
  house: OpenHouse,
  clock: Clock,
  log: Log,
): { stop(): Promise<void> } {
  let timer: NodeJS.Timeout | null = null;
  let stopped = false;
  let running: Promise<void> = Promise.resolve();

  const round = async (): Promise<void> => {
    for (const classId of await store.due(clock.now())) {
      if (stopped) return;
      try {
        await house.passTime(classId);
      } catch (why) {
        log.error(
          { classId, code: why instanceof Error ? why.name : 'unknown' },
          'time could not pass for a class',
        );
      }
    }
  };
  const next = async (): Promise<void> => {
    await round().catch(() => log.error('the store did not tell what is due'));
    if (stopped) return;
    const due = await store.nextDue().catch(() => null);
    const wait = due === null ? longest : Math.max(200, Math.min(longest, due - clock.now()));
    timer = setTimeout(go, wait);
  };
  const go = (): void => {
    running = next();
  };
  go();
  const wake = house.watch(() => {
    if (timer === null || stopped) return;
    clearTimeout(timer);
    timer = setTimeout(go, 200);
  });
  return {
    async stop() {
      stopped = true;
      wake();
      if (timer) clearTimeout(timer);
      await running;
    },
  };
}
