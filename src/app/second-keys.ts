import { createHmac, randomBytes, scrypt, timingSafeEqual } from 'node:crypto';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { fill } from '../coaching/catalogue.js';
import { doorWords } from '../coaching/door-words.js';
import { doorPictures, picturesOfKey } from '../pictures/door-pictures.js';
import { isLocked, mustWait, type SecondKind } from '../practice/second-key.js';
import type { Store } from '../store/store.js';

/*
 * A second key stands beside a slip or link: three pictures in order, or a passphrase. It is kept as scrypt (RFC 7914) of
 * its HMAC under the school's key, so that the database alone, in which three pictures would be guessed at once, tells
 * nothing. A try is counted before it is looked at, so that many at one time count as many.
 */

/** Cost of scrypt: about 16 MiB and 50 ms a try. */
const cost = { N: 16_384, r: 8, p: 1 } as const;
const shortest = 12;
const longest = 200;

/** What is kept of an answer, as it is compared; null where it can't be a key at all. */
function plainAnswer(kind: SecondKind, answer: string): string | null {
  if (kind === 'passphrase') {
    const words = answer.normalize('NFKC').trim().replace(/\s+/gu, ' ');
    return words.length >= shortest && words.length <= longest ? words : null;
  }
  const names = answer
    .toLowerCase()
    .split(/[\s,]+/u)
    .filter((name) => name !== '');
  const known = names.every((name) => doorPictures.some((picture) => picture.name === name));
  return known && names.length === picturesOfKey ? names.join(' ') : null;
}

function stretch(text: string, salt: Buffer, { N, r, p }: typeof cost): Promise<Buffer> {
  return new Promise((settle, fail) =>
    scrypt(text, salt, 32, { N, r, p }, (why, hash) => (why ? fail(why) : settle(hash))),
  );
}

export interface SecondKeys {
  /** Sets somebody's key; a refusal in words where the answer can't be one. */
  choose(
    classId: ClassId,
    person: PersonId,
    kind: SecondKind,
    answer: string,
    how: 'only where there is none' | 'also anew',
  ): Promise<string | null>;
  /** Null where the answer is right, else why not, in words. A key that isn't set is never right. */
  check(classId: ClassId, person: PersonId, answer: string): Promise<string | null>;
  /** Which key somebody has, null where none. */
  kindOf(classId: ClassId, person: PersonId): Promise<SecondKind | null>;
  forget(classId: ClassId, person: PersonId): Promise<void>;
}

/** Opens the second keys of a store. */
export function openSecondKeys(store: Pick<Store, 'secondKey'>, key: string, now: () => Instant): SecondKeys {
  const peppered = (text: string): string =>
    createHmac('sha256', key).update(`second key:${text}`).digest('base64');
  const hashOf = async (text: string): Promise<string> => {
    const salt = randomBytes(16);
    const hash = await stretch(peppered(text), salt, cost);
    return ['scrypt', cost.N, cost.r, cost.p, salt.toString('base64url'), hash.toString('base64url')].join(
      '$',
    );
  };
  const isRight = async (text: string, kept: string): Promise<boolean> => {
    const [, n, r, p, salt = '', hash = ''] = kept.split('$');
    const kindOfCost = { N: Number(n), r: Number(r), p: Number(p) } as typeof cost;
    const got = await stretch(peppered(text), Buffer.from(salt, 'base64url'), kindOfCost);
    const expected = Buffer.from(hash, 'base64url');
    return got.length === expected.length && timingSafeEqual(got, expected);
  };

  return {
    async choose(classId, person, kind, answer, how) {
      const text = plainAnswer(kind, answer);
      if (text === null) return fill(doorWords[kind === 'pictures' ? 'pick three' : 'passphrase short']);
      const hash = await hashOf(text);
      const fresh = { kind, hash, misses: 0, missedAt: null };
      const kept = await store.secondKey(classId, person, (before) =>
        before !== null && how === 'only where there is none' ? before : fresh,
      );
      // Somebody else was first at the same door.
      return kept?.hash === hash ? null : fill(doorWords[`not your ${kind}`]);
    },
    async check(classId, person, answer) {
      let refused: keyof typeof doorWords | null = null;
      const kept = await store.secondKey(classId, person, (before) => {
        if (before === null) return null;
        if (isLocked(before)) refused = `${before.kind} locked`;
        else if (mustWait(before, now())) refused = 'wait a minute';
        return refused === null ? { ...before, misses: before.misses + 1, missedAt: now() } : before;
      });
      if (kept === null) return fill(doorWords['opens nothing']);
      if (refused !== null) return fill(doorWords[refused]);
      const text = plainAnswer(kept.kind, answer);
      if (text === null || !(await isRight(text, kept.hash))) return fill(doorWords[`not your ${kept.kind}`]);
      await store.secondKey(classId, person, (after) =>
        after?.hash === kept.hash ? { ...after, misses: 0, missedAt: null } : after,
      );
      return null;
    },
    async kindOf(classId, person) {
      return (await store.secondKey(classId, person))?.kind ?? null;
    },
    async forget(classId, person) {
      await store.secondKey(classId, person, () => null);
    },
  };
}
