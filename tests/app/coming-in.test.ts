import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Who } from '../../shared/channel.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Move } from '../../shared/moves.js';
import { doorLimits } from '../../src/app/doors.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import type { OpenHouse } from '../../src/app/house.js';
import { tryLimits } from '../../src/practice/second-key.js';
import type { Store } from '../../src/store/store.js';
import { openBareHouse } from '../support/bare-house.js';
import { readyMoves } from '../support/ready-moves.js';

let store: Store;
let house: OpenHouse;
let classId: ClassId;
let tutor: PersonId;
let now: number;

beforeEach(async () => {
  now = Date.parse('2026-11-25T09:00:00Z');
  ({ store, house } = await openBareHouse(() => now));
  ({ classId, tutor } = await foundClass(house, { name: 'Reeds', zone: 'UTC', nickname: 'Plover' }));
  await move(
    { type: 'add-person', nickname: 'Wren', role: 'pupil' },
    { type: 'add-person', nickname: 'Finch', role: 'pupil' },
    { type: 'add-person', nickname: 'Heron', role: 'administrator' },
  );
});
afterEach(() => store.close());

const move = (...moves: readonly Move[]): Promise<unknown> => mustMove(house, classId, tutor, moves);
const set = (setting: 'picture secret' | 'staff passphrase', value: string): Move => ({
  type: 'change-setting',
  setting,
  value,
});
async function who(nickname: string): Promise<Who> {
  const person = personNamed(await house.classes.load(classId), nickname);
  if (person === null) throw new Error(`no ${nickname}`);
  return { classId, person };
}
async function slipOf(nickname: string): Promise<string> {
  return (await house.makeSlip({ classId, person: tutor }, (await who(nickname)).person)).secret;
}
/** What comes of it, in one word or sentence. */
async function come(secret: string, second?: string): Promise<string> {
  const answer = await house.signIn(secret, 'laptop', second);
  if ('refused' in answer) return answer.refused;
  if ('session' in answer) return 'in';
  return `${answer.choose ? 'choose' : 'give'} ${answer.asks}${answer.why === null ? '' : `: ${answer.why}`}`;
}
const reset = async (by: string, of: string): Promise<boolean> => {
  const { person } = await who(of);
  const fields = { person };
  return (await house.move({ id: `r${Math.random()}`, who: await who(by), move: 'reset-second-key', fields }))
    .done;
};

describe('A class that lacks its named adults, its text or its number', () => {
  it('is shut to pupils, kindly, and open to the staff who settle it', async () => {
    const wren = await slipOf('Wren');
    const closed = 'Your class is not open yet. Your tutor will tell you when.';
    expect(await come(await slipOf('Plover'))).toBe('in');
    for (const [at, step] of readyMoves.entries()) {
      expect([at, await come(wren)]).toEqual([at, closed]);
      expect(await house.join('discord', 't', 'u', wren)).toEqual({ refused: closed });
      await move(step);
    }
    expect(await come(wren)).toBe('in');
  });

  it('tells staff on their pages what to set, with the commands, until all is set', async () => {
    const pageOf = async (nickname: string, look: string): Promise<string> =>
      JSON.stringify((await house.look(await who(nickname), look, {})).messages);
    const commands = [
      '/class set setting:alarm text',
      '/class set setting:alarm number',
      'role:safeguarding lead',
      'role:safeguarding deputy',
    ];
    for (const [nickname, look] of [
      ['Plover', 'waiting'],
      ['Plover', 'settings'],
      ['Heron', 'roster'],
    ] as const) {
      const page = await pageOf(nickname, look);
      for (const command of commands) expect(page).toContain(command);
    }
    await move(...readyMoves);
    expect(await pageOf('Plover', 'waiting')).not.toContain('Pupils cannot come in yet');
  });
});

