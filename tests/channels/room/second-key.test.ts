/** What the door asks for beside a code: three pictures or a passphrase; and a grown-up can be told before. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { doorPictures } from '../../../src/pictures/door-pictures.js';
import { slips } from '../../support/fake-class.js';
import { openRoom, type OpenRoom } from '../../support/open-room.js';
import { formTo, openWalker, type Walker } from '../../support/walker.js';

let room: OpenRoom;
let walker: Walker;
const wren = slips['WREN-2345-67']!.person;
const plover = slips['PLOVER-LINK']!.person;
const three = { first: 'leaf', second: 'boat', third: 'key' };

beforeEach(async () => {
  room = await openRoom();
  walker = openWalker(room.url);
});
afterEach(() => room.stop());

describe('A pupil with three pictures', () => {
  beforeEach(() => room.house.secondKeys.set(wren, 'leaf boat key'));

  test('is asked for them after the code, and nobody is in before', async () => {
    const asked = await walker.signIn('WREN-2345-67');
    expect(asked.text).toContain('<h1>Show your three pictures</h1>');
    expect(room.house.sessions.size).toBe(0);
    expect(walker.cookies.has('session')).toBe(false);
    expect((await walker.get('/words')).status).toBe(403);
    const inside = await walker.send(formTo(asked.text, '/in'), three);
    expect(inside.text).toContain('Wren');
    expect(room.house.sessions.size).toBe(1);
  });

  test('keeps the device as it was ticked at the code', async () => {
    const page = await walker.get('/');
    const asked = await walker.send(formTo(page.text, '/in'), { code: 'WREN-2345-67', own: 'yes' });
    await walker.send(formTo(asked.text, '/in'), three);
    expect(walker.setCookies.find((one) => one.startsWith('session='))).toMatch(/Max-Age=\d{7,}/u);
  });

  test('is told kindly of wrong ones and of one that is missing, which counts as no try', async () => {
    const asked = await walker.signIn('WREN-2345-67');
    const form = formTo(asked.text, '/in');
    const wrong = await walker.send(form, { ...three, third: 'cup' });
    expect([wrong.status, wrong.text.includes('Those are not your pictures.')]).toEqual([422, true]);
    const tries = room.house.guessers.length;
    const missing = await walker.send(form, { first: 'leaf', third: 'key' });
    expect([missing.status, missing.text.includes('Pick three pictures.')]).toEqual([422, true]);
    expect(room.house.guessers.length).toBe(tries + 1);
    expect(room.house.sessions.size).toBe(0);
  });

  test('needs the token of the page', async () => {
    const asked = await walker.signIn('WREN-2345-67');
    const { fields } = formTo(asked.text, '/in');
    expect((await walker.post('/in', { ...fields, ...three, _token: 'x' })).status).toBe(403);
  });

  test('can tell a grown-up from there, with or without words, and go on', async () => {
    const asked = await walker.signIn('WREN-2345-67');
    const told = await walker.send(formTo(asked.text, '/in/grown-up'), { text: 'please come' });
    expect(told.status).toBe(200);
    expect(room.house.updates.map(({ move, who, fields }) => [move, who.person, fields['text']])).toEqual([
      ['tell-grown-up', wren, 'please come'],
    ]);
    expect(told.text).toContain('href="/in/WREN-2345-67"');
    expect(room.house.sessions.size).toBe(0);
    await walker.send(formTo(asked.text, '/in/grown-up'), { _token: 'x' });
    await walker.send(formTo(asked.text, '/in/grown-up'), { code: 'NONE-2345-67' });
    expect(room.house.updates).toHaveLength(1);
  });
});

test('A pupil who has none yet picks them at the door where the class asks for them', async () => {
  room.house.secondKeys.set(wren, '');
  const asked = await walker.signIn('WREN-2345-67');
  expect(asked.text).toContain('<h1>Pick three pictures</h1>');
  expect((await walker.send(formTo(asked.text, '/in'), three)).status).toBe(200);
  expect(room.house.secondKeys.get(wren)).toBe('leaf boat key');
});

test('A pupil may pick three on a page of their own; nobody else has that page', async () => {
  await walker.signIn('WREN-2345-67');
  expect((await walker.get('/page')).text).toContain('href="/pictures"');
  const page = await walker.get('/pictures');
  expect(page.text).toContain('Three pictures keep your page yours.');
  const done = await walker.send(formTo(page.text, '/pictures'), three);
  expect(done.text).toContain('Your three pictures are kept.');
  expect(room.house.secondKeys.get(wren)).toBe('leaf boat key');
  expect((await walker.post('/pictures', three)).status).toBe(403);
  const tutor = openWalker(room.url);
  await tutor.signIn('PLOVER-LINK');
  expect((await tutor.get('/pictures')).status).toBe(403);
  const { _token = '' } = formTo((await tutor.get('/page')).text, '/out').fields;
  expect((await tutor.post('/pictures', { ...three, _token })).status).toBe(403);
  expect((await openWalker(room.url).get('/pictures')).status).toBe(403);
});

describe('The drawings', () => {
  test('are served as pictures of our own, each with its word to read and to hear', async () => {
    room.house.secondKeys.set(wren, 'leaf boat key');
    const { text } = await walker.signIn('WREN-2345-67');
    expect(text.match(/<fieldset/gu)).toHaveLength(3);
    for (const { name } of doorPictures) {
      const src = new RegExp(
        `src="(/assets/picture-${name}\\.svg\\?v=[^"]+)" alt=""[^>]*/?><span>${name}</span>`,
        'u',
      ).exec(text);
      expect([name, src !== null]).toEqual([name, true]);
      const { headers, text: svg } = await walker.get(src?.[1] ?? '');
      expect(headers.get('content-type')).toBe('image/svg+xml');
      expect(svg).not.toMatch(/<script|style=|href=/u);
    }
  });

  test('differ from each other, a dozen of them', () => {
    expect(new Set(doorPictures.map(({ svg }) => svg)).size).toBe(12);
    expect(new Set(doorPictures.map(({ name }) => name)).size).toBe(12);
  });
});

test('An adult is asked for a passphrase that the browser hides, and no page shows it again', async () => {
  room.house.secondKeys.set(plover, 'four reeds by the water');
  const asked = await walker.signIn('PLOVER-LINK');
  expect(asked.text).toMatch(/<input type="password"[^>]*autocomplete="current-password"/u);
  const wrong = await walker.send(formTo(asked.text, '/in'), { passphrase: 'four reeds by the river' });
  expect(wrong.status).toBe(422);
  expect(wrong.text).not.toContain('river');
  await walker.send(formTo(asked.text, '/in'), { passphrase: 'four reeds by the water' });
  expect((await walker.get('/waiting')).status).toBe(200);
});

describe('The sheet of slips', () => {
  test('says before it is made what it ends, and is shown this once', async () => {
    await walker.signIn('PLOVER-LINK');
    const page = await walker.get('/slips');
    expect(page.text).toContain('the old ones stop working at once');
    const sheet = await walker.send(formTo(page.text, '/command'));
    expect(room.house.commands).toMatchObject([
      { name: 'roster', action: 'sheet', options: { group: 'group-1' } },
    ]);
    expect(sheet.text.match(/class="message to-person slip"/gu)).toHaveLength(6);
    expect(sheet.text).toContain('data-print="Print this page"');
    expect((await walker.get('/slips')).text).not.toContain('ABCD-EFGH-23');
  });

  test.each(['WREN-2345-67', 'TERN-LINK', 'KNOT-LINK'])('%s has no such page', async (code) => {
    await walker.signIn(code);
    expect((await walker.get('/slips')).status).toBe(403);
  });
});

describe('“Tell a grown-up”', () => {
  test.each([
    '/',
    '/talk',
    '/for-you',
    '/words',
    '/where',
    '/page',
    '/pictures',
    '/step/question',
    '/nowhere',
    '/waiting',
    '/commands/roster/add',
  ])('stands on %s for a pupil', async (path) => {
    await walker.signIn('WREN-2345-67');
    expect((await walker.get(path)).text).toContain('action="/move/tell-grown-up"');
  });

  test('stands on pages of trouble too', async () => {
    await walker.signIn('WREN-2345-67');
    const { _token = '' } = formTo((await walker.get('/')).text, '/out').fields;
    const pages = [
      await walker.post('/move/nothing', { _token }),
      await walker.post('/look/nothing', { _token }),
      await walker.post('/nowhere', { _token }),
      await walker.post('/page', { _token: 'x' }),
      await walker.post('/pictures', { _token }),
      await walker.post('/move/quiet-pass', { _token, text: 'x'.repeat(320 * 1024) }),
    ];
    for (const page of pages) {
      expect(page.status).toBeGreaterThanOrEqual(400);
      expect([page.status, page.text.includes('action="/move/tell-grown-up"')]).toEqual([page.status, true]);
    }
  });
});
