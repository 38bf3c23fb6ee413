import type { Commit, Committed, Store } from '../store/store.js';

/** What became of a commit: done, too late, or done before, when its update was seen already and nothing was written. */
export type Outcome =
  { readonly version: number } | { readonly conflict: true } | { readonly duplicate: true };

function outcomeAt({ versions, duplicates }: Committed, at: number, commit: Commit): Outcome {
  if (duplicates.includes(at)) return { duplicate: true };
  return { version: versions[at] ?? commit.expectedVersion };
}

/**
 * Gathers commits that arrive together into one transaction, since what a commit costs is mostly the disk; each caller waits
 * for it, never less. A batch begins only when everything that has arrived already was worked on, so that it isn't a batch of
 * one while thirty more come.
 */
export function openWriter(store: Store): (commit: Commit) => Promise<Outcome> {
  let waiting: { commit: Commit; settle: (outcome: Outcome) => void; fail: (why: unknown) => void }[] = [];
  let busy = false;

  const one = async (commit: Commit): Promise<Outcome> => {
    const result = await store.commit([commit]);
    return 'conflict' in result ? { conflict: true } : outcomeAt(result, 0, commit);
  };

  const flush = async (): Promise<void> => {
    while (waiting.length > 0) {
      const batch = waiting;
      waiting = [];
      try {
        const result = await store.commit(batch.map(({ commit }) => commit));
        if ('versions' in result) {
          batch.forEach(({ settle, commit }, at) => settle(outcomeAt(result, at, commit)));
          continue;
        }
        // One came too late and nothing was written: each is tried by itself, so that it alone is told.
        for (const each of batch) each.settle(await one(each.commit));
      } catch (why) {
        for (const { fail } of batch) fail(why);
      }
      await new Promise((done) => setImmediate(done));
    }
  };

  return (commit) =>
    new Promise((settle, fail) => {
      waiting.push({ commit, settle, fail });
      if (busy) return;
      busy = true;
      setImmediate(() => {
        void flush().finally(() => {
          busy = false;
        });
      });
    });
}