describe('Three pictures', () => {
  beforeEach(() => move(...readyMoves));

  it('are asked for only where a pupil chose them or the class wants them', async () => {
    const [wren, finch] = [await slipOf('Wren'), await slipOf('Finch')];
    expect(await come(wren)).toBe('in');
    expect((await house.choosePictures(await who('Wren'), 'leaf boat key')).done).toBe(true);
    expect([await come(wren), await come(finch)]).toEqual(['give pictures', 'in']);
    await move(set('picture secret', 'on'));
    expect([await come(wren), await come(finch)]).toEqual(['give pictures', 'choose pictures']);
    expect(await come(finch, 'bell bell cup')).toBe('in');
    await move(set('picture secret', 'off'));
    expect([await come(wren), await come(finch)]).toEqual(['give pictures', 'give pictures']);
  });

  it('open the door in their order and in no other', async () => {
    const slip = await slipOf('Wren');
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    const no = 'give pictures: Those are not your pictures. Try again, or ask your tutor.';
    expect(await come(slip, 'boat leaf key')).toBe(no);
    expect(await come(slip, 'leaf boat')).toBe(no);
    expect(await come(slip, 'leaf boat key')).toBe('in');
  });

  it.each(['', 'leaf boat', 'leaf boat key bell', 'leaf boat dragon', 'leaf leaf <b>'])(
    '“%s” are no three of ours and are not kept',
    async (pictures) => {
      expect((await house.choosePictures(await who('Wren'), pictures)).done).toBe(false);
      expect(await house.hasSecondKey(await who('Wren'))).toBe(false);
    },
  );

  it('make who guesses wait after three wrong tries, and stop everybody after ten until the tutor resets them', async () => {
    const slip = await slipOf('Wren');
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    for (let tries = 0; tries < tryLimits.free; tries += 1) await come(slip, 'bell bell bell');
    expect(await come(slip, 'leaf boat key')).toBe('give pictures: Wait one minute. Then try again.');
    for (let tries = tryLimits.free; tries < tryLimits.pictures; tries += 1) {
      now += tryLimits.wait;
      expect(await come(slip, 'cup cup cup')).toContain('not your pictures');
    }
    now += 24 * 3600_000;
    const locked = 'give pictures: Too many tries. Ask your tutor to let you pick new pictures.';
    expect(await come(slip, 'leaf boat key')).toBe(locked);
    const roster = await house.look(await who('Plover'), 'roster', {});
    expect(JSON.stringify(roster.messages)).toContain('Reset the pictures of Wren (too many wrong tries)');
    expect(await reset('Wren', 'Wren')).toBe(false);
    expect(await reset('Plover', 'Wren')).toBe(true);
    expect(await come(slip)).toBe('in');
  });

  it('tried many at one time count as many', async () => {
    const slip = await slipOf('Wren');
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    const answers = await Promise.all(Array.from({ length: 20 }, () => come(slip, 'cup bell tree')));
    expect(answers.filter((one) => one.includes('not your pictures'))).toHaveLength(tryLimits.free);
  });

  it('begin to count anew after a right answer', async () => {
    const slip = await slipOf('Wren');
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    for (let round = 0; round < 6; round += 1) {
      for (let tries = 0; tries < 2; tries += 1) await come(slip, 'bell bell bell');
      expect(await come(slip, 'leaf boat key')).toBe('in');
    }
  });

  it('are kept stretched and salted, under the school’s key, and never as words', async () => {
    const { person } = await who('Wren');
    const kept = async (): Promise<string> => (await store.secondKey(classId, person))?.hash ?? '';
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    const first = await kept();
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    expect(first).toMatch(/^scrypt\$16384\$8\$1\$[\w-]{22}\$[\w-]{43}$/u);
    expect(await kept()).not.toBe(first);
    expect(JSON.stringify(await store.events(classId))).not.toMatch(/leaf|boat/u);
  });

  it('chosen first at the door by somebody else aren’t overwritten there', async () => {
    await move(set('picture secret', 'on'));
    const slip = await slipOf('Wren');
    const [one, two] = await Promise.all([come(slip, 'leaf boat key'), come(slip, 'cup cup cup')]);
    expect([one, two].filter((answer) => answer === 'in')).toHaveLength(1);
  });

  it('go with the person when they are erased', async () => {
    const { person } = await who('Wren');
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    await move({ type: 'erase-person', person });
    expect(await store.secondKey(classId, person)).toBeNull();
  });

  it('are written behind the code where a platform asks for it', async () => {
    const slip = await slipOf('Wren');
    await move(set('picture secret', 'on'));
    const join = (code: string) => house.join('slack', 't', 'u', code);
    expect(await join(`${slip}, leaf, boat, key`)).toEqual({
      refused: 'Come in on the page first and pick your three pictures.',
    });
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    expect(await join(slip)).toMatchObject({
      refused: expect.stringContaining('CODE, boat, key, tree') as string,
    });
    expect(await join(`${slip}, leaf, boat, cup`)).toMatchObject({
      refused: expect.stringContaining('not your pictures') as string,
    });
    expect(await house.identify('slack', 't', 'u')).toBeNull();
    expect(await join(`${slip}, leaf, boat, key`)).toEqual(await who('Wren'));
    expect(await house.identify('slack', 't', 'u')).toEqual(await who('Wren'));
  });

  it('don’t stand between a pupil and a grown-up', async () => {
    const slip = await slipOf('Wren');
    await house.choosePictures(await who('Wren'), 'leaf boat key');
    const told = await house.tellGrownUp(slip, 'laptop', 'u1', 'help');
    expect(told).toMatchObject({ done: true });
    const alarms = Object.values((await house.classes.load(classId)).alarms);
    expect(alarms.map(({ person }) => person)).toEqual([(await who('Wren')).person]);
    expect(await house.tellGrownUp('WRONG-CODE', 'laptop', 'u2', 'x')).toHaveProperty('refused');
    expect(await house.tellGrownUp(await slipOf('Plover'), 'laptop', 'u3', 'x')).toHaveProperty('refused');
  });
});

