import { SocketModeReceiver } from '@slack/bolt';
import { codeOf } from './desk/desk.js';
import type { SlackOptions } from './options.js';
import { clientOptions, quietLogger } from './web.js';

/** Updates over a socket that is opened from here, so that no port has to be open to the world. */
export interface Socket {
  readonly receiver: SocketModeReceiver;
  /** Begins to connect, and goes on until stopped; resolves nothing, since being ready needs no Slack. */
  start(): void;
  stop(): Promise<void>;
}

/** Waits between tries, in milliseconds: the first, and the longest. */
const waits = { first: 500, longest: 30_000 } as const;

/**
 * Opens the socket. The library's own way to connect anew rejects into nowhere where Slack can't be reached or says no,
 * which would end the program; so it is switched off, and connecting anew is done here.
 */
export function openSocket(appToken: string, options: SlackOptions): Socket {
  const { log } = options;
  const logger = quietLogger(log);
  const receiver = new SocketModeReceiver({
    appToken,
    logger,
    clientPingTimeout: 1000,
    autoReconnectEnabled: false,
    installerOptions: { clientOptions: clientOptions(options) },
    processEventErrorHandler: ({ error }) => {
      log.error({ code: codeOf(error) }, 'an update over the socket failed');
      return Promise.resolve(false);
    },
  });
  const { client } = receiver;
  catchBadMessages(client, log);

  let stopped = false;
  let timer: NodeJS.Timeout | null = null;
  let failures = 0;

  const again = (): void => {
    if (stopped || timer) return;
    const wait = failures === 0 ? 0 : Math.min(waits.longest, waits.first * 2 ** (failures - 1));
    failures += 1;
    timer = setTimeout(() => {
      timer = null;
      connect();
    }, wait);
  };
  const connect = (): void => {
    if (stopped) return;
    client.start().catch((why: unknown) => {
      log.warn({ code: codeOf(why), failures }, 'Slack’s socket could not be opened; trying again');
      again();
    });
  };
  client.on('connected', () => {
    failures = 0;
    log.debug({}, 'Slack’s socket is open');
  });
  client.on('disconnected', again);

  return {
    receiver,
    start: connect,
    async stop() {
      stopped = true;
      if (timer) clearTimeout(timer);
      const patience = new Promise<void>((settle) => setTimeout(settle, 1000).unref());
      await Promise.race([client.disconnect().catch(() => undefined), patience]);
    },
  };
}

type Client = SocketModeReceiver['client'];

/** A message that isn't what Slack sends would reject into nowhere and end the program; it is dropped instead. */
function catchBadMessages(client: Client, log: SlackOptions['log']): void {
  const reader = client as unknown as { onWebSocketMessage(data: unknown, binary: boolean): Promise<void> };
  client.removeAllListeners('ws_message');
  client.on('ws_message', (data: unknown, binary: boolean) => {
    reader.onWebSocketMessage(data, binary).catch((why: unknown) => {
      log.warn({ code: codeOf(why) }, 'a message over the socket could not be read');
    });
  });
}
