/** What the command line says of a class that isn't settled yet, run in this process over a folder of its own. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Verb } from '../../src/app/io.js';
import { mustMove, personNamed } from '../../src/app/founding.js';
import { inSchool } from '../../src/app/school.js';
import { verb as doctor } from '../../src/app/verbs/doctor.js';
import { verb as makeClass } from '../../src/app/verbs/make-class.js';
import { verb as makeLink } from '../../src/app/verbs/make-link.js';
import { readyMoves } from '../support/ready-moves.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnstone-settling-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const ioOf = () => {
  const said = { out: '', err: '' };
  const io = {
    out: async (text: string) => void (said.out += text),
    err: (text: string) => void (said.err += text),
    input: (async function* () {})(),
    env: { TURNSTONE_DATA: folder, TURNSTONE_PORT: '0', TURNSTONE_LOG: 'silent' },
  };
  return { io, said };
};
async function run(
  verb: Verb,
  ...args: readonly string[]
): Promise<{ code: number; out: string; err: string }> {
  const { io, said } = ioOf();
  return { code: await verb.run(args, io), ...said };
}
const named = ['--name', 'Reeds', '--zone', 'Europe/London', '--nickname', 'Heron'];
const commands = [
  '/class set setting:alarm text value:…',
  '/class set setting:alarm number value:…',
  '/roster add nickname:… role:safeguarding lead',
  '/roster add nickname:… role:safeguarding deputy',
];

describe('make-class', () => {
  it('prints until when the link is good, and what must be set before pupils come in', async () => {
    const { code, out } = await run(makeClass, ...named);
    expect(code).toBe(0);
    expect(out).toMatch(
      /good until [A-Z][a-z]+day \d+\.\d+\. at \d+:\d\d:\n {2}http:\/\/127\.0\.0\.1:0\/in\/\S+\n/u,
    );
    expect(out).toContain('Pupils cannot come in yet.');
    for (const command of commands) expect(out).toContain(command);
  });
});

describe('doctor', () => {
  it('ends with 1 and names what a class lacks, one by one, until pupils can come in', async () => {
    await run(makeClass, ...named);
    const before = await run(doctor);
    expect(before.code).toBe(1);
    expect(before.out.match(/pupils can’t come in yet/gu)).toHaveLength(commands.length);
    for (const command of commands) expect(before.out).toContain(command);
    const { io } = ioOf();
    await inSchool(io, folder, async ({ house, store }) => {
      const [classId] = await store.classes();
      const state = await house.classes.load(classId!);
      await mustMove(house, classId!, personNamed(state, 'Heron')!, readyMoves);
    });
    const after = await run(doctor);
    expect([after.code, after.out.includes('mend')]).toEqual([0, false]);
    expect(after.out).toContain(
      'Reeds: has alarm text, number, safeguarding lead and deputy; pupils can come in.',
    );
  });
});

describe('make-link', () => {
  it('prints until when, ends older links, and takes back the passphrase', async () => {
    const first = await run(makeClass, ...named);
    const old = /\/in\/(\S+)/u.exec(first.out)?.[1] ?? '';
    const { io } = ioOf();
    const withHouse = <T>(work: Parameters<typeof inSchool<T>>[2]) => inSchool(io, folder, work);
    await withHouse(async ({ house, store }) => {
      const [classId] = await store.classes();
      const person = personNamed(await house.classes.load(classId!), 'Heron')!;
      await house.keys.choose(classId!, person, 'passphrase', 'four reeds by the water', 'also anew');
    });
    const made = await run(makeLink, '--nickname', 'Heron');
    expect(made.err).toMatch(/^Good until [A-Z][a-z]+day \d+\.\d+\. at \d+:\d\d\./u);
    const secret = /\/in\/(\S+)/u.exec(made.out)?.[1] ?? '';
    await withHouse(async ({ house, store }) => {
      const [classId] = await store.classes();
      const person = personNamed(await house.classes.load(classId!), 'Heron')!;
      expect(await house.keys.kindOf(classId!, person)).toBeNull();
      expect(await house.signIn(old, 'desk')).toHaveProperty('refused');
      expect(await house.signIn(secret, 'desk')).toHaveProperty('session');
    });
  });
});
