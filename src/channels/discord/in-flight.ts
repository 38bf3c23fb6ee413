/** How many interactions are answered at the same time; a class of thirty presses far less, and each takes memory. */
export const mostInFlight = 200;

/** Runs some work where fewer than the bound are running, else what is for when it is full. */
export type Bounded = (work: () => Promise<void>, full: () => Promise<void>) => Promise<void>;

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
