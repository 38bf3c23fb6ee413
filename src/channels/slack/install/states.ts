import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { Instant } from '../../../../shared/time.js';

/** How long an installation may take, in milliseconds, and how many may be under way. */
export const stateLimits = { life: 600_000, most: 1000 } as const;

/**
 * States of installations under way. Each is made here, good once and for ten minutes, and only in the browser that
 * began: its cookie holds the state's signature. After a restart an installation begins anew.
 */
export interface States {
  /** A fresh state, and what the browser's cookie holds. */
  make(): { readonly state: string; readonly proof: string };
  /** Whether a state is one of ours that wasn't used, from the browser that it was made for. It is used up by this. */
  use(state: string, proof: string): boolean;
}

/** Opens the states, signed with a secret. */
export function openStates(secret: string, now: () => Instant): States {
  const made = new Map<string, Instant>();
  const sign = (state: string): string =>
    createHmac('sha256', secret).update(`slack state ${state}`).digest('base64url');
  return {
    make() {
      const state = randomBytes(24).toString('base64url');
      made.set(state, now() + stateLimits.life);
      for (const [oldest, until] of made) {
        if (made.size <= stateLimits.most && until > now()) break;
        made.delete(oldest);
      }
      return { state, proof: sign(state) };
    },
    use(state, proof) {
      const until = made.get(state);
      made.delete(state);
      const right = Buffer.from(sign(state));
      const given = Buffer.from(proof);
      return (
        until !== undefined && until > now() && given.length === right.length && timingSafeEqual(given, right)
      );
    },
  };
}
