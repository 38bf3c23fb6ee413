/** Every address of the room, walked as each role and as nobody; an address that is new and not in these tables fails the first test. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slashCommands } from '../../../commands/all.js';
import { lookShapes, mayLook, type LookName } from '../../../shared/looks.js';
import { mayMove, moveShapes, type MoveName } from '../../../shared/moves.js';
import { roles, type Role } from '../../../shared/roles.js';
import { buildApp } from '../../../src/channels/room/app.js';
import { loadAssets } from '../../../src/channels/room/assets.js';
import { lookPaths } from '../../../src/channels/room/paths.js';
import { openStreams } from '../../../src/channels/room/streams.js';
import { doorPictures } from '../../../src/pictures/door-pictures.js';
import { openFakeHouse } from '../../support/fake-house.js';
import { openRoom, roomKey, type OpenRoom } from '../../support/open-room.js';
import { formTo, openWalker, type Walker } from '../../support/walker.js';

type Visitor = Role | 'nobody';
const visitors: readonly Visitor[] = [...roles, 'nobody'];
const codes: Readonly<Record<Role, string>> = {
  pupil: 'WREN-2345-67',
  tutor: 'PLOVER-LINK',
  teacher: 'GANNET-LINK',
  administrator: 'HERON-LINK',
  'safeguarding lead': 'TERN-LINK',
  'safeguarding deputy': 'KNOT-LINK',
};

const running: readonly Visitor[] = ['tutor', 'teacher', 'administrator'];
const staff: readonly Visitor[] = roles.filter((role) => role !== 'pupil');
const talkers: readonly Visitor[] = ['pupil', 'tutor', 'teacher'];

/** Addresses that are asked for, and who gets a page there; everybody else is told that it is for somebody else, or to come in. */
const pages: Readonly<
  Record<string, { readonly at: string; readonly who: readonly Visitor[] | 'everybody' }>
> = {
  'GET /assets/:file': { at: '/assets/room.css', who: 'everybody' },
  'GET /favicon.ico': { at: '/favicon.ico', who: 'everybody' },
  'GET /in': { at: '/in', who: 'everybody' },
  'GET /in/:secret': { at: '/in/WREN-2345-67', who: 'everybody' },
  'GET /here': { at: '/here', who: 'everybody' },
  'GET /page': { at: '/page', who: 'everybody' },
  'GET /what-is-kept': { at: '/what-is-kept', who: 'everybody' },
  'GET /pictures': { at: '/pictures', who: ['pupil'] },
  'GET /slips': { at: '/slips', who: running },
  'GET /*': { at: '/talk', who: talkers },
};

/** Addresses that are posted to; each is walked below. */
const posts: readonly string[] = [
  'POST /in',
  'POST /in/grown-up',
  'POST /out',
  'POST /page',
  'POST /pictures',
  'POST /move/:name',
  'POST /look/:name',
  'POST /command',
];

/** The live line never ends by itself; it has tests of its own. */
const walkedElsewhere: readonly string[] = ['GET /live'];

const sampleOf: Readonly<Partial<Record<LookName, string>>> = { step: '/step/question' };

