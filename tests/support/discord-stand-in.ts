import { generateKeyPairSync, sign } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { openGatewayStandIn, type StandInGateway } from './discord-gateway.js';
import { messageFaults, modalFaults, type AnyPayload } from './discord-limits.js';
import {
  bits,
  openRooms,
  saysNo as error,
  type Forbidden,
  type StandInReply as Reply,
} from './discord-rooms.js';
import type { Standing, StandInRooms } from './discord-rooms.js';

export const discordToken = 'stand-in.token.of-nobody';
export const application = '900000000000000001';
export const server = '800000000000000001';
const botRole = '700000000000000001';

export type { Standing } from './discord-rooms.js';

/** An interaction on its way, and all that came back. */
export interface Interaction {
  readonly id: string;
  readonly raw: Readonly<Record<string, unknown>>;
  readonly sentAt: number;
  /** First answers that were taken; more than one is never. */
  readonly answers: { readonly type: number; readonly data?: AnyPayload & { choices?: unknown } }[];
  readonly edits: AnyPayload[];
  refusedAnswers: number;
}

type Respond =
  | { readonly status: number; readonly body?: unknown; readonly headers?: Record<string, string> }
  | 'reset'
  | 'hang'
  | 'reset after';
/** Something that a route does instead, a number of times. */
interface Trouble {
  readonly method: string;
  readonly path: RegExp;
  readonly does: Respond;
  times: number;
}

export interface DiscordStandIn {
  readonly url: string;
  readonly gateway: StandInGateway;
  readonly publicKey: string;
  /** Breaches of published limits in anything that came. */
  readonly breaches: string[];
  readonly requests: { readonly method: string; readonly path: string }[];
  readonly commands: Map<string, readonly Readonly<Record<string, unknown>>[]>;
  /** Messages in a room and its threads, oldest first. */
  room(id: string): readonly Standing[];
  readonly rooms: StandInRooms;
  /** Makes or deletes a room. */
  openRoom(id: string): void;
  closeRoom(id: string): void;
  /** The bot may not do this in a room. */
  forbid(room: string, what: Forbidden, on: boolean): void;
  /** What a person of the staff deletes. */
  deleteMessage(room: string, id: string): void;
  everybodyWrites(on: boolean): void;
  /** Further roles of the server, beside everybody's and the bot's own. */
  addRole(role: { readonly id: string; readonly name: string; readonly permissions: string }): void;
  /** Whether the bot is in the server. */
  inServer(on: boolean): void;
  /** Where the application has its interactions sent, null for the gateway. */
  sendInteractionsTo(address: string | null): void;
  /** A file that can be fetched; its address. */
  file(name: string, text: string): string;
  trouble(method: string, path: RegExp, does: Respond, times?: number): void;
  setToken(token: string): void;
  /** Makes an interaction and sends it over the gateway, or only makes it. */
  begin(raw: Readonly<Record<string, unknown>>, send?: boolean): Interaction;
  again(interaction: Interaction): void;
  signed(body: string): { readonly body: string; readonly headers: Record<string, string> };
  stop(): Promise<void>;
}

const answerWithin = 3000;

async function bodyOf(request: IncomingMessage): Promise<unknown> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const text = Buffer.concat(chunks).toString('utf8');
  return text === '' ? undefined : JSON.parse(text);
}

