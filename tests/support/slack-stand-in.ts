import { createHmac } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { WebSocketServer, type WebSocket } from 'ws';
import { SlackUser, type Json } from './slack-user.js';
import { performCall } from './slack-web.js';

/** How a call can go wrong: an answer, a connection that breaks before or after the work was done, or one that hangs. */
export type SlackFault =
  | { readonly error: string }
  | { readonly status: number; readonly headers?: Readonly<Record<string, string>> }
  | 'none'
  | 'reset'
  | 'reset after'
  | 'hang';

/** A message as it stands in a channel. */
export interface StandingPost {
  readonly ts: string;
  readonly user: string;
  readonly text: string;
  readonly blocks: readonly Json[];
  readonly metadata: Json | null;
  /** The post under which it stands, null in the channel itself. */
  readonly thread: string | null;
}

export interface SlackRoom {
  readonly id: string;
  posts: StandingPost[];
  archived: boolean;
  /** Whether the bot is in it. */
  member: boolean;
  /** Who alone may post and reply, as Slack says it; nobody is named where everybody may. */
  properties: Json;
}

const secret = 'a signing secret of the tests';
/** Scopes as Slack lists them for a bot, those that an app like this can ask for. */
const allScopes = [
  'commands',
  'chat:write',
  'channels:history',
  'groups:history',
  'channels:read',
  'groups:read',
  'files:read',
];

/** How an update was answered: its status and body, null where nobody acknowledged it in time. */
export interface Acknowledged {
  readonly status: number;
  readonly body: Json | null;
}

/**
 * Slack on loopback, as far as the channel meets it: the Web API, signed requests, sockets. What it is sent is checked
 * against published limits; what breaks one, or would be parsed, is kept in `breaches`.
 */
export class SlackStandIn {
  readonly team = 'T1';
  readonly secret = secret;
  readonly rooms = new Map<string, SlackRoom>();
  readonly users = new Map<string, SlackUser>();
  readonly calls: { readonly method: string; readonly args: Json }[] = [];
  readonly breaches: string[] = [];
  readonly files = new Map<string, string>();
  /** Scopes that the token lacks; history can't be read without its own. */
  readonly lacking = new Set<string>();
  /** Tokens of workspaces that installed the app, by token; a token that isn't here is the configuration's. */
  readonly workspaces = new Map<string, string>();
  /** Codes of installations under way, each good once, with the workspace that agreed. */
  readonly codes = new Map<string, Json>();
  /** Tokens that are revoked. */
  readonly revoked = new Set<string>();
  /** Which token each call came with, in the order of `calls`. */
  readonly tokens: string[] = [];
  /** How many posts of a thread are given at once. */
  pageOfReplies = 1000;
  /** Whether triggers have died before they are used. */
  triggersDie = false;
  now: () => number;
  readonly #server;
  readonly #sockets = new Set<WebSocket>();
  readonly #faults = new Map<string, SlackFault[]>();
  readonly #waiting = new Map<string, (payload: Json) => void>();
  readonly #responses = new Map<string, (body: Json) => void>();
  #handler: ((request: Request) => Promise<Response>) | null = null;
  #count = 0;
  #ws: WebSocketServer | null = null;

  private constructor(now: () => number) {
    this.now = now;
    this.#server = createServer((request, response) => void this.#answer(request, response));
  }