describe('The addresses of the room', () => {
  let room: OpenRoom;
  const walkers = new Map<Visitor, Walker>();
  const tokens = new Map<Visitor, string>();
  beforeAll(async () => {
    room = await openRoom();
    for (const visitor of visitors) {
      const walker = openWalker(room.url);
      if (visitor !== 'nobody') await walker.signIn(codes[visitor]);
      walkers.set(visitor, walker);
      const door = await walker.get(visitor === 'nobody' ? '/' : '/page');
      tokens.set(visitor, formTo(door.text, visitor === 'nobody' ? '/in' : '/out').fields['_token'] ?? '');
    }
  });
  afterAll(() => room.stop());

  const get = async (visitor: Visitor, path: string): Promise<number> =>
    (await walkers.get(visitor)!.get(path)).status;
  const post = async (visitor: Visitor, path: string, fields: Record<string, string> = {}): Promise<number> =>
    (await walkers.get(visitor)!.post(path, { _token: tokens.get(visitor) ?? '', _back: '/page', ...fields }))
      .status;

  test('are all in these tables', () => {
    const house = openFakeHouse();
    const app = buildApp(
      house,
      {
        host: '',
        port: 0,
        key: roomKey,
        secureCookies: false,
        trustProxy: false,
        log: { debug: () => undefined, warn: () => undefined, error: () => undefined },
        slashCommands,
        readCommand: () => ({ name: '', action: '', options: {} }),
        pictures: doorPictures,
      },
      loadAssets(),
      async () => [],
      openStreams(house, async () => []),
    );
    const there = app.routes
      .filter(({ method }) => method !== 'ALL')
      .map(({ method, path }) => `${method} ${path}`);
    expect([...new Set(there)].sort()).toEqual([...Object.keys(pages), ...posts, ...walkedElsewhere].sort());
  });

  test('behind “/*” are the looks’ pages and three more, all walked below', () => {
    const source = readFileSync('src/channels/room/pages/find-page.tsx', 'utf8');
    const named = [...source.matchAll(/pathname === '([^']+)'/gu)].map(([, path]) => path);
    expect(named.sort()).toEqual(['/', '/commands', '/talk']);
    expect(source.match(/\.exec\(url\.pathname\)/gu)).toHaveLength(1);
  });

  describe.each(visitors)('for %s', (visitor) => {
    test.each(Object.entries(pages))('%s', async (_, { at, who }) => {
      const status = await get(visitor, at);
      if (who === 'everybody' || who.includes(visitor)) expect(status).toBeLessThan(400);
      else expect(status).toBe(403);
    });

    test.each(
      (Object.keys(lookPaths) as LookName[]).filter((look) => look !== 'turn' && lookPaths[look] !== null),
    )('the page of the look %s', async (look) => {
      const status = await get(visitor, sampleOf[look] ?? lookPaths[look] ?? '/');
      const may = visitor !== 'nobody' && mayLook[look].includes(visitor);
      expect(status).toBe(may ? 200 : 403);
    });

    test('the first page, the commands and each command’s form', async () => {
      expect(await get(visitor, '/')).toBe(visitor === 'pupil' || visitor === 'nobody' ? 200 : 303);
      expect(await get(visitor, '/commands')).toBe(staff.includes(visitor) ? 200 : 403);
      for (const { name, actions } of slashCommands)
        for (const { name: action, who } of actions) {
          const path = `/commands/${name}/${action}`;
          const may = visitor !== 'nobody' && who.includes(visitor);
          expect([path, await get(visitor, path)]).toEqual([
            path,
            may ? 200 : visitor === 'nobody' ? 403 : 404,
          ]);
        }
    });

    test.each(Object.keys(moveShapes) as MoveName[])('the form of the move %s', async (move) => {
      const before = room.house.updates.length;
      const status = await post(visitor, `/move/${move}`);
      const may = visitor !== 'nobody' && mayMove[move].includes(visitor);
      if (may) expect([303, 422]).toContain(status);
      else expect([status, room.house.updates.length]).toEqual([403, before]);
    });

    test.each(Object.keys(lookShapes) as LookName[])('the form of the look %s', async (look) => {
      const may = visitor !== 'nobody' && mayLook[look].includes(visitor);
      expect(await post(visitor, `/look/${look}`)).toBe(may ? 303 : 403);
    });

    test('the forms of pictures, of commands, of the door', async () => {
      const three = { first: 'leaf', second: 'boat', third: 'key' };
      expect(await post(visitor, '/pictures', three)).toBe(visitor === 'pupil' ? 303 : 403);
      room.house.secondKeys.clear();
      const before = room.house.commands.length;
      // Who may do which command is the house's to say; nobody outside gets as far.
      expect(await post(visitor, '/command', { line: '/help show' })).toBe(visitor === 'nobody' ? 403 : 303);
      expect(room.house.commands.length - before).toBe(visitor === 'nobody' ? 0 : 1);
      expect(await post(visitor, '/page', { size: 'large' })).toBe(303);
      expect(await post(visitor, '/in', { code: 'NONE' })).toBe(422);
      expect(await post(visitor, '/in/grown-up', { code: 'NONE' })).toBe(422);
      expect(await post(visitor, '/nowhere')).toBe(404);
    });
  });
});
