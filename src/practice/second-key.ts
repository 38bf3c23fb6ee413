import type { Instant } from '../../shared/time.js';

/** What is asked for beside a slip or a link: a pupil's three pictures, an adult's passphrase. */
export type SecondKind = 'pictures' | 'passphrase';

/** How somebody's tries at their second key stand. */
export interface Tries {
  readonly kind: SecondKind;
  /** Wrong answers in a row. */
  readonly misses: number;
  readonly missedAt: Instant | null;
}

/** Wrong answers that are borne, all ours: after some there is a wait, after more an adult resets the key. */
export const tryLimits = {
  free: 3,
  wait: 60_000,
  /** Three of twelve pictures in order are 1728; ten tries find them once in 170 times. */
  pictures: 10,
  passphrase: 20,
} as const;

/** Whether there were so many wrong answers that only a reset helps. */
export function isLocked({ kind, misses }: Pick<Tries, 'kind' | 'misses'>): boolean {
  return misses >= tryLimits[kind];
}

/** Whether an answer is taken only after a short wait. */
export function mustWait({ misses, missedAt }: Tries, now: Instant): boolean {
  return misses >= tryLimits.free && missedAt !== null && now < missedAt + tryLimits.wait;
}
