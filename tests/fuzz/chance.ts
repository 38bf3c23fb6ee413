/** Chance from a seed: the same seed gives the same inputs. */
export interface Chance {
  /** A whole number from 0 up to, without, `below`. */
  int(below: number): number;
  pick<T>(some: readonly T[]): T;
  /** True about once in so many. */
  oneIn(many: number): boolean;
}

/** A seeded generator (mulberry32). */
export function chanceFrom(seed: number): Chance {
  let a = seed >>> 0;
  const next = (): number => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return (t ^ (t >>> 14)) >>> 0;
  };
  const int = (below: number): number => Math.floor((next() / 2 ** 32) * below);
  return {
    int,
    pick<T>(some: readonly T[]): T {
      if (some.length === 0) throw new Error('Cannot pick, expected something to pick from');
      return some[int(some.length)] as T;
    },
    oneIn: (many) => int(many) === 0,
  };
}
