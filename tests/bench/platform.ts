import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { openGatewayStandIn, type StandInGateway } from '../support/discord-gateway.js';
import { application, discordToken } from '../support/discord-stand-in.js';
import type { Line } from './line.js';
import { discordServer } from './school.js';

/** Both platforms as far as a busy bot meets them: they take every message, and the gateway hands out interactions. Nothing is checked or kept. */
export interface Platform {
  readonly url: string;
  readonly gateway: StandInGateway;
  /** Sends interactions over the gateway; each is answered by a callback. */
  readonly line: Line;
  stop(): Promise<void>;
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

/** Opens the platforms on a free port of this machine. */
export async function openPlatform(): Promise<Platform> {
  const answered = new Map<string, (body: string) => void>();
  let count = 0;
  const json = (response: ServerResponse, value: unknown): void =>
    void response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(value));

  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const body = await bodyOf(request);
    const parts = (request.url ?? '').split('/');
    const at = parts.indexOf('interactions');
    if (at >= 0) {
      response.writeHead(204).end();
      answered.get(parts[at + 1] ?? '')?.(body);
      return;
    }
    count += 1;
    const id = String(count);
    if (parts.includes('gateway')) {
      const limit = { total: 1000, remaining: 999, reset_after: 0, max_concurrency: 1 };
      return json(response, { url, shards: 1, session_start_limit: limit });
    }
    if (parts.includes('guilds') && parts.includes('@me')) return json(response, [{ id: discordServer }]);
    // What both platforms say of a message that they took, in one.
    json(response, { ok: true, ts: `${count}.1`, id, messages: [] });
  };
  const server = createServer((request, response) => {
    handle(request, response).catch(() => response.destroy());
  });
  await new Promise<void>((settle) => server.listen(0, '127.0.0.1', settle));
  const { port } = server.address() as AddressInfo;
  const url = `ws://127.0.0.1:${port}`;
  const gateway = openGatewayStandIn(server, {
    token: () => discordToken,
    url: () => url,
    user: application,
    application,
    heartbeat: 41_250,
    guilds: () => [],
  });
  return {
    url: `http://127.0.0.1:${port}`,
    gateway,
    line: {
      send({ body }) {
        const raw = JSON.parse(body) as { readonly id: string };
        return new Promise((settle) => {
          answered.set(raw.id, (answer) => {
            answered.delete(raw.id);
            settle(answer);
          });
          gateway.dispatch('INTERACTION_CREATE', raw);
        });
      },
      close: () => Promise.resolve(),
    },
    async stop() {
      gateway.close();
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}