describe('A passphrase of staff', () => {
  const phrase = 'four reeds by the water';
  beforeEach(async () => {
    await move(...readyMoves);
    await mustMove(house, classId, (await who('Heron')).person, [set('staff passphrase', 'on')]);
  });

  it('is set at the first sign-in and asked for at the next', async () => {
    const link = await slipOf('Plover');
    expect(await come(link)).toBe('choose passphrase');
    expect(await come(link, 'short')).toMatch(/^choose passphrase: A passphrase needs 12 characters/u);
    expect(await come(link, phrase)).toBe('in');
    expect(await come(link)).toBe('give passphrase');
    expect(await come(link, 'four reeds by the river')).toMatch(/^give passphrase: This is not your/u);
    expect(await come(link, ` ${phrase.replaceAll(' ', '  ')} `)).toBe('in');
  });

  it('isn’t asked of pupils, nor of staff once it is off', async () => {
    expect(await come(await slipOf('Wren'))).toBe('in');
    const link = await slipOf('Plover');
    await come(link, phrase);
    await mustMove(house, classId, (await who('Heron')).person, [set('staff passphrase', 'off')]);
    expect(await come(link)).toBe('in');
  });

  it('is rate-limited, and reset by an administrator alone', async () => {
    const link = await slipOf('Plover');
    await come(link, phrase);
    for (let tries = 0; tries < tryLimits.passphrase; tries += 1) {
      now += tryLimits.wait;
      await come(link, 'guess after guess');
    }
    now += tryLimits.wait;
    expect(await come(link, phrase)).toMatch(/Ask an administrator/u);
    expect(await reset('Plover', 'Plover')).toBe(false);
    expect(await reset('Heron', 'Plover')).toBe(true);
    expect(await come(link)).toBe('choose passphrase');
  });
});

