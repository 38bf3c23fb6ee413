/** Coming in, staying in and going out, as somebody tries them who means harm. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { guesserOf } from '../../../src/channels/room/http/address.js';
import { openRoom, type OpenRoom } from '../../support/open-room.js';
import { formTo, openWalker } from '../../support/walker.js';

let room: OpenRoom;
beforeEach(async () => {
  room = await openRoom();
});
afterEach(() => room.stop());

describe('The session cookie', () => {
  test('is out of reach of script, for this host, and lax, so that the link of a slip works', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const line = walker.setCookies.find((one) => one.startsWith('session='));
    expect(line).toMatch(/; Path=\//u);
    expect(line).toMatch(/; HttpOnly/u);
    expect(line).toMatch(/; SameSite=Lax/u);
    expect(line).not.toMatch(/Secure|Domain|Max-Age/u);
  });

  test('is for https alone, and bound to the host by its name, where the school has https', async () => {
    const secure = await openRoom({ secureCookies: true });
    const walker = openWalker(secure.url);
    await walker.signIn('WREN-2345-67');
    const line = walker.setCookies.find((one) => one.startsWith('__Host-session='));
    expect(line).toMatch(/; Secure/u);
    expect(line).not.toMatch(/Domain/u);
    await secure.stop();
  });

  test('counts for nothing when its signature is not ours', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const value = walker.cookies.get('session') ?? '';
    walker.cookies.set(
      'session',
      value.replace(/^./u, (first) => (first === 'a' ? 'b' : 'a')),
    );
    expect((await walker.get('/words')).status).toBe(403);
    walker.cookies.set('session', [...room.house.sessions.keys()][0] ?? '');
    expect((await walker.get('/words')).status).toBe(403);
  });

  test('is renewed at sign-in, so that a planted session is worth nothing (session fixation)', async () => {
    const attacker = openWalker(room.url);
    await attacker.signIn('FNCH-2345-67');
    const planted = attacker.cookies.get('session') ?? '';
    const victim = openWalker(room.url);
    victim.cookies.set('session', planted);
    const door = await victim.get('/in/WREN-2345-67');
    await victim.send(formTo(door.text, '/in'));
    expect(victim.cookies.get('session')).not.toBe(planted);
    expect(room.house.sessions.size).toBe(1);
    expect((await attacker.get('/words')).status).toBe(403);
  });

  test('a planted visitor id does not outlive the sign-in either', async () => {
    const attacker = openWalker(room.url);
    const door = await attacker.get('/');
    const token = formTo(door.text, '/in').fields['_token'] ?? '';
    const victim = openWalker(room.url);
    victim.cookies.set('visitor', attacker.cookies.get('visitor') ?? '');
    await victim.signIn('WREN-2345-67');
    const sent = await victim.post('/move/quiet-pass', { _token: token, _back: '/' });
    expect(sent.status).toBe(403);
    expect(room.house.updates).toEqual([]);
  });

  test('ends with the session: nothing opens after signing out', async () => {
    const walker = openWalker(room.url);
    const page = await walker.signIn('WREN-2345-67');
    const cookie = walker.cookies.get('session') ?? '';
    const out = await walker.post('/out', formTo(page.text, '/out').fields);
    expect(out.headers.get('clear-site-data')).toContain('"storage"');
    expect(walker.cookies.has('session')).toBe(false);
    expect(room.house.sessions.size).toBe(0);
    walker.cookies.set('session', cookie);
    expect((await walker.get('/words')).status).toBe(403);
  });
});

describe('On a device that several people use', () => {
  test('a session ends after 30 minutes without a press', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    room.house.pass(29 * 60_000);
    expect((await walker.get('/words')).status).toBe(200);
    room.house.pass(29 * 60_000);
    expect((await walker.get('/words')).status).toBe(200);
    room.house.pass(31 * 60_000);
    const out = await walker.get('/');
    expect(out.text).toContain('You were away for a while');
    expect(room.house.sessions.size).toBe(0);
  });

  test('looking for news by script is no press', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    for (let minutes = 0; minutes < 30; minutes += 10) {
      room.house.pass(10 * 60_000);
      await walker.get('/', { 'x-room-news': 'yes' });
    }
    room.house.pass(60_000);
    expect((await walker.get('/words')).status).toBe(403);
  });

  test('who uses a device alone stays signed in', async () => {
    const walker = openWalker(room.url);
    const page = await walker.get('/');
    await walker.send(formTo(page.text, '/in'), { code: 'WREN-2345-67', own: 'yes' });
    expect(walker.setCookies.find((one) => one.startsWith('session='))).toMatch(/Max-Age=\d{7,}/u);
    room.house.pass(40 * 24 * 3600_000);
    expect((await walker.get('/words')).status).toBe(200);
  });
});

describe('Guesses', () => {
  test('are refused after ten, and a right code too then; the code stands there to be mended', async () => {
    const walker = openWalker(room.url);
    for (let guess = 0; guess < 10; guess += 1) {
      const again = await walker.signIn(`NONE-${guess}`);
      expect(again.status).toBe(422);
      expect(again.text).toContain(`value="NONE-${guess}"`);
    }
    expect((await walker.signIn('WREN-2345-67')).text).toContain('Too many tries');
    expect(room.house.sessions.size).toBe(0);
  });

  test('are counted by the peer’s address, whatever the client says of itself', async () => {
    const walker = openWalker(room.url);
    const page = await walker.get('/');
    const { fields } = formTo(page.text, '/in');
    await walker.post('/in', { ...fields, code: 'NONE' }, { 'x-forwarded-for': '203.0.113.9' });
    expect(room.house.guessers).toEqual(['127.0.0.1']);
  });

  test('are counted by what the school’s proxy appended, not by what the client put before', async () => {
    const behind = await openRoom({ trustProxy: true });
    const walker = openWalker(behind.url);
    const page = await walker.get('/');
    const { fields } = formTo(page.text, '/in');
    await walker.post('/in', { ...fields, code: 'NONE' }, { 'x-forwarded-for': '198.51.100.1, 203.0.113.9' });
    expect(behind.house.guessers).toEqual(['203.0.113.9']);
    await behind.stop();
  });

  // RFC 4291 section 2.5: the first 64 bits name the network.
  test.each([
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'],
    ['2001:db8::1', '2001:db8:0:0::/64'],
    ['::ffff:192.0.2.1', '192.0.2.1'],
    ['192.0.2.1', '192.0.2.1'],
  ])('the address %s counts as %s', (address, counted) => {
    expect(guesserOf(address, undefined, false)).toBe(counted);
  });

  test('leave no address and no code in the log', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('NONE-2345-67');
    await walker.signIn('WREN-2345-67');
    expect(room.logged()).not.toMatch(/127\.0\.0\.1|NONE|WREN/u);
  });
});

describe('The link of a slip', () => {
  test('opens nothing by being looked at, with or without a real secret', async () => {
    const walker = openWalker(room.url);
    const real = await walker.get('/in/WREN-2345-67');
    const false_ = await walker.get('/in/XXXX-2345-67');
    expect([real.status, false_.status]).toEqual([200, 200]);
    expect(room.house.guessers).toEqual([]);
    expect(real.headers.get('referrer-policy')).toBe('no-referrer');
    expect(real.headers.get('cache-control')).toBe('no-store');
  });

  test.each(['/in/%3Cscript%3E', '/in/a', `/in/${'a'.repeat(101)}`, '/in/..%2Fwords'])(
    '%s is no link of ours',
    async (path) => {
      expect((await openWalker(room.url).get(path)).status).toBe(404);
    },
  );
});

describe('Somebody outside', () => {
  test.each(['/words', '/waiting', '/alarm-words?alarm=a1', '/commands', '/nowhere', '/digest'])(
    'sees only the door at %s, and not whether there is such a page',
    async (path) => {
      const answer = await openWalker(room.url).get(path);
      expect(answer.status).toBe(403);
      expect(answer.text).toContain('The code on your slip');
    },
  );

  test.each(['/move/send-draft', '/look/preview-text', '/command'])(
    'can post nothing to %s',
    async (path) => {
      const walker = openWalker(room.url);
      const page = await walker.get('/');
      const { _token = '' } = formTo(page.text, '/in').fields;
      const answer = await walker.post(path, { _token, text: 'x', do: 'question', line: '/help' });
      expect(answer.status).toBe(403);
      expect(room.house.updates).toEqual([]);
      expect(room.house.commands).toEqual([]);
    },
  );

  test('is told that nobody watches day and night', async () => {
    expect((await openWalker(room.url).get('/')).text).toContain('Nobody watches this page day and night');
  });
});
