import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import { doorLimits, openDoors, type Doors } from '../../src/app/doors.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';

const classId = asId<ClassId>('c1');
const wren = asId<PersonId>('u1');
const heron = asId<PersonId>('u2');
const key = 'a key of at least thirty-two letters';

let store: Store;
let doors: Doors;
let now: number;

beforeEach(async () => {
  now = Date.parse('2026-11-25T09:00:00Z');
  store = await memoryStore({ now: () => now });
  doors = openDoors(store, key, () => now);
});
afterEach(() => store.close());

const slipOf = async (...args: Parameters<Doors['makeSlip']>): Promise<string> =>
  (await doors.makeSlip(...args)).secret;

const come = async (secret: string, from = 'laptop'): Promise<string> => {
  const answer = await doors.signIn(secret, from);
  return 'session' in answer ? answer.session : answer.refused;
};

describe('A slip', () => {
  it('opens a session, typed in any case and with or without dashes', async () => {
    const code = await slipOf(classId, wren, false);
    expect(code).toMatch(/^[2-9A-Z]{4}-[2-9A-Z]{4}-[2-9A-Z]{2}$/);
    for (const typed of [
      code,
      code.toLowerCase(),
      code.replaceAll('-', ''),
      ` ${code.replaceAll('-', ' ')} `,
    ]) {
      expect(await doors.session(await come(typed))).toEqual({ classId, person: wren });
    }
  });

  it('is good for a term and no longer', async () => {
    const code = await slipOf(classId, wren, false);
    now += doorLimits.pupilSlip - 1;
    const session = await come(code);
    expect(await doors.session(session)).toEqual({ classId, person: wren });
    now += 1;
    expect(await doors.session(session)).toBeNull();
    expect(await come(code)).toMatch(/does not open anything/);
  });

  it('stops working when a new one is made, and so do the sessions made from it', async () => {
    const first = await slipOf(classId, wren, false);
    const session = await come(first);
    const second = await slipOf(classId, wren, false);
    expect(await doors.session(session)).toBeNull();
    expect(await come(first)).toMatch(/does not open anything/);
    expect(await doors.session(await come(second))).toEqual({ classId, person: wren });
  });

  it('of one pupil revoked leaves another’s alone', async () => {
    const theirs = await slipOf(classId, heron, true);
    const mine = await slipOf(classId, wren, false);
    await doors.revoke(classId, wren);
    expect(await come(mine)).toMatch(/does not open anything/);
    expect(await doors.session(await come(theirs))).toEqual({ classId, person: heron });
  });

  it('is not stored in the clear, nor is a session', async () => {
    const code = await slipOf(classId, wren, false);
    const session = await come(code);
    expect(await store.slip(code)).toBeNull();
    expect(await store.session(session)).toBeNull();
  });
});

describe('A staff link', () => {
  it('is long and lasts two weeks', async () => {
    const secret = await slipOf(classId, heron, true);
    expect(secret.length).toBeGreaterThanOrEqual(24);
    now += doorLimits.staffLink;
    expect(await come(secret)).toMatch(/does not open anything/);
  });
});

describe('Guessing', () => {
  it('is stopped after sixty wrong codes from one place, for ten minutes, and other places go on', async () => {
    const code = await slipOf(classId, wren, false);
    for (let tries = 0; tries < doorLimits.guesses; tries += 1)
      expect(await come('WRONG-CODE')).toMatch(/does not open/);
    expect(await come(code)).toMatch(/Too many tries/);
    expect(await doors.session(await come(code, 'another laptop'))).not.toBeNull();
    now += doorLimits.guessWindow;
    expect(await doors.session(await come(code))).not.toBeNull();
  });

  it('is stopped when it comes from many places', async () => {
    for (let tries = 0; tries < doorLimits.guessesInAll; tries += 1)
      await come('WRONG-CODE', `place ${tries}`);
    expect(await come('WRONG-CODE', 'a fresh place')).toMatch(/Too many tries/);
  });

  it.each(['', ' ', '0', 'x'.repeat(5000), '\u0000', 'constructor'])('%j opens nothing', async (secret) => {
    expect(await come(secret)).toMatch(/does not open anything/);
  });
});

it('signing out ends that session only', async () => {
  const code = await slipOf(classId, wren, false);
  const [one, two] = [await come(code), await come(code)];
  await doors.signOut(one);
  expect([await doors.session(one), await doors.session(two)]).toEqual([null, { classId, person: wren }]);
});
