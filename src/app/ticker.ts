import type { Calendar, Clock, Instant } from '../../shared/time.js';
import type { Store } from '../store/store.js';
import type { OpenHouse } from './house.js';
import { keep, nextKeeping } from './keeping.js';
import type { Log } from './log.js';

/** Longest sleep in milliseconds, so that a machine that slept or a clock that was set is noticed soon. */
const longest = 30_000;
/** How long to wait in milliseconds before keeping that failed is tried again. */
const again = 3600_000;

export interface TickerTools {
  readonly store: Store;
  readonly house: OpenHouse;
  readonly calendar: Calendar;
  readonly clock: Clock;
  readonly log: Log;
}

/** Lets time pass for every class whose due time has come, and once at the start and each night lets go what has had its time, until stopped; a class that fails is tried again later and stops no other. */
export function startTicker(tools: TickerTools): { stop(): Promise<void> } {
  const { store, house, clock, log } = tools;
  let timer: NodeJS.Timeout | null = null;
  let stopped = false;
  let running: Promise<void> = Promise.resolve();
  let keeping: Promise<void> | null = null;
  let keepAt: Instant = -Infinity;

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
  // Beside the rounds, since it may take long and time must pass meanwhile.
  const keepOnce = async (): Promise<void> => {
    try {
      await keep(tools, () => stopped);
      keepAt = await nextKeeping(tools);
    } catch (why) {
      keepAt = clock.now() + again;
      log.error({ code: why instanceof Error ? why.name : 'unknown' }, 'keeping failed');
    } finally {
      keeping = null;
    }
  };
  const next = async (): Promise<void> => {
    await round().catch(() => log.error('the store did not tell what is due'));
    if (stopped) return;
    if (keeping === null && clock.now() >= keepAt) keeping = keepOnce();
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
      await keeping;
    },
  };
}
