/** A source of whole numbers 0..2^32-1. */
export type Chance = () => number;

/** A generator from a seed, so that a lot can be drawn again alike (splitmix32, a public-domain mixing function). */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return (mixed ^ (mixed >>> 15)) >>> 0;
  };
}

/** A copy in an order drawn by lot. */
export function shuffled<T>(items: readonly T[], chance: Chance): readonly T[] {
  const mixed = [...items];
  for (let last = mixed.length - 1; last > 0; last -= 1) {
    const other = chance() % (last + 1);
    const held = mixed[last] as T;
    mixed[last] = mixed[other] as T;
    mixed[other] = held;
  }
  return mixed;
}