describe('Slips', () => {
  beforeEach(() => move(...readyMoves));
  const command = async (nickname: string, action: string, options: Record<string, string>) =>
    house.command(await who(nickname), `c${Math.random()}`, { name: 'roster', action, options });

  it('for a whole group are one for each pupil, and end the slips and sessions before them', async () => {
    const before = await slipOf('Wren');
    const session = await house.signIn(before, 'laptop');
    const { done, messages } = await command('Plover', 'sheet', { group: 'Group 1' });
    expect(done).toBe(true);
    const [first, ...slips] = messages;
    expect(JSON.stringify(first)).toContain('Older slips of these pupils no longer work');
    expect(slips.map(({ summary }) => summary)).toEqual(['Wren', 'Finch']);
    expect(await come(before)).toMatch(/does not open anything/u);
    expect('session' in session && (await house.session(session.session))).toBeNull();
    for (const slip of slips) {
      const text = JSON.stringify(slip);
      const code = /[2-9A-Z]{4}-[2-9A-Z]{4}-[2-9A-Z]{2}/u.exec(text)?.[0] ?? '';
      expect(await come(code)).toBe('in');
      expect(text).toContain(`"data":"http://127.0.0.1/in/${code}"`);
      expect(text).toContain('It is good until Thursday 25.3. at 9:00.');
    }
  });

  it('for a group are made by nobody but who runs the class', async () => {
    for (const nickname of ['Wren', 'Egret', 'Knot'])
      expect((await command(nickname, 'sheet', { group: 'Group 1' })).done).toBe(false);
  });

  it('of staff last two weeks and say until when; a session ends with its link', async () => {
    const { messages } = await command('Heron', 'slip', { person: 'Plover' });
    expect(JSON.stringify(messages)).toContain('It opens the room until Wednesday 9.12. at 9:00.');
    const made = await house.makeSlip({ classId, person: tutor }, tutor);
    expect(made.until).toBe(now + doorLimits.staffLink);
    now += doorLimits.staffLink - 1;
    const late = await house.signIn(made.secret, 'desk');
    const session = 'session' in late ? late.session : '';
    expect(await house.session(session)).toEqual({ classId, person: tutor });
    now += 1;
    expect([await house.session(session), await come(made.secret)]).toEqual([
      null,
      expect.stringMatching(/does not open anything/u),
    ]);
  });
});

describe('A place of their own', () => {
  beforeEach(() => move(...readyMoves));
  const staff = { to: 'staff', group: null } as const;

  it('brings calls and rehearsals to a named adult, and nothing else of the class', async () => {
    expect((await house.bindPlace(await who('Egret'), 'slack', 't', 'own', staff)).done).toBe(true);
    await move({ type: 'try-alarm' });
    const rows = await store.outbox('slack', 50);
    expect(rows.map(({ place }) => place.room)).toEqual(['own']);
    expect(JSON.stringify(rows[0]?.telling)).toContain('This is a rehearsal');
  });

  it('is never one that others of the class read, and no other role of that kind has one', async () => {
    await house.bindPlace({ classId, person: tutor }, 'slack', 't', 'staff', staff);
    expect((await house.bindPlace(await who('Egret'), 'slack', 't', 'staff', staff)).done).toBe(false);
    const group = Object.values((await house.classes.load(classId)).groups)[0]!.id;
    expect(
      (await house.bindPlace(await who('Egret'), 'slack', 't', 'x', { to: 'channel', group })).done,
    ).toBe(false);
    expect((await house.bindPlace(await who('Wren'), 'slack', 't', 'x', staff)).done).toBe(false);
  });
});

describe('A link of a named adult', () => {
  it('that somebody else makes is told to staff, without its secret; one’s own is not', async () => {
    await move({ type: 'add-person', nickname: 'Owl', role: 'safeguarding lead' });
    const staff = { to: 'staff', group: null } as const;
    const heron = await who('Heron');
    const owl = await who('Owl');
    const { secret } = await house.makeSlip(heron, owl.person);
    await house.makeSlip(owl, owl.person);
    await house.makeSlip(heron, (await who('Wren')).person);
    const said = (await store.shown(classId, staff)).map(({ message }) => message.summary);
    expect(said).toEqual([expect.stringMatching(/^A new link for Owl, .* was made by Heron\./u)]);
    expect(JSON.stringify(await store.shown(classId, staff))).not.toContain(secret);
  });
});
