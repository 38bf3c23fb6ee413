/** Forms that are not ours, bodies that are too large, files that are no text, clients that are too slow. */
import { connect } from 'node:net';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { contentPolicy } from '../../../src/channels/room/http/headers.js';
import { textOfUpload } from '../../../src/channels/room/http/read-form.js';
import { ownPath } from '../../../src/channels/room/paths.js';
import { openRoom, type OpenRoom } from '../../support/open-room.js';
import { formTo, openWalker, type Walker } from '../../support/walker.js';

let room: OpenRoom;
let walker: Walker;
beforeEach(async () => {
  room = await openRoom();
  walker = openWalker(room.url);
});
afterEach(() => room.stop());

/** Sends bytes as they are and answers all that comes back before the line is closed. */
function raw(lines: readonly string[], patience = 15_000): Promise<string> {
  const { hostname, port } = new URL(room.url);
  return new Promise((done) => {
    let got = '';
    const socket = connect(Number(port), hostname, () => socket.write(lines.join('\r\n')));
    socket.setTimeout(patience, () => socket.destroy());
    socket.on('data', (data) => (got += data.toString()));
    socket.on('error', () => undefined);
    socket.on('close', () => done(got));
  });
}

describe('A form that another site sends (CSRF)', () => {
  test.each([
    ['the browser says so', { 'sec-fetch-site': 'cross-site' }],
    ['it comes from a neighbour of our host', { 'sec-fetch-site': 'same-site' }],
    ['an old browser names the other site', { origin: 'http://elsewhere.invalid' }],
    ['the origin is a text and no address', { origin: 'elsewhere' }],
  ])('is refused when %s, even with a token', async (_, headers) => {
    await walker.signIn('WREN-2345-67');
    const page = await walker.get('/step/question');
    const form = formTo(page.text, '/move/send-draft');
    const body = new URLSearchParams({ ...form.fields, text: 'why?' });
    const cookie = [...walker.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const answer = await fetch(room.url + form.action, {
      method: 'POST',
      body,
      headers: { cookie, ...headers },
    });
    expect(answer.status).toBe(403);
    expect(room.house.updates).toEqual([]);
  });

  test.each(['', 'x'.repeat(43), 'é'])(
    'is refused with the token “%s”, and nothing typed is lost',
    async (_token) => {
      await walker.signIn('WREN-2345-67');
      const page = await walker.get('/step/question');
      const again = await walker.send(formTo(page.text, '/move/send-draft'), { text: 'my words', _token });
      expect(again.status).toBe(403);
      expect(again.text).toContain('my words');
      expect(room.house.updates).toEqual([]);
    },
  );

  test('is refused with the token of somebody else', async () => {
    const other = openWalker(room.url);
    await other.signIn('FNCH-2345-67');
    const theirs =
      formTo((await other.get('/step/question')).text, '/move/send-draft').fields['_token'] ?? '';
    await walker.signIn('WREN-2345-67');
    const form = formTo((await walker.get('/step/question')).text, '/move/send-draft');
    expect(theirs).not.toBe(form.fields['_token']);
    expect((await walker.send(form, { text: 'x', _token: theirs })).status).toBe(403);
  });

  test.each(['/out', '/page', '/in', '/command', '/look/preview-text'])(
    'needs a token at %s too',
    async (path) => {
      await walker.signIn('PLOVER-LINK');
      const sessions = room.house.sessions.size;
      expect((await walker.post(path, { code: 'WREN-2345-67', line: '/help', text: 'x' })).status).toBe(403);
      expect(room.house.sessions.size).toBe(sessions);
      expect(room.house.commands).toEqual([]);
    },
  );

  test('from an old browser that hides where it comes from is taken with its token', async () => {
    await walker.signIn('WREN-2345-67');
    const form = formTo((await walker.get('/step/question')).text, '/move/send-draft');
    const cookie = [...walker.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const body = new URLSearchParams({ ...form.fields, text: 'why?' });
    const answer = await fetch(room.url + form.action, {
      method: 'POST',
      body,
      redirect: 'manual',
      headers: { cookie, origin: 'null' },
    });
    expect(answer.status).toBe(303);
  });
});

describe('One’s update id', () => {
  test('is never somebody else’s', async () => {
    await walker.signIn('WREN-2345-67');
    const form = formTo((await walker.get('/step/question')).text, '/move/send-draft');
    await walker.send(form, { text: 'the secret thought of Wren' });
    const other = openWalker(room.url);
    await other.signIn('FNCH-2345-67');
    const theirs = formTo((await other.get('/step/question')).text, '/move/send-draft');
    const told = await other.send(theirs, { text: 'mine', _update: form.fields['_update'] ?? '' });
    expect(told.text).not.toContain('the secret thought of Wren');
    expect(told.text).toContain('mine');
  });

  test('an answer on its way is shown to its own session only', async () => {
    await walker.signIn('WREN-2345-67');
    const form = formTo((await walker.get('/step/question')).text, '/move/send-draft');
    const sent = await walker.post(form.action, { ...form.fields, text: 'the secret thought of Wren' });
    const other = openWalker(room.url);
    await other.signIn('FNCH-2345-67');
    expect((await other.get(sent.location ?? '')).text).not.toContain('the secret thought of Wren');
  });
});

describe('What a role may not do', () => {
  test.each([
    ['WREN-2345-67', '/move/release', { posts: 'p1' }],
    ['WREN-2345-67', '/move/erase-person', { person: 'finch' }],
    ['TERN-LINK', '/move/erase-person', { person: 'finch' }],
    ['HERON-LINK', '/move/acknowledge-alarm', { alarm: 'a1' }],
    ['TERN-LINK', '/move/release', { posts: 'p1' }],
    ['WREN-2345-67', '/move/time-passed', {}],
  ])('%s cannot post to %s', async (code, path, fields) => {
    const page = await walker.signIn(code);
    const own = await walker.get(page.location ?? '/page');
    const { _token = '' } = formTo(own.text, '/out').fields;
    expect((await walker.post(path, { ...fields, _token, _back: '/page' })).status).toBe(403);
    expect(room.house.updates).toEqual([]);
  });

  test.each([
    ['WREN-2345-67', '/waiting'],
    ['WREN-2345-67', '/alarm-words?alarm=a1'],
    ['WREN-2345-67', '/commands'],
    ['PLOVER-LINK', '/alarm-words?alarm=a1'],
    ['HERON-LINK', '/alarms'],
    ['HERON-LINK', '/talk'],
    ['HERON-LINK', '/waiting'],
    ['TERN-LINK', '/digest'],
    ['TERN-LINK', '/talk'],
  ])('%s cannot see %s', async (code, path) => {
    await walker.signIn(code);
    const page = await walker.get(path);
    expect(page.status).toBe(403);
    expect(page.text).toContain('for somebody else');
  });

  test('the head of the page leads to nothing that is refused', async () => {
    for (const code of ['WREN-2345-67', 'PLOVER-LINK', 'GANNET-LINK', 'HERON-LINK', 'TERN-LINK']) {
      const one = openWalker(room.url);
      await one.signIn(code);
      const page = await one.get('/page');
      const menu = /<ul class="menu">([\s\S]*?)<\/ul>/u.exec(page.text)?.[1] ?? '';
      const paths = [...menu.matchAll(/href="([^"]+)"/gu)].map(([, path = '']) => path);
      expect(paths.length).toBeGreaterThan(1);
      for (const path of paths) expect([path, (await one.get(path)).status]).toEqual([path, 200]);
    }
  });
});

describe('Ways out of the room', () => {
  test.each([
    'https://elsewhere.invalid/',
    '//elsewhere.invalid/',
    '/\\elsewhere.invalid/',
    '\\\\elsewhere.invalid',
    'javascript:alert(1)',
    '/\t/elsewhere.invalid/',
    '/%0d%0aLocation:%20https://elsewhere.invalid',
  ])('going back to %j stays with us (open redirect)', async (_back) => {
    await walker.signIn('PLOVER-LINK');
    const form = formTo((await walker.get('/waiting')).text, '/move/release');
    const answer = await walker.post(form.action, { ...form.fields, _back });
    expect(answer.status).toBe(303);
    expect(answer.location).toMatch(/^\/(?![/\\])/u);
    const to = new URL(answer.location ?? '', 'http://room.invalid');
    expect(to.host).toBe('room.invalid');
    expect(ownPath(_back).host).toBe('room.invalid');
  });

  test.each([
    '/assets/../room.ts',
    '/assets/..%2f..%2fwords.ts',
    '/assets/%2e%2e/%2e%2e/package.json',
    '/assets/room.css%00.ttf',
    '/..%2f..%2fetc/passwd',
    '/assets/',
    '/.env',
    '/assets/__proto__',
  ])('%s leads nowhere (path traversal)', async (path) => {
    const answer = await raw([`GET ${path} HTTP/1.1`, 'Host: x', 'Connection: close', '', '']);
    expect(answer).toMatch(/^HTTP\/1\.1 (404|403|400)/u);
    expect(answer).not.toMatch(/"name"|root:|export /u);
  });

  test.each(['PUT', 'DELETE', 'OPTIONS', 'PATCH'])('%s is no way to ask', async (method) => {
    expect((await fetch(`${room.url}/`, { method })).status).toBe(405);
  });
});

describe('Headers', () => {
  test.each(['/', '/in/WREN-2345-67', '/nowhere', '/assets/room.css', '/assets/none', '/page'])(
    'guard %s: no inline script (CSP), no frames (clickjacking), no guessing of types',
    async (path) => {
      const { headers } = await walker.get(path);
      expect(headers.get('content-security-policy')).toBe(contentPolicy);
      expect(contentPolicy).not.toMatch(/unsafe|\*|data:|https?:/u);
      expect(headers.get('x-frame-options')).toBe('DENY');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('permissions-policy')).toContain('microphone=()');
      expect(headers.get('access-control-allow-origin')).toBeNull();
    },
  );

  test('pages are kept by nobody; what never changes is', async () => {
    await walker.signIn('WREN-2345-67');
    for (const path of ['/', '/talk', '/step/question', '/page']) {
      expect((await walker.get(path)).headers.get('cache-control')).toBe('no-store');
    }
    const style = /href="(\/assets\/room\.css\?v=[^"]+)"/u.exec((await walker.get('/')).text)?.[1] ?? '';
    expect((await walker.get(style)).headers.get('cache-control')).toContain('immutable');
    expect((await walker.get('/assets/room.css?v=other')).headers.get('cache-control')).toBe('no-cache');
  });

  test('nothing of a page stands inline', async () => {
    await walker.signIn('WREN-2345-67');
    for (const path of ['/', '/talk', '/step/clarify', '/page']) {
      const { text } = await walker.get(path);
      expect(text).not.toMatch(
        /<style|<script(?![^>]* src="\/assets\/live\.js)|\son\w+=|\sstyle=|javascript:/iu,
      );
    }
  });
});

