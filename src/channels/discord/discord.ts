import { Routes, type APIInteraction } from 'discord.js';
import type { Channel, House } from '../../../shared/channel.js';
import { answer, busy } from './answer/answer.js';
import { openDesk, type Answer, type Desk } from './answer/desk.js';
import { respond, type FirstAnswer, type WayOut } from './answer/respond.js';
import { checkDiscord } from './check/check.js';
import { everyoneWrites } from './connect/everyone-writes.js';
import { openGateway, type Gateway } from './connect/gateway.js';
import { restForAnswers, restForMessages } from './connect/rest.js';
import { openInFlight } from '../../../shared/in-flight.js';
import { mostInFlight } from './limits.js';
import { interactionsPath } from './interactions-path.js';
import { deferAfter } from './limits.js';
import { openMemory } from './memory.js';
import type { DiscordOptions } from './options.js';
import { readInteraction, type Asked } from './read/interaction.js';
import { registrations } from './register.js';
import type { Payload } from './render/payloads.js';
import { openSender } from './send/deliver.js';
import { codes, failureCode } from './send/failure.js';
import { isSigned, publicKeyOf } from './signature.js';

export { interactionsPath };

type Guest = (request: Request) => Promise<Response>;

/** How often what a slow line lost is sent again, for answers that may be sent twice without harm. */
const editTries = 3;

