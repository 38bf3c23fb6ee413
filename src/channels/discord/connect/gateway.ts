import { Client, Events, GatewayIntentBits, Options, type APIInteraction } from 'discord.js';
import type { DiscordOptions } from '../options.js';
import { failureCode } from '../send/failure.js';
import { restAddress } from './rest.js';

/** What the gateway is listened to for. */
export interface GatewayEars {
  interaction(raw: APIInteraction): void;
  /** The bot's own id, and its application's. */
  ready(user: string, application: string): void;
  /** The bot is in a server: at the start, after an outage, or newly invited. */
  server(id: string): void;
}

export interface Gateway {
  stop(): Promise<void>;
}

/** Waits between tries to come in, in milliseconds; the last one is kept to. */
const waits = [1000, 2000, 5000, 10_000, 30_000, 60_000] as const;

/** Close codes after which only a person can help (Discord's "gateway close event codes"). */
const hopeless: Readonly<Record<number, string>> = {
  4004: 'the token is not taken; set a new DISCORD_TOKEN and start again',
  4010: 'the shard is not taken',
  4011: 'the bot is in too many servers for one connection',
  4012: 'the version of the gateway is not taken',
  4013: 'an intent is not known',
  4014: 'an intent is not allowed',
};

/** A client that keeps as little as it can: members and users grow for ever otherwise, and messages aren't needed at all. */
function openClient(options: DiscordOptions): Client {
  return new Client({
    intents: [GatewayIntentBits.Guilds],
    rest: { ...restAddress(options), timeout: 10_000 },
    allowedMentions: { parse: [] },
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      ThreadManager: 0,
      ReactionManager: 0,
      PresenceManager: 0,
      VoiceStateManager: 0,
      UserManager: { maxSize: 50, keepOverLimit: (user) => user.id === user.client.user.id },
      GuildMemberManager: { maxSize: 50, keepOverLimit: (member) => member.id === member.client.user.id },
    }),
  });
}

/**
 * Interactions are read by this channel alone, and a packet that the library can't read is left out: it would be thrown
 * where nobody can catch it, and end the process.
 */
function guard(client: Client, { log }: DiscordOptions): void {
  const ws = client.ws as unknown as { handlePacket?: (packet: unknown, shard: unknown) => unknown };
  const handle = ws.handlePacket?.bind(ws);
  if (handle === undefined) return;
  ws.handlePacket = (packet, shard) => {
    if ((packet as Packet | undefined)?.t === 'INTERACTION_CREATE') return true;
    try {
      return handle(packet, shard);
    } catch (why) {
      log.warn({ code: failureCode(why) }, 'a packet of Discord could not be read');
      return false;
    }
  };
}

interface Packet {
  readonly t?: string | null;
  readonly d?: unknown;
}

function listen(client: Client, { log }: DiscordOptions, ears: GatewayEars): void {
  const warn = (what: string) => (why: unknown) => log.warn({ code: failureCode(why) }, what);
  client.on(Events.Error, warn('the client of Discord failed'));
  client.on(Events.ShardError, warn('the line to Discord failed'));
  client.on(Events.Warn, () => log.debug({}, 'the client of Discord warns'));
  client.on(Events.ShardReconnecting, () => log.info({}, 'coming back to Discord'));
  client.on(Events.ShardResume, () => log.info({}, 'back on Discord'));
  client.on(Events.Invalidated, () => log.error({}, 'Discord ended the session for good'));
  client.on(Events.ShardDisconnect, ({ code }) => {
    const why = hopeless[code];
    if (why !== undefined) log.error({ code }, `Discord closed the line and a person must act: ${why}`);
  });
  // Read as they come, so that interactions over the gateway and over HTTP go one way.
  client.on(
    'raw' as 'debug',
    ((packet: Packet) => {
      if (packet.t === 'READY') {
        const { user, application } = packet.d as Readonly<
          Record<'user' | 'application', { readonly id: string }>
        >;
        ears.ready(user.id, application.id);
      }
      if (packet.t === 'INTERACTION_CREATE') ears.interaction(packet.d as APIInteraction);
      if (packet.t === 'GUILD_CREATE') ears.server((packet.d as { readonly id: string }).id);
    }) as unknown as (text: string) => void,
  );
}

/** Opens the line to Discord and keeps trying where that isn't there; never throws. */
export function openGateway(options: DiscordOptions, ears: GatewayEars): Gateway {
  let client: Client | null = null;
  let timer: NodeJS.Timeout | null = null;
  let stopped = false;

  const comeIn = async (tries: number): Promise<void> => {
    if (stopped) return;
    const fresh = openClient(options);
    listen(fresh, options, ears);
    guard(fresh, options);
    client = fresh;
    try {
      await fresh.login(options.token);
    } catch (why) {
      await fresh.destroy().catch(() => undefined);
      const wait = waits[Math.min(tries, waits.length - 1)] ?? 60_000;
      options.log.warn({ code: failureCode(why), wait }, 'Discord can’t be reached; trying again');
      if (!stopped) timer = setTimeout(() => void comeIn(tries + 1), wait);
    }
  };
  void comeIn(0);

  return {
    async stop() {
      stopped = true;
      if (timer) clearTimeout(timer);
      await client?.destroy().catch(() => undefined);
    },
  };
}