describe('What is sent', () => {
  test('is at most 300 KiB, also when its length is not told', async () => {
    await walker.signIn('PLOVER-LINK');
    const form = formTo((await walker.get('/passages')).text, '/look/preview-text');
    const large = await walker.post(form.action, { ...form.fields, text: 'x'.repeat(320 * 1024) });
    expect(large.status).toBe(413);
    expect(large.text).toContain('too much at once');
    const cookie = [...walker.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const pieces = new ReadableStream<Uint8Array>({
      start(out) {
        for (let n = 0; n < 40; n += 1) out.enqueue(new Uint8Array(10 * 1024).fill(97));
        out.close();
      },
    });
    const streamed = await fetch(room.url + form.action, {
      method: 'POST',
      body: pieces,
      duplex: 'half',
      headers: { cookie, 'content-type': 'application/x-www-form-urlencoded' },
    }).then(
      ({ status }) => status,
      () => 413,
    );
    expect(streamed).toBe(413);
    expect((await walker.get('/passages')).status).toBe(200);
  });

  test('a file is taken by what is in it, whatever it is called', async () => {
    await walker.signIn('PLOVER-LINK');
    const form = formTo((await walker.get('/passages')).text, '/move/add-passage');
    const send = async (bytes: Uint8Array<ArrayBuffer>, name: string, type: string) => {
      const body = new FormData();
      for (const [key, value] of Object.entries(form.fields)) body.append(key, value);
      body.append('_update', crypto.randomUUID());
      body.append('text', new Blob([bytes], { type }), name);
      return walker.post(form.action, body);
    };
    const text = new TextEncoder().encode('\ufeff# The crab\r\n\r\nA crab waits.');
    expect((await send(text, 'picture.png', 'image/png')).status).toBe(303);
    expect(room.house.updates[0]?.fields['text']).toBe('# The crab\r\n\r\nA crab waits.');
    const picture = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]);
    const refused = await send(picture, 'passage.txt', 'text/plain');
    expect(refused.status).toBe(422);
    expect(refused.text).toContain('expected plain text in UTF-8');
    expect(room.house.updates).toHaveLength(1);
  });

  test.each([
    ['half a letter', [0xc3]],
    ['a NUL', [97, 0, 98]],
    ['UTF-16', [0xff, 0xfe, 97, 0]],
    ['an escape', [27, 91, 50, 74]],
  ])('a file with %s is no text', (_, bytes) => {
    expect(() => textOfUpload(new Uint8Array(bytes))).toThrow('expected plain text');
  });

  test.each([
    ['multipart/form-data; boundary=x', '--x\r\nnonsense'],
    ['multipart/form-data', 'no boundary'],
    ['application/json', '{"_token":1}'],
    ['text/plain', '\u0000\u0000'],
  ])('nonsense as %s is refused and harms nothing', async (type, body) => {
    await walker.signIn('WREN-2345-67');
    const cookie = [...walker.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const answer = await fetch(`${room.url}/move/send-draft`, {
      method: 'POST',
      body,
      headers: { cookie, 'content-type': type, 'sec-fetch-site': 'same-origin' },
    });
    expect([403, 422]).toContain(answer.status);
    expect((await walker.get('/')).status).toBe(200);
  });

  test('names that mean something to the language mean nothing here', async () => {
    await walker.signIn('WREN-2345-67');
    const form = formTo((await walker.get('/step/question')).text, '/move/send-draft');
    await walker.send(form, { text: 'why?', __proto__: 'x', constructor: 'x', toString: 'x', role: 'tutor' });
    expect(Object.keys(room.house.updates[0]?.fields ?? {}).sort()).toEqual(['do', 'stop', 'text']);
  });

  test('headers are at most 16 KiB', async () => {
    const answer = await raw(['GET / HTTP/1.1', 'Host: x', `X-Long: ${'x'.repeat(20_000)}`, '', '']);
    expect(answer).toMatch(/^HTTP\/1\.1 431/u);
  });

  test.each([
    ['the headers', ['GET / HTTP/1.1', 'Host: x', 'X-Slow: ']],
    [
      'the body',
      [
        'POST /in HTTP/1.1',
        'Host: x',
        'Content-Type: application/x-www-form-urlencoded',
        'Content-Length: 1000',
        '',
        'code=',
      ],
    ],
  ])('a slow client that never finishes %s is let go, and others are served meanwhile', async (_, lines) => {
    await room.stop();
    room = await openRoom({ patience: { headers: 300, request: 600, looks: 100 } });
    // The line is closed by the room: the client alone would wait much longer.
    const slow = raw(lines, 50_000);
    expect((await openWalker(room.url).get('/')).status).toBe(200);
    expect(await slow).toMatch(/^HTTP\/1\.1 408|^$/u);
  });

  test('a huge file is refused by its size before it is read as text', async () => {
    await walker.signIn('PLOVER-LINK');
    const form = formTo((await walker.get('/passages')).text, '/move/add-passage');
    const body = new FormData();
    for (const [key, value] of Object.entries(form.fields)) body.append(key, value);
    body.append('text', new Blob([new Uint8Array(2 * 1024 * 1024).fill(97)]), 'long.txt');
    const answer = await walker.post(form.action, body).then(
      ({ status }) => status,
      () => 413,
    );
    expect(answer).toBe(413);
    expect(room.house.updates).toEqual([]);
    expect((await walker.get('/passages')).status).toBe(200);
  });
});