/** The practice on Discord. Opening never fails for what Discord does: it is tried again until it is there. */
export function discordChannel(
  options: DiscordOptions,
): Channel & { readonly guests?: Readonly<Record<string, Guest>> } {
  const { log } = options;
  const rest = restForAnswers(options);
  const own = { user: null as string | null, application: options.applicationId };
  const now = (): number => desk?.house.now() ?? Date.now();
  const sender = openSender(restForMessages(options), log, now, () => own.user);
  /** Interactions that were read lately: delivered again, they are neither done nor answered twice. */
  const seen = openMemory<Promise<Answer>>(2000, 900_000, () => Date.now());
  let desk: Desk | null = null;
  let gateway: Gateway | null = null;
  let timer: NodeJS.Timeout | null = null;
  let stopped = false;

  const answerOnce = (at: Desk, asked: Asked): Promise<Answer> => {
    const answering = seen.find(asked.id) ?? answer(at, asked);
    seen.keep(asked.id, answering);
    return answering;
  };
  const most = options.mostInFlight ?? mostInFlight;
  const bounded = openInFlight(most);
  const boundedBusy = openInFlight(most);
  /** Past twice the bound nothing is said any more; Discord itself then says that there was no answer. */
  const respondBounded = (at: Desk, asked: Asked, way: WayOut): Promise<void> =>
    bounded(
      () => respond(answerOnce(at, asked), way, deferral(asked)),
      () =>
        boundedBusy(
          () => respond(Promise.resolve(busy(asked)), way, null),
          () => Promise.resolve(),
        ),
    );
  const deferral = ({ kind }: Asked): number | null =>
    kind === 'suggest' || kind === 'ping' ? null : deferAfter;

  const edit = async ({ token }: Asked, payload: Payload): Promise<void> => {
    const route = Routes.webhookMessage(own.application ?? '', token, '@original');
    for (let tries = 1; ; tries += 1) {
      try {
        await rest.patch(route, { body: payload, auth: false });
        return;
      } catch (why) {
        log.warn({ code: failureCode(why), tries }, 'an answer did not reach Discord');
        if (tries >= editTries) return;
      }
    }
  };
  const callBack = async ({ id, token }: Asked, body: FirstAnswer): Promise<boolean> => {
    for (let tries = 1; ; tries += 1) {
      try {
        await rest.post(Routes.interactionCallback(id, token), { body, auth: false });
        return true;
      } catch (why) {
        const code = failureCode(why);
        // The line broke after the first try had arrived.
        if (tries > 1 && code.endsWith(`/${codes.alreadyAnswered}`)) return true;
        log.warn({ code, tries }, 'an answer did not reach Discord');
        if (tries > 1 || code.includes('/')) return false;
      }
    }
  };

  const overGateway = async (raw: APIInteraction): Promise<void> => {
    if (desk === null) return;
    const asked = readInteraction(raw);
    if (seen.find(asked.id) !== undefined) return;
    const way: WayOut = { first: (body) => callBack(asked, body), edit: (payload) => edit(asked, payload) };
    await respondBounded(desk, asked, way);
  };

  const overHttp = (at: Desk, raw: APIInteraction): Promise<FirstAnswer> =>
    new Promise((first, fail) => {
      const asked = readInteraction(raw);
      const way: WayOut = {
        first: (body) => {
          first(body);
          return Promise.resolve(true);
        },
        edit: (payload) => edit(asked, payload),
      };
      respondBounded(at, asked, way).then(() => fail(new Error('too many at once')), fail);
    });

  const register = async (server: string): Promise<void> => {
    if (own.application === null) return;
    const body = registrations(options.slashCommands, options.localNames);
    try {
      await rest.put(Routes.applicationGuildCommands(own.application, server), { body });
      log.debug({ server }, 'slash commands are registered');
    } catch (why) {
      log.warn({ code: failureCode(why), server }, 'slash commands were not registered');
    }
  };

  /** Without the gateway Discord is asked who we are and where we are, until it says so. */
  const askAround = async (tries: number): Promise<void> => {
    if (stopped) return;
    try {
      own.user = ((await rest.get(Routes.user())) as { readonly id: string }).id;
      if (own.application === null) {
        own.application = ((await rest.get(Routes.currentApplication())) as { readonly id: string }).id;
      }
      const servers = (await rest.get(Routes.userGuilds())) as readonly { readonly id: string }[];
      for (const { id } of servers) await register(id);
    } catch (why) {
      const wait = Math.min(1000 * 2 ** tries, 60_000);
      log.warn({ code: failureCode(why), wait }, 'Discord can’t be reached; trying again');
      if (!stopped) timer = setTimeout(() => void askAround(tries + 1), wait);
    }
  };

  const key = options.publicKey === null ? null : publicKeyOf(options.publicKey);
  const guest: Guest = async (request) => {
    const body = await request.text();
    const { headers } = request;
    const signed =
      key !== null &&
      isSigned(key, body, headers.get('x-signature-ed25519'), headers.get('x-signature-timestamp'));
    if (!signed) return new Response('Cannot take this, expected a signature of Discord.', { status: 401 });
    if (desk === null) return new Response(null, { status: 503 });
    try {
      return Response.json(await overHttp(desk, JSON.parse(body) as APIInteraction));
    } catch (why) {
      log.error({ code: failureCode(why) }, 'an interaction could not be read');
      return new Response(null, { status: 400 });
    }
  };

  return {
    name: 'discord',
    ...(key === null ? {} : { guests: { [interactionsPath]: guest } }),
    start(house: House) {
      desk = openDesk(house, options, (server, room) => everyoneWrites(rest, server, room));
      if (key !== null) {
        void askAround(0);
        return Promise.resolve();
      }
      gateway = openGateway(options, {
        interaction(raw) {
          overGateway(raw).catch((why: unknown) => {
            log.error({ code: failureCode(why) }, 'an interaction could not be read');
          });
        },
        ready(user, application) {
          Object.assign(own, { user, application });
          log.info({ user }, 'on Discord');
        },
        server(id) {
          void register(id);
        },
      });
      return Promise.resolve();
    },
    deliver: (delivery) => sender.deliver(delivery),
    stands: (delivery) => sender.stands(delivery),
    check: (places, at) => checkDiscord(options, places, at),
    async stop() {
      stopped = true;
      if (timer) clearTimeout(timer);
      await gateway?.stop();
    },
  };
}
