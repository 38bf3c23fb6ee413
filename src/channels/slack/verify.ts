import { createHmac, timingSafeEqual } from 'node:crypto';
import type { Instant } from '../../../shared/time.js';

/** How old a signed request may be, and how far the clocks may differ, in milliseconds. Five minutes are Slack's own rule; the half minute is ours. */
export const signatureLimits = { age: 300_000, ahead: 30_000, remembered: 50_000 } as const;

/** A request as far as its signature goes. */
export interface Signed {
  readonly timestamp: string | null;
  readonly signature: string | null;
  readonly body: string;
}

/** Why a request is refused, or null where it is Slack's and seen for the first time. */
export type Verifier = (request: Signed) => 'unsigned' | 'old' | 'ahead' | 'forged' | 'replayed' | null;

/** The signature of a body, as Slack's page on verifying requests describes it (version v0). */
export function signatureOf(secret: string, timestamp: string, body: string): string {
  return `v0=${createHmac('sha256', secret).update(`v0:${timestamp}:${body}`).digest('hex')}`;
}

/** Checks signatures. Every signature counts once: it is remembered as long as its time would let it pass again. */
export function openVerifier(secret: string, now: () => Instant): Verifier {
  const seen = new Map<string, Instant>();
  const forget = (): void => {
    for (const [signature, until] of seen) {
      if (until > now() && seen.size <= signatureLimits.remembered) break;
      seen.delete(signature);
    }
  };
  return ({ timestamp, signature, body }) => {
    if (timestamp === null || signature === null || !/^\d{1,12}$/.test(timestamp)) return 'unsigned';
    const at = Number(timestamp) * 1000;
    if (at < now() - signatureLimits.age) return 'old';
    if (at > now() + signatureLimits.ahead) return 'ahead';
    const right = Buffer.from(signatureOf(secret, timestamp, body));
    const given = Buffer.from(signature);
    if (given.length !== right.length || !timingSafeEqual(given, right)) return 'forged';
    forget();
    if (seen.has(signature)) return 'replayed';
    seen.set(signature, at + signatureLimits.age + signatureLimits.ahead);
    return null;
  };
}
