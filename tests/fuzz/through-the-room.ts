import { slashCommands } from '../../commands/all.js';
import { lookShapes, type LookName } from '../../shared/looks.js';
import { moveShapes, type MoveName } from '../../shared/moves.js';
import { lookPaths } from '../../src/channels/room/paths.js';
import type { Chance } from './chance.js';
import { must, type Entrance, type Input } from './entrance.js';
import { fieldsFor } from './fields.js';
import { anyText, bareNames, mangled } from './texts.js';
import { inWorlds } from './through-the-house.js';
import type { Insider, World } from './world.js';

const paths = [
  ...Object.values(lookPaths).filter((path) => path !== null),
  ...['/step/question', '/step/clarify', '/step/answer', '/step/constructor', '/talk', '/commands', '/page'],
  ...[
    '/in',
    '/in/ABCD-EFGH-23',
    '/what-is-kept',
    '/assets/room.css',
    '/favicon.ico',
    '/here',
    '/nothing',
    '/staff',
  ],
];

async function mustBeAPage(
  world: World,
  shown: { readonly by: string; readonly method: string },
  response: Response,
): Promise<void> {
  must(response.status < 500, `status ${response.status}`);
  const text = await response.text();
  if (shown.by !== 'nobody') world.check(text);
  world.check(response.headers.get('location') ?? '');
  const empty =
    shown.method === 'HEAD' ||
    [204, 302, 303, 304, 405].includes(response.status) ||
    response.headers.get('content-type')?.startsWith('text/html') !== true;
  must(empty || /<h1>/u.test(text), `a page without a heading, status ${response.status}`);
}

function headersOf(chance: Chance, by: Insider | null): Record<string, string> {
  const headers: Record<string, string> = { host: '127.0.0.1' };
  if (by)
    headers['cookie'] = chance.oneIn(40)
      ? mangled(chance, by.cookie).replace(/[^\x20-\x7e]/gu, '')
      : by.cookie;
  if (chance.oneIn(10)) headers['x-room-news'] = 'yes';
  if (chance.oneIn(30)) headers['sec-fetch-site'] = chance.pick(['same-origin', 'cross-site', 'none']);
  return headers;
}

function queryOf(chance: Chance, ids: readonly string[]): string {
  const names = [
    'post',
    'passage',
    'group',
    'alarm',
    'to',
    'do',
    'said',
    'start',
    'out',
    'question',
    ...bareNames,
  ];
  const pairs = Array.from({ length: chance.int(4) }, (): [string, string] => [
    chance.pick(names),
    chance.oneIn(2) ? chance.pick(ids) : anyText(chance).slice(0, 300).toWellFormed(),
  ]);
  return pairs.length === 0 ? '' : `?${new URLSearchParams(pairs).toString()}`;
}

function aPage(chance: Chance, world: World, person: Insider, ids: readonly string[]): Input {
  const by = chance.oneIn(20) ? null : person;
  const base = chance.oneIn(10)
    ? `/${encodeURIComponent(anyText(chance).slice(0, 80).toWellFormed())}`
    : chance.pick(paths);
  const path = `${base}${queryOf(chance, ids)}`;
  const method = chance.oneIn(60) ? chance.pick(['HEAD', 'PUT', 'DELETE', 'OPTIONS']) : 'GET';
  const shown = { by: by?.name ?? 'nobody', method, path };
  return {
    shown,
    run: async () =>
      mustBeAPage(world, shown, await world.request(path, { method, headers: headersOf(chance, by) })),
  };
}

function commandFields(chance: Chance, ids: readonly string[]): Record<string, string> {
  const command = chance.pick(slashCommands);
  const action = chance.pick(command.actions);
  const options = action.options.map(({ name, choices }) => [
    name,
    choices ? chance.pick(choices) : chance.oneIn(2) ? chance.pick(ids) : anyText(chance),
  ]);
  return {
    ...(Object.fromEntries(options) as Record<string, string>),
    _command: command.name,
    _action: action.name,
  };
}

function aForm(chance: Chance, world: World, person: Insider, ids: readonly string[]): Input {
  const by = chance.oneIn(20) ? null : person;
  const move = chance.pick(Object.keys(moveShapes) as MoveName[]);
  const look = chance.pick(Object.keys(lookShapes) as LookName[]);
  const [path, fields] = chance.pick<() => [string, Record<string, string>]>([
    () => [`/move/${move}`, fieldsFor(chance, moveShapes[move], ids)],
    () => [`/move/${move}`, fieldsFor(chance, moveShapes[move], ids)],
    () => [`/look/${look}`, fieldsFor(chance, lookShapes[look], ids)],
    () => ['/command', commandFields(chance, ids)],
    () => ['/command', { line: anyText(chance) }],
    () => ['/in', { code: anyText(chance), own: 'yes' }],
    () => ['/page', { size: anyText(chance), ground: chance.pick(['night', 'sand', ...bareNames]) }],
    () => [
      `/${chance.pick(['move', 'look', 'out-of', 'in'])}/${chance.pick(bareNames)}`,
      { text: anyText(chance) },
    ],
  ])();
  fields['_token'] = chance.oneIn(25) ? anyText(chance) : (by?.token ?? '');
  fields['_update'] = chance.oneIn(5) ? '00000000-0000-4000-8000-000000000000' : crypto.randomUUID();
  fields['_back'] = chance.oneIn(4) ? anyText(chance) : chance.pick(paths);
  if (chance.oneIn(15)) fields['_given'] = chance.pick(['scribed', ...bareNames]);
  const shown = { by: by?.name ?? 'nobody', method: 'POST', path, fields };
  const headers = headersOf(chance, by);
  let body: URLSearchParams | FormData | string = new URLSearchParams(
    Object.entries(fields).map(([name, value]): [string, string] => [name, value.toWellFormed()]),
  );
  if (chance.oneIn(6)) {
    const form = new FormData();
    for (const [name, value] of Object.entries(fields))
      form.append(name, chance.oneIn(6) ? new Blob([value]) : value);
    body = form;
  } else if (chance.oneIn(25)) {
    body = anyText(chance).toWellFormed();
    headers['content-type'] = chance.pick([
      'text/plain',
      'application/json',
      'multipart/form-data; boundary=x',
      'application/x-www-form-urlencoded',
    ]);
  }
  return {
    shown,
    run: async () => mustBeAPage(world, shown, await world.request(path, { method: 'POST', headers, body })),
  };
}

/** The room's pages and forms, in process. */
export const throughTheRoom: readonly Entrance[] = [
  { name: 'pages of the room', share: 14, open: inWorlds(aPage) },
  { name: 'forms of the room', share: 16, open: inWorlds(aForm) },
];
