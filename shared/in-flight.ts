/** Runs some work where fewer than the bound are running, else the answer for when it is full. */
export type Bounded = <T>(work: () => Promise<T>, full: () => Promise<T>) => Promise<T>;

/** Lets so many pieces of work run at the same time and no more. */
export function openInFlight(most: number): Bounded {
  let running = 0;
  return async (work, full) => {
    if (running >= most) return full();
    running += 1;
    try {
      return await work();
    } finally {
      running -= 1;
    }
  };
}