  static async open(now: () => number = () => Date.now()): Promise<SlackStandIn> {
    const standIn = new SlackStandIn(now);
    await new Promise<void>((settle) => standIn.#server.listen(0, '127.0.0.1', settle));
    standIn.#ws = new WebSocketServer({ server: standIn.#server, path: '/link' });
    standIn.#ws.on('connection', (socket) => standIn.#connected(socket));
    return standIn;
  }

  get base(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }
  get api(): string {
    return `${this.base}/api`;
  }

  /** Where signed requests go. */
  sendTo(handler: (request: Request) => Promise<Response>): void {
    this.#handler = handler;
  }
  /** How many sockets are open. */
  get sockets(): number {
    return this.#sockets.size;
  }
  /** Breaks every socket, or asks politely to come again. */
  dropSockets(how: 'break' | 'refresh'): void {
    for (const socket of this.#sockets) {
      if (how === 'break') socket.terminate();
      else socket.send(JSON.stringify({ type: 'disconnect', reason: 'refresh_requested' }));
    }
  }
  /** Sends raw text over every socket. */
  babble(text: string): void {
    for (const socket of this.#sockets) socket.send(text);
  }

  room(id: string): SlackRoom {
    const there = this.rooms.get(id) ?? { id, posts: [], archived: false, member: true, properties: {} };
    this.rooms.set(id, there);
    return there;
  }
  user(id: string): SlackUser {
    const there = this.users.get(id) ?? new SlackUser(this, id);
    this.users.set(id, there);
    return there;
  }
  /** The next calls of a method go wrong, one after the other. */
  fail(method: string, ...faults: readonly SlackFault[]): void {
    this.#faults.set(method, [...(this.#faults.get(method) ?? []), ...faults]);
  }
  called(method: string): readonly Json[] {
    return this.calls.filter((call) => call.method === method).map(({ args }) => args);
  }
  next(prefix: string): string {
    this.#count += 1;
    return `${prefix}${this.#count}`;
  }
  ts(): string {
    this.#count += 1;
    return `${Math.floor(this.now() / 1000)}.${String(this.#count).padStart(6, '0')}`;
  }
  responseUrl(take: (body: Json) => void): string {
    const id = this.next('r');
    this.#responses.set(id, take);
    return `${this.base}/respond/${id}`;
  }

  /** A request as Slack signs it. */
  signed(body: string, type: string, at = this.now(), key = secret): Request {
    const timestamp = String(Math.floor(at / 1000));
    const signature = `v0=${createHmac('sha256', key).update(`v0:${timestamp}:${body}`).digest('hex')}`;
    return new Request('http://127.0.0.1/slack/events', {
      method: 'POST',
      body,
      headers: {
        'content-type': type,
        'x-slack-request-timestamp': timestamp,
        'x-slack-signature': signature,
      },
    });
  }
  /** Hands a request to the app and waits for its acknowledgement. */
  async post(request: Request): Promise<Acknowledged> {
    if (!this.#handler) throw new Error('Cannot send, expected a handler, got none');
    const response = await this.#handler(request);
    const text = await response.text();
    return {
      status: response.status,
      body: response.headers.get('content-type')?.includes('json')
        ? (JSON.parse(text) as Json)
        : text === ''
          ? null
          : { text },
    };
  }
  /** Sends an update over a socket where one is open, else as a signed request. */
  async update(kind: 'slash_commands' | 'interactive' | 'events_api', payload: Json): Promise<Acknowledged> {
    const [socket] = this.#sockets;
    if (socket) return this.#overSocket(socket, kind, payload);
    if (kind === 'events_api') return this.post(this.signed(JSON.stringify(payload), 'application/json'));
    const form =
      kind === 'interactive'
        ? new URLSearchParams({ payload: JSON.stringify(payload) })
        : new URLSearchParams(payload as Record<string, string>);
    return this.post(this.signed(form.toString(), 'application/x-www-form-urlencoded'));
  }

  async stop(): Promise<void> {
    for (const socket of this.#sockets) socket.terminate();
    this.#ws?.close();
    this.#server.closeAllConnections();
    await new Promise<void>((settle) => this.#server.close(() => settle()));
  }

  #overSocket(socket: WebSocket, type: string, payload: Json): Promise<Acknowledged> {
    const id = this.next('e');
    return new Promise((settle) => {
      const late = setTimeout(() => settle({ status: 404, body: null }), 3000);
      this.#waiting.set(id, (body) => {
        clearTimeout(late);
        settle({ status: 200, body });
      });
      socket.send(JSON.stringify({ envelope_id: id, type, payload, accepts_response_payload: true }));
    });
  }

  #connected(socket: WebSocket): void {
    this.#sockets.add(socket);
    socket.on('close', () => this.#sockets.delete(socket));
    socket.on('message', (data: Buffer) => {
      const { envelope_id, payload } = JSON.parse(data.toString('utf8')) as {
        envelope_id: string;
        payload?: Json;
      };
      this.#waiting.get(envelope_id)?.(payload ?? {});
    });
    socket.send(JSON.stringify({ type: 'hello', num_connections: 1 }));
  }

  async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks).toString('utf8');
    const [, kind, name = ''] = (request.url ?? '').split('/');
    const send = (value: unknown, status = 200, headers: Record<string, string> = {}): void => {
      response
        .writeHead(status, { 'content-type': 'application/json', ...headers })
        .end(JSON.stringify(value));
    };
    if (kind === 'respond') {
      this.#responses.get(name)?.(JSON.parse(body) as Json);
      return send({ ok: true });
    }
    if (kind === 'files') {
      response.writeHead(200, { 'content-type': 'text/plain' }).end(this.files.get(name) ?? '');
      return;
    }
    const args: Record<string, unknown> = {};
    for (const [key, value] of new URLSearchParams(body))
      args[key] = ['blocks', 'metadata', 'view'].includes(key) ? (JSON.parse(value) as unknown) : value;
    this.calls.push({ method: name, args });
    const token = (request.headers.authorization ?? '').replace(/^Bearer /u, '');
    this.tokens.push(token);
    const fault = this.#faults.get(name)?.shift();
    if (fault === 'hang') return;
    if (fault === 'reset') return void request.socket.destroy();
    if (fault !== undefined && fault !== 'reset after' && fault !== 'none') {
      if ('error' in fault) return send({ ok: false, error: fault.error });
      return send({ ok: false }, fault.status, fault.headers);
    }
    const result = this.revoked.has(token)
      ? { ok: false, error: 'token_revoked' }
      : performCall(this, name, args, token);
    if (fault === 'reset after') return void request.socket.destroy();
    return send(result, 200, { 'x-oauth-scopes': this.scopes().join(',') });
  }

  /** What the token may do. */
  scopes(): readonly string[] {
    return allScopes.filter((name) => !this.lacking.has(name));
  }
}
