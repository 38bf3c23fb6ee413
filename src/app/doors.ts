import { createHmac, randomBytes, randomInt } from 'node:crypto';
import type { Who } from '../../shared/channel.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { fill } from '../coaching/catalogue.js';
import { doorWords } from '../coaching/door-words.js';
import type { Slip, Store } from '../store/store.js';

/** Letters of a slip's code: none that are easily taken for another (no 0 O 1 I L U V). */
const codeLetters = '23456789ABCDEFGHJKMNPQRSTWXYZ';
const day = 24 * 3600_000;

/** How long things are good for, in milliseconds, and how many wrong codes are borne. */
export const doorLimits = {
  pupilSlip: 120 * day,
  staffLink: 14 * day,
  session: 120 * day,
  staffSession: 14 * day,
  /** Wrong codes from one address in ten minutes; a whole school may stand behind one address. */
  guesses: 60,
  /** Wrong codes from anywhere in ten minutes. */
  guessesInAll: 600,
  guessWindow: 600_000,
} as const;

/** A fresh code for a pupil, "K7QM-2RTX-9P": 10 letters of 29, about 48 bits. */
function freshCode(): string {
  const letters = Array.from({ length: 10 }, () => codeLetters[randomInt(codeLetters.length)] ?? '');
  return `${letters.slice(0, 4).join('')}-${letters.slice(4, 8).join('')}-${letters.slice(8).join('')}`;
}

/** A code or link secret as it is compared: upper case and dashes don't matter for codes typed by hand. */
function plainSecret(secret: string): string {
  const trimmed = secret.trim();
  const code = trimmed.toUpperCase().replace(/[\s-]/gu, '');
  return /^[2-9A-Z]{10}$/.test(code) ? code : trimmed;
}

export interface Doors {
  /** What a secret opens, or why nothing; a wrong one is counted against who guesses. */
  find(secret: string, from: string): Promise<Slip | { readonly refused: string }>;
  /** Opens a session for a slip that was found. */
  open(slip: Slip): Promise<{ readonly session: string; readonly who: Who }>;
  /** Both at once, for what asks for nothing more. */
  signIn(
    secret: string,
    from: string,
  ): Promise<{ readonly session: string; readonly who: Who } | { readonly refused: string }>;
  session(id: string): Promise<Who | null>;
  signOut(id: string): Promise<void>;
  /** A new slip for a pupil (short code) or link for staff (long secret); older ones stop working. */
  makeSlip(
    classId: ClassId,
    person: PersonId,
    staff: boolean,
  ): Promise<{ readonly secret: string; readonly until: Instant }>;
  /** Keeps a given secret as a way in beside older ones, for a time in milliseconds from now. */
  keepSlip(classId: ClassId, person: PersonId, secret: string, life: number): Promise<void>;
  revoke(classId: ClassId, person: PersonId): Promise<void>;
}

/** Opens the doors of a store: slips, links, sessions, and a limit on guesses that is kept in memory. */
export function openDoors(store: Store, key: string, now: () => Instant): Doors {
  const hash = (secret: string): string =>
    createHmac('sha256', key).update(plainSecret(secret)).digest('base64url');
  const misses = new Map<string, Instant[]>();

  const recent = (from: string): Instant[] => {
    const since = now() - doorLimits.guessWindow;
    return (misses.get(from) ?? []).filter((at) => at > since);
  };
  const miss = (from: string): void => {
    for (const who of [from, '*']) misses.set(who, [...recent(who), now()].slice(-doorLimits.guessesInAll));
    if (misses.size > 5000)
      for (const who of [...misses.keys()]) if (recent(who).length === 0) misses.delete(who);
  };

  const doors: Doors = {
    async find(secret, from) {
      if (recent(from).length >= doorLimits.guesses || recent('*').length >= doorLimits.guessesInAll) {
        return { refused: fill(doorWords['too many tries']) };
      }
      const slip = secret.trim() === '' ? null : await store.slip(hash(secret));
      if (slip === null || slip.revoked || slip.expiresAt <= now()) {
        miss(from);
        return { refused: fill(doorWords['opens nothing']) };
      }
      return slip;
    },
    async signIn(secret, from) {
      const slip = await doors.find(secret, from);
      return 'refused' in slip ? slip : doors.open(slip);
    },
    async open(slip) {
      const id = randomBytes(24).toString('base64url');
      const staff = slip.expiresAt - slip.madeAt <= doorLimits.staffLink;
      const until = Math.min(slip.expiresAt, now() + (staff ? doorLimits.staffSession : doorLimits.session));
      const who = { classId: slip.classId, person: slip.person };
      await store.saveSession({ id: hash(id), ...who, startedAt: now(), seenAt: now(), expiresAt: until });
      return { session: id, who };
    },
    async session(id) {
      const found = await store.session(hash(id));
      if (found === null || found.expiresAt <= now()) return null;
      return { classId: found.classId, person: found.person };
    },
    async signOut(id) {
      await store.endSession(hash(id));
    },
    async makeSlip(classId, person, staff) {
      await store.revokeSlips(classId, person);
      const secret = staff ? randomBytes(18).toString('base64url') : freshCode();
      const life = staff ? doorLimits.staffLink : doorLimits.pupilSlip;
      await store.saveSlip(hash(secret), {
        classId,
        person,
        madeAt: now(),
        expiresAt: now() + life,
        revoked: false,
      });
      return { secret, until: now() + life };
    },
    async keepSlip(classId, person, secret, life) {
      await store.saveSlip(hash(secret), {
        classId,
        person,
        madeAt: now(),
        expiresAt: now() + life,
        revoked: false,
      });
    },
    async revoke(classId, person) {
      await store.revokeSlips(classId, person);
    },
  };
  return doors;
}
