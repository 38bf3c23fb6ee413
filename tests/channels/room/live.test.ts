/** The live line: says only that something changed, and cleans up after itself. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { message, prose, talkTo } from '../../support/fake-class.js';
import { openRoom, type OpenRoom } from '../../support/open-room.js';
import { openWalker, type Walker } from '../../support/walker.js';

let room: OpenRoom;
let walker: Walker;
beforeEach(async () => {
  room = await openRoom({ live: { keepAlive: 60, gather: 20, each: 3, all: 5 } });
  walker = openWalker(room.url);
  await walker.signIn('WREN-2345-67');
});
afterEach(() => room.stop());

interface Line {
  readonly status: number;
  readonly type: string | null;
  /** All that came so far. */
  text(): string;
  ended(): boolean;
  close(): void;
}

async function openLine(from: Walker = walker): Promise<Line> {
  const stop = new AbortController();
  const cookie = [...from.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
  const answer = await fetch(`${room.url}/live`, { headers: { cookie }, signal: stop.signal });
  let got = '';
  let over = false;
  const read = async (): Promise<void> => {
    for await (const piece of answer.body ?? []) got += new TextDecoder().decode(piece as Uint8Array);
  };
  void read()
    .catch(() => undefined)
    .finally(() => (over = true));
  return {
    status: answer.status,
    type: answer.headers.get('content-type'),
    text: () => got,
    ended: () => over,
    close: () => stop.abort(),
  };
}

async function until(what: () => boolean): Promise<void> {
  const begun = Date.now();
  while (!what()) {
    if (Date.now() - begun > 10_000) throw new Error('waited too long');
    await new Promise((done) => setTimeout(done, 10));
  }
}

const say = (text: string): void => room.house.post(message(talkTo, text, [prose(text)]));

describe('The live line', () => {
  test('says that something changed and how far the feed is, and never what', async () => {
    const line = await openLine();
    expect(line.type).toContain('text/event-stream');
    await until(() => line.text().includes('data: 0'));
    say('a secret of the group');
    await until(() => line.text().includes('data: 1'));
    expect(line.text()).toMatch(/^retry: 2000\n\nevent: changed\ndata: 0\nid: 0\n\n/u);
    expect(line.text()).not.toContain('secret');
    line.close();
  });

  test('gathers many changes into one word', async () => {
    const line = await openLine();
    await until(() => line.text().includes('data: 0'));
    for (let n = 0; n < 20; n += 1) say(`words ${n}`);
    await until(() => line.text().includes('data: 20'));
    expect(line.text().match(/event: changed/gu)?.length).toBeLessThanOrEqual(4);
    line.close();
  });

  test('is kept alive by comments', async () => {
    const line = await openLine();
    await until(() => (line.text().match(/: here/gu)?.length ?? 0) >= 2);
    line.close();
  });

  test('is cleaned up when the page is closed', async () => {
    const line = await openLine();
    await until(() => room.house.listeners() === 1);
    line.close();
    await until(() => room.house.listeners() === 0);
  });

  test('serves many tabs, and lets go of the oldest when there are too many', async () => {
    const lines = [await openLine(), await openLine(), await openLine()];
    await until(() => room.house.listeners() === 3);
    lines.push(await openLine());
    await until(() => lines[0]?.ended() === true);
    await until(() => room.house.listeners() === 3);
    say('words');
    await until(() => lines.slice(1).every((line) => line.text().includes('data: 1')));
    lines.forEach((line) => line.close());
  });

  test('has a limit over all sessions', async () => {
    const others = await Promise.all(
      ['FNCH-2345-67', 'PLOVER-LINK', 'GANNET-LINK', 'PLOVER-LINK', 'GANNET-LINK', 'FNCH-2345-67'].map(
        async (code) => {
          const one = openWalker(room.url);
          await one.signIn(code);
          return openLine(one);
        },
      ),
    );
    await until(() => others.filter((line) => line.ended()).length === 1);
    expect(room.house.listeners()).toBe(5);
    others.forEach((line) => line.close());
  });

  test('ends with the session, at once by signing out, soon when the session was ended elsewhere', async () => {
    const line = await openLine();
    const other = openWalker(room.url);
    await other.signIn('FNCH-2345-67');
    const second = await openLine(other);
    await until(() => room.house.listeners() === 2);
    const page = await walker.get('/');
    const token = /action="\/out"[\s\S]*?name="_token" value="([^"]+)"/u.exec(page.text)?.[1] ?? '';
    await walker.post('/out', { _token: token });
    await until(() => line.ended());
    expect(second.ended()).toBe(false);
    room.house.sessions.clear();
    await until(() => second.ended());
    expect(room.house.listeners()).toBe(0);
  });

  test('tells a browser that is not signed in to stop asking', async () => {
    expect((await openLine(openWalker(room.url))).status).toBe(204);
  });

  test('is no press: a page left open does not keep anybody signed in', async () => {
    room.house.pass(20 * 60_000);
    const line = await openLine();
    line.close();
    room.house.pass(11 * 60_000);
    expect((await walker.get('/words')).status).toBe(403);
  });

  test('does not hold the room up when it stops', async () => {
    const line = await openLine();
    await until(() => room.house.listeners() === 1);
    const begun = Date.now();
    await room.stop();
    expect(Date.now() - begun).toBeLessThan(2500);
    await until(() => line.ended());
  });
});

describe('A room', () => {
  test('says what to do when its port is in use', async () => {
    const { port } = new URL(room.url);
    await expect(openRoom({ port: Number(port) })).rejects.toMatchObject({
      code: 'in use',
      message: `Cannot listen on 127.0.0.1:${port}, expected a free port that may be used, got EADDRINUSE`,
      remedy: 'Stop what is there, or set TURNSTONE_PORT.',
    });
  });

  test('lets another channel answer at its own path, and only there', async () => {
    const shared = await openRoom({
      guests: { '/slack/events': async (request) => new Response(`got ${await request.text()}`) },
    });
    const answer = await fetch(`${shared.url}/slack/events`, { method: 'POST', body: 'hello' });
    expect(await answer.text()).toBe('got hello');
    expect((await fetch(`${shared.url}/slack/other`, { method: 'POST', body: 'hello' })).status).toBe(404);
    await shared.stop();
  });
});
