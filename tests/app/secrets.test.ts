/** Secrets and pupils' words stay where they belong: not in logs, errors, exports or other processes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pino } from 'pino';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { slashCommands } from '../../commands/all.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import { calendar } from '../../src/app/calendar.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { parseCommand } from '../../src/app/typed-command.js';
import { roomChannel } from '../../src/channels/room/room.js';
import { doorPictures } from '../../src/pictures/door-pictures.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { fakeJudges } from '../support/fake-judges.js';
import { readyMoves } from '../support/ready-moves.js';
import { formTo, openWalker } from '../support/walker.js';

const key = 'a key of at least thirty-two letters';
const words = 'the whole secret thought of a child';

let store: Store;
let house: OpenHouse;
let room: ReturnType<typeof roomChannel>;
let classId: ClassId;
let tutor: PersonId;
let wren: PersonId;
let lines: string[];

beforeEach(async () => {
  lines = [];
  const now = Date.parse('2026-11-25T10:00:00Z');
  store = await memoryStore({ now: () => now });
  const log = pino({ level: 'trace' }, { write: (line: string) => void lines.push(line) });
  house = openHouse({
    ...{ store, judges: fakeJudges, calendar, clock: { now: () => now }, log, key },
    ...{ baseUrl: () => 'http://127.0.0.1', seed: () => 7 },
  });
  ({ classId, tutor } = await foundClass(house, { name: 'Reeds', zone: 'UTC', nickname: 'Plover' }));
  const state = await mustMove(house, classId, tutor, [
    ...readyMoves,
    { type: 'add-person', nickname: 'Wren', role: 'pupil' },
    { type: 'add-passage', text: 'Stones lie on the beach. Birds turn them.', title: 'Birds', grade: 4 },
  ]);
  wren = personNamed(state, 'Wren')!;
  const group = Object.values(state.groups)[0]!.id;
  const passage = Object.values(state.shelf)[0]!.id;
  await mustMove(house, classId, tutor, [
    { type: 'set-passage', passage, group },
    { type: 'start-practice', group },
  ]);
  room = roomChannel({
    ...{ host: '127.0.0.1', port: 0, key, secureCookies: false, trustProxy: false },
    ...{ log, slashCommands, readCommand: parseCommand, pictures: doorPictures },
  });
  await room.start(house);
});
afterEach(async () => {
  await room.stop();
  await store.close();
});

/** Comes in with pictures, is refused, writes, is alarmed, and meets a fault that quotes all of it; the secrets of the way. */
async function walk(): Promise<{ readonly secrets: readonly string[]; readonly pages: readonly string[] }> {
  await house.choosePictures({ classId, person: wren }, 'leaf boat key');
  const { secret } = await house.makeSlip({ classId, person: tutor }, wren);
  const walker = openWalker(room.url());
  await walker.signIn('WRONG-CODE-1');
  const asked = await walker.signIn(secret);
  await walker.send(formTo(asked.text, '/in'), { first: 'cup', second: 'bell', third: 'kite' });
  const page = await walker.send(formTo(asked.text, '/in'), { first: 'leaf', second: 'boat', third: 'key' });
  const { fields } = formTo(page.text, '/out');
  const post = (path: string, more: Record<string, string>) => walker.post(path, { ...fields, ...more });
  await post('/move/pass-prediction', {});
  await post('/move/send-draft', { do: 'question', text: words });
  await post('/move/send-draft', { do: 'nonsense', text: words });
  await post('/move/tell-grown-up', { text: words });
  const commit = store.commit.bind(store);
  const quoting = Object.assign(new Error(`${words} ${secret} ${key}`), { name: 'Error' });
  Object.assign(store, { commit: () => Promise.reject(quoting) });
  const broken = await post('/move/send-draft', { do: 'question', text: `${words} again` });
  const home = await walker.get('/');
  Object.assign(store, { commit });
  const session = walker.cookies.get('session') ?? '';
  return {
    secrets: [secret, session, key, fields['_token'] ?? '', 'leaf boat key'],
    pages: [broken.text, home.text],
  };
}

describe('Secrets', () => {
  it('are in no line of the log, nor are a pupil’s words, nickname or address, at the finest level', async () => {
    const { secrets } = await walk();
    const log = lines.join('\n');
    expect(lines.length).toBeGreaterThan(3);
    for (const secret of [...secrets, words, 'Wren', '127.0.0.1', 'WRONG-CODE'])
      expect([secret, log.includes(secret)]).toEqual([secret, false]);
    expect(log).not.toMatch(/scrypt|cup|kite/u);
  });

  it('are on no page of an error, which says nothing of its cause', async () => {
    const { secrets, pages } = await walk();
    const [broken = '', home = ''] = pages;
    expect(broken).toContain('Wait a minute and try again.');
    for (const page of [broken, home])
      for (const secret of [
        ...secrets.filter((one) => one.length > 0).slice(0, 3),
        'src/',
        'node_modules',
        '    at ',
      ])
        expect([secret, page.includes(secret)]).toEqual([secret, false]);
  });

  it('are in no export: neither a slip, a session or a second key, nor anything by which they are checked', async () => {
    const { secrets } = await walk();
    const text = JSON.stringify(await store.exportPerson(classId, wren));
    expect(text).toContain(words);
    for (const secret of secrets) expect([secret, text.includes(secret)]).toEqual([secret, false]);
    const kept = (await store.secondKey(classId, wren))?.hash ?? 'none';
    expect(kept).toMatch(/^scrypt/u);
    for (const part of [kept, kept.split('$').at(-1) ?? '']) expect(text).not.toContain(part);
  });

  it('are passed to no other process: the program starts none', () => {
    const files = readdirSync('src', { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.tsx?$/u.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name));
    expect(files.length).toBeGreaterThan(300);
    const starting = files.filter((file) => /node:(child_process|cluster)/u.test(readFileSync(file, 'utf8')));
    expect(starting).toEqual([]);
    const threads = files.filter((file) => readFileSync(file, 'utf8').includes('node:worker_threads'));
    // Threads measure judges and open no school.
    for (const file of threads) expect(file).toMatch(/^src\/app\/evaluate\//u);
  });
});
