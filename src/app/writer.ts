import type { Commit, Store } from '../store/store.js';

type Outcome = { readonly version: number } | { readonly conflict: true };

/** Gathers commits of several classes that arrive together into one transaction; each caller waits for the disk, never less. */
export function openWriter(store: Store): (commit: Commit) => Promise<Outcome> {
  let waiting: { commit: Commit; settle: (outcome: Outcome) => void; fail: (why: unknown) => void }[] = [];
  let busy = false;

  const one = async (commit: Commit): Promise<Outcome> => {
    const result = await store.commit([commit]);
    return 'conflict' in result
      ? { conflict: true }
      : { version: result.versions[0] ?? commit.expectedVersion };
  };

  const flush = async (): Promise<void> => {
    while (waiting.length > 0) {
      const batch = waiting;
      waiting = [];
      try {
        const result = await store.commit(batch.map(({ commit }) => commit));
        if ('versions' in result) {
          batch.forEach(({ settle, commit }, at) =>
            settle({ version: result.versions[at] ?? commit.expectedVersion }),
          );
          continue;
        }
        // One came too late and nothing was written: each is tried by itself, so that it alone is told.
        for (const each of batch) each.settle(await one(each.commit));
      } catch (why) {
        for (const { fail } of batch) fail(why);
      }
    }
  };

  return (commit) =>
    new Promise((settle, fail) => {
      waiting.push({ commit, settle, fail });
      if (busy) return;
      busy = true;
      queueMicrotask(() => {
        void flush().finally(() => {
          busy = false;
        });
      });
    });
}
