/** Things kept for a while, the oldest let go first; nothing of it is needed after a restart. */
export interface Memory<T> {
  keep(key: string, thing: T): void;
  find(key: string): T | undefined;
  drop(key: string): void;
}

/** Opens a memory for at most `most` things, each for at most `life` milliseconds. */
export function openMemory<T>(most: number, life: number, now: () => number): Memory<T> {
  const all = new Map<string, { readonly thing: T; readonly until: number }>();
  return {
    keep(key, thing) {
      all.delete(key);
      all.set(key, { thing, until: now() + life });
      for (const [oldest, { until }] of all) {
        if (all.size <= most && until > now()) break;
        all.delete(oldest);
      }
    },
    find(key) {
      const found = all.get(key);
      return found && found.until > now() ? found.thing : undefined;
    },
    drop(key) {
      all.delete(key);
    },
  };
}