/** Opens Discord's gateway, REST and interactions on a free port of this machine. */
export async function openDiscordStandIn(
  settings: { readonly heartbeat?: number; readonly port?: number } = {},
): Promise<DiscordStandIn> {
  const interactions = new Map<string, Interaction>();
  const files = new Map<string, string>();
  const troubles: Trouble[] = [];
  const breaches: string[] = [];
  const requests: DiscordStandIn['requests'] = [];
  const commands: DiscordStandIn['commands'] = new Map();
  const keys = generateKeyPairSync('ed25519');
  const publicKey = keys.publicKey.export({ format: 'der', type: 'spki' }).subarray(12).toString('hex');
  let token = discordToken;
  let everybody = false;
  let present = true;
  let endpoint: string | null = null;
  let last = BigInt(Date.now() - 1_420_070_400_000) << 22n;
  const nextId = (): string => String((last += 1n));

  const note = (what: string, faults: readonly string[]): Reply | null => {
    breaches.push(...faults.map((fault) => `${what}: ${fault}`));
    return faults.length === 0 ? null : error(400, 50035);
  };

  const rooms = openRooms({ bot: application, botRole, nextId, check: note });
  const roles: { readonly id: string; readonly name: string; readonly permissions: string }[] = [];
  const rolesNow = () => [
    { id: server, name: '@everyone', permissions: everybody ? String(bits.write) : '0' },
    {
      id: botRole,
      name: 'Turnstone',
      managed: true,
      permissions: String(Object.values(bits).reduce((sum, bit) => sum | bit, 0n)),
    },
    ...roles,
  ];
  const inGuild = (what: string): Reply => {
    if (!present) return error(404, 10004);
    if (what === 'roles') return { status: 200, body: rolesNow() };
    if (what === 'members') return { status: 200, body: { roles: [botRole] } };
    return { status: 200, body: { id: server, owner_id: '1', roles: rolesNow() } };
  };

  const callBack = (id: string, body: Interaction['answers'][number]): Reply => {
    const found = interactions.get(id);
    if (!found || (found.answers.length === 0 && Date.now() - found.sentAt > answerWithin)) {
      if (found) found.refusedAnswers += 1;
      return error(404, 10062);
    }
    if (found.answers.length > 0) {
      found.refusedAnswers += 1;
      return error(400, 40060);
    }
    const { type, data } = body;
    const wrong =
      type === 4
        ? note('answer', messageFaults(data ?? {}))
        : type === 9
          ? note('modal', modalFaults(data ?? {}))
          : null;
    if (wrong) return wrong;
    found.answers.push(body);
    return { status: 204 };
  };

  const editOriginal = (itsToken: string, body: AnyPayload): Reply => {
    const found = [...interactions.values()].find(({ raw }) => raw['token'] === itsToken);
    if (!found || found.answers.length === 0) return error(404, 10015);
    const wrong = note('edited answer', messageFaults(body));
    if (wrong) return wrong;
    found.edits.push(body);
    return { status: 200, body: { id: nextId() } };
  };

  const route = (method: string, path: string, body: unknown, authorised: boolean): Reply => {
    const parts = path
      .replace(/^\/api(?:\/v10)?\//, '')
      .split('/')
      .map(decodeURIComponent);
    const [what, first = '', second = '', third = ''] = parts;
    if (what === 'interactions') return callBack(first, body as Interaction['answers'][number]);
    if (what === 'webhooks') return editOriginal(second, body as AnyPayload);
    if (!authorised) return error(401, 0);
    if (what === 'gateway') {
      const limit = { total: 1000, remaining: 999, reset_after: 0, max_concurrency: 1 };
      return { status: 200, body: { url: gatewayUrl(), shards: 1, session_start_limit: limit } };
    }
    if (what === 'users') {
      return {
        status: 200,
        body: second === 'guilds' ? [{ id: server }] : { id: application, username: 'turnstone' },
      };
    }
    if (what === 'applications' && second === '') {
      const body = { id: application, verify_key: publicKey, interactions_endpoint_url: endpoint };
      return { status: 200, body };
    }
    if (what === 'applications' && method === 'PUT') {
      commands.set(third, body as readonly Readonly<Record<string, unknown>>[]);
      return { status: 200, body };
    }
    if (what === 'guilds') return inGuild(second);
    if (what === 'channels') return rooms.answer(method, parts.slice(1), body);
    return error(404, 0);
  };

  const write = (
    response: ServerResponse,
    { status, body }: Reply,
    headers: Record<string, string> = {},
  ): void => {
    response.writeHead(status, status === 204 ? headers : { 'content-type': 'application/json', ...headers });
    response.end(status === 204 ? undefined : JSON.stringify(body ?? {}));
  };

  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const method = request.method ?? 'GET';
    const { pathname } = new URL(request.url ?? '/', 'http://stand.in');
    requests.push({ method, path: pathname });
    const file = files.get(pathname);
    if (file !== undefined) {
      response.writeHead(200, { 'content-type': 'text/plain' }).end(file);
      return;
    }
    const body = await bodyOf(request);
    const trouble = troubles.find((one) => one.times > 0 && one.method === method && one.path.test(pathname));
    const authorised = request.headers.authorization === `Bot ${token}`;
    if (trouble) {
      trouble.times -= 1;
      if (trouble.does === 'hang') return;
      if (trouble.does === 'reset after') route(method, pathname, body, authorised);
      if (typeof trouble.does === 'string') {
        request.socket.destroy();
        return;
      }
      write(response, trouble.does, trouble.does.headers);
      return;
    }
    write(response, route(method, pathname, body, authorised));
  };

  const http: Server = createServer((request, response) => {
    handle(request, response).catch(() => response.destroy());
  });
  await new Promise<void>((done) => http.listen(settings.port ?? 0, '127.0.0.1', done));
  const { port } = http.address() as AddressInfo;
  const gatewayUrl = (): string => `ws://127.0.0.1:${port}`;
  const gateway = openGatewayStandIn(http, {
    token: () => token,
    url: gatewayUrl,
    user: application,
    application,
    heartbeat: settings.heartbeat ?? 41_250,
    guilds: () => [
      {
        id: server,
        name: 'A school',
        channels: [],
        roles: [{ id: server, name: '@everyone', permissions: '0' }],
        members: [],
        emojis: [],
        stickers: [],
        threads: [],
        voice_states: [],
        presences: [],
        stage_instances: [],
        features: [],
      },
    ],
  });

  return {
    url: `http://127.0.0.1:${port}`,
    gateway,
    publicKey,
    breaches,
    requests,
    commands,
    rooms,
    room: (id) => rooms.all(id),
    openRoom: (id) => rooms.open(id),
    closeRoom: (id) => rooms.close(id),
    forbid: (id, what, on) => rooms.forbid(id, what, on),
    deleteMessage: (id, message) => rooms.remove(id, message),
    addRole: (role) => void roles.push(role),
    inServer(on) {
      present = on;
    },
    sendInteractionsTo(address) {
      endpoint = address;
    },
    everybodyWrites(on) {
      everybody = on;
    },
    file(name, text) {
      files.set(`/files/${name}`, text);
      return `http://127.0.0.1:${port}/files/${name}`;
    },
    trouble: (method, path, does, times = 1) => void troubles.push({ method, path, does, times }),
    setToken(next) {
      token = next;
    },
    begin(raw, send = true) {
      const id = nextId();
      const whole = {
        application_id: application,
        version: 1,
        entitlements: [],
        locale: 'en-GB',
        ...raw,
        id,
        token: `token-${id}`,
      };
      const made: Interaction = {
        id,
        raw: whole,
        sentAt: Date.now(),
        answers: [],
        edits: [],
        refusedAnswers: 0,
      };
      interactions.set(id, made);
      if (send) gateway.dispatch('INTERACTION_CREATE', whole);
      return made;
    },
    again: ({ raw }) => gateway.dispatch('INTERACTION_CREATE', raw),
    signed(body) {
      const timestamp = String(Math.floor(Date.now() / 1000));
      const signature = sign(null, Buffer.from(timestamp + body), keys.privateKey).toString('hex');
      return { body, headers: { 'x-signature-ed25519': signature, 'x-signature-timestamp': timestamp } };
    },
    async stop() {
      gateway.close();
      http.closeAllConnections();
      await new Promise((done) => http.close(done));
    },
  };
}
