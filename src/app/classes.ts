import type { ClassId } from '../../shared/ids.js';
import { replay } from '../practice/evolve.js';
import type { ClassState } from '../practice/state.js';
import type { Store } from '../store/store.js';

/** The classes in memory: each is rebuilt from its journal once, then kept; one move at a time has a class. */
export interface Classes {
  /** The state as of the last commit; an unknown class is empty. */
  load(classId: ClassId): Promise<ClassState>;
  /** Runs one piece of work alone on a class; the next waits for it, whatever becomes of it. */
  alone<T>(classId: ClassId, work: () => Promise<T>): Promise<T>;
  /** Takes the state that a commit led to. */
  keep(classId: ClassId, state: ClassState): void;
  /** Forgets a class, so that it is read again. */
  drop(classId: ClassId): void;
}

/** Opens the classes of a store; at most `most` stay in memory, the longest unused go first. */
export function openClasses(store: Store, most = 200): Classes {
  const kept = new Map<ClassId, ClassState>();
  const queues = new Map<ClassId, Promise<unknown>>();
  const keep = (classId: ClassId, state: ClassState): void => {
    kept.delete(classId);
    kept.set(classId, state);
    for (const oldest of kept.keys()) {
      if (kept.size <= most) break;
      kept.delete(oldest);
    }
  };
  return {
    async load(classId) {
      const known = kept.get(classId);
      if (known) {
        keep(classId, known);
        return known;
      }
      const state = replay(classId, await store.events(classId));
      if (state.made) keep(classId, state);
      return state;
    },
    async alone(classId, work) {
      const before = queues.get(classId) ?? Promise.resolve();
      const mine = before.then(work, work);
      const quiet = mine.catch(() => undefined);
      queues.set(classId, quiet);
      try {
        return await mine;
      } finally {
        if (queues.get(classId) === quiet) queues.delete(classId);
      }
    },
    keep,
    drop(classId) {
      kept.delete(classId);
    },
  };
}
