import type { Server } from 'node:http';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import type { Channel, House } from '../../../shared/channel.js';
import { Fault } from '../../../shared/fault.js';
import { buildApp } from './app.js';
import { loadAssets } from './assets.js';
import { openFeedTail } from './feed-tail.js';
import type { RoomOptions } from './options.js';
import { openStreams, type Streams } from './streams.js';

/** Limits against slow and greedy clients, in milliseconds and bytes; ours. */
const serverLimits = {
  headersTimeout: 10_000,
  requestTimeout: 30_000,
  keepAliveTimeout: 10_000,
  maxHeaderSize: 16 * 1024,
  connectionsCheckingInterval: 2000,
} as const;

function limitsOf({ patience }: RoomOptions): typeof serverLimits | Readonly<Record<string, number>> {
  if (patience === undefined) return serverLimits;
  const { headers: headersTimeout, request: requestTimeout, looks: connectionsCheckingInterval } = patience;
  return { ...serverLimits, headersTimeout, requestTimeout, connectionsCheckingInterval };
}

/** How long an answer in the making is waited for when the room stops. */
const patience = 3000;

/** The room: a web page that the school serves itself, with the channel's common face. */
export function roomChannel(options: RoomOptions): Channel & { readonly url: () => string } {
  let server: Server | null = null;
  let streams: Streams | null = null;

  return {
    name: 'room',
    async start(house: House) {
      const newest = openFeedTail(house);
      streams = openStreams(house, newest, options.live);
      const app = buildApp(house, options, loadAssets(options.pictures), newest, streams);
      const opened = createAdaptorServer({
        fetch: app.fetch,
        createServer,
        serverOptions: limitsOf(options),
      }) as Server;
      opened.maxHeadersCount = 100;
      opened.maxConnections = 4000;
      await listen(opened, options);
      server = opened;
    },
    async stop() {
      streams?.endAll();
      const closing = server;
      server = null;
      if (closing) await close(closing);
    },
    url() {
      const address = server?.address() as AddressInfo | null | undefined;
      if (!address) {
        throw new Fault(
          'wrong time',
          'Cannot tell the address of the room, expected it to be open',
          'Start it first.',
        );
      }
      const host = address.family === 'IPv6' ? `[${address.address}]` : address.address;
      return `http://${host}:${address.port}`;
    },
  };
}

function listen(server: Server, { host, port }: RoomOptions): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', (why: NodeJS.ErrnoException) => {
      const inUse = why.code === 'EADDRINUSE';
      fail(
        new Fault(
          inUse ? 'in use' : 'configuration',
          `Cannot listen on ${host}:${port}, expected a free port that may be used, got ${why.code ?? 'an error'}`,
          inUse ? 'Stop what is there, or set TURNSTONE_PORT.' : 'Mend TURNSTONE_HOST or TURNSTONE_PORT.',
        ),
      );
    });
    server.listen(port, host, () => done());
  });
}

function close(server: Server): Promise<void> {
  return new Promise((done) => {
    const hurry = setTimeout(() => server.closeAllConnections(), patience);
    // A live line that has just ended is a connection kept for more, until it is closed too.
    const sweep = setInterval(() => server.closeIdleConnections(), 50);
    server.close(() => {
      clearTimeout(hurry);
      clearInterval(sweep);
      done();
    });
  });
}
