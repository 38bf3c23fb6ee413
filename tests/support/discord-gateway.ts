import type { Server } from 'node:http';
import { WebSocketServer, type WebSocket } from 'ws';

interface Packet {
  readonly op: number;
  readonly d?: unknown;
  readonly s?: number | null;
  readonly t?: string | null;
}

/** Discord's gateway as far as the tests need it: identify, heartbeat, resume with a replay. */
export interface StandInGateway {
  /** Sends an event to whoever is connected; kept for a resume where nobody is. */
  dispatch(name: string, data: unknown): void;
  /** Cuts the line as a broken network does, or closes it with a code. */
  cut(code?: number): void;
  /** Tells that the session can't be resumed, or can. */
  invalidate(resumable: boolean): void;
  /** Heartbeats aren't answered any more. */
  deaf(on: boolean): void;
  /** Lines are refused. */
  away(on: boolean): void;
  forgetSession(): void;
  readonly counts: { identified: number; resumed: number; opened: number };
  connected(): boolean;
  close(): void;
}

export interface GatewayFacts {
  readonly token: () => string;
  readonly url: () => string;
  readonly user: string;
  readonly application: string;
  readonly guilds: () => readonly Readonly<Record<string, unknown>>[];
  readonly heartbeat: number;
}

/** Opens the gateway on a server's `/gateway` path. */
export function openGatewayStandIn(server: Server, facts: GatewayFacts): StandInGateway {
  const sockets = new WebSocketServer({ noServer: true });
  const counts = { identified: 0, resumed: 0, opened: 0 };
  let live: WebSocket | null = null;
  let session: string | null = null;
  let seq = 0;
  let isDeaf = false;
  let isAway = false;
  const past: Packet[] = [];

  const send = (socket: WebSocket, packet: Packet): void => {
    if (socket.readyState === socket.OPEN) socket.send(JSON.stringify({ s: null, t: null, ...packet }));
  };
  const event = (socket: WebSocket | null, name: string, data: unknown): void => {
    seq += 1;
    const packet = { op: 0, t: name, s: seq, d: data };
    past.push(packet);
    if (socket) send(socket, packet);
  };

  const identify = (socket: WebSocket, data: { readonly token?: string }): void => {
    if (data.token !== facts.token()) {
      socket.close(4004, 'Authentication failed.');
      return;
    }
    counts.identified += 1;
    session = `session-${counts.identified}`;
    live = socket;
    const guilds = facts.guilds();
    event(socket, 'READY', {
      v: 10,
      user: { id: facts.user, username: 'turnstone', discriminator: '0', avatar: null, bot: true },
      guilds: guilds.map(({ id }) => ({ id, unavailable: true })),
      session_id: session,
      resume_gateway_url: facts.url(),
      application: { id: facts.application, flags: 0 },
    });
    for (const guild of guilds) event(socket, 'GUILD_CREATE', guild);
  };

  const resume = (socket: WebSocket, data: { readonly session_id?: string; readonly seq?: number }): void => {
    if (session === null || data.session_id !== session) {
      send(socket, { op: 9, d: false });
      return;
    }
    counts.resumed += 1;
    live = socket;
    for (const packet of past.filter(({ s }) => (s ?? 0) > (data.seq ?? 0))) send(socket, packet);
    event(socket, 'RESUMED', {});
  };

  sockets.on('connection', (socket) => {
    counts.opened += 1;
    socket.on('error', () => undefined);
    socket.on('close', () => {
      if (live === socket) live = null;
    });
    socket.on('message', (raw) => {
      const packet = JSON.parse((raw as Buffer).toString('utf8')) as Packet;
      if (packet.op === 1 && !isDeaf) send(socket, { op: 11 });
      if (packet.op === 2) identify(socket, packet.d as { token?: string });
      if (packet.op === 6) resume(socket, packet.d as { session_id?: string; seq?: number });
    });
    send(socket, { op: 10, d: { heartbeat_interval: facts.heartbeat } });
  });
  server.on('upgrade', (request, socket, head) => {
    if (isAway) {
      socket.destroy();
      return;
    }
    sockets.handleUpgrade(request, socket, head, (one) => sockets.emit('connection', one, request));
  });

  return {
    counts,
    dispatch: (name, data) => event(live, name, data),
    cut(code) {
      const socket = live;
      live = null;
      if (code === undefined) socket?.terminate();
      else socket?.close(code);
    },
    invalidate(resumable) {
      if (!resumable) session = null;
      if (live) send(live, { op: 9, d: resumable });
    },
    deaf(on) {
      isDeaf = on;
    },
    away(on) {
      isAway = on;
    },
    forgetSession() {
      session = null;
    },
    connected: () => live !== null,
    close() {
      for (const socket of sockets.clients) socket.terminate();
      sockets.close();
    },
  };
}
