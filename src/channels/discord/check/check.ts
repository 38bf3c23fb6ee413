import { RateLimitError, Routes } from 'discord.js';
import type { BoundPlace, Finding } from '../../../../shared/channel.js';
import type { Instant } from '../../../../shared/time.js';
import { interactionsPath } from '../interactions-path.js';
import type { DiscordOptions } from '../options.js';
import { invitation, type Role } from '../permissions.js';
import { failureCode } from '../send/failure.js';
import { openAsk, saidNo, type Ask } from './ask.js';
import { checkPlace, placeName, type Server } from './place.js';
import { checkWords } from './words.js';

const fine = (words: string): Finding => ({ fine: true, words });
const mend = (words: string): Finding => ({ fine: false, words });

/** How far the clocks may differ, in milliseconds. */
const clockBound = 60_000;

interface Application {
  readonly id: string;
  readonly verify_key?: string;
  readonly interactions_endpoint_url?: string | null;
}

function unreachable(why: unknown, { api }: DiscordOptions): Finding {
  if (why instanceof RateLimitError || saidNo(why, 429)) return mend(checkWords('slow down'));
  if (saidNo(why, 401)) return mend(checkWords('token bad'));
  const where = api === null ? '' : checkWords('where');
  return mend(checkWords('cannot ask', { code: failureCode(why), where }));
}

function applicationFinding({ id }: Application, { applicationId: set }: DiscordOptions): Finding {
  return set === null || set === id
    ? fine(checkWords('application fine', { id }))
    : mend(checkWords('application bad', { set, id }));
}

/** Whether interactions find their way: over HTTP both the key and the address must be set, else neither. */
function wayFinding(application: Application, { publicKey }: DiscordOptions): Finding {
  const { verify_key: key, interactions_endpoint_url: address } = application;
  if (publicKey === null)
    return typeof address === 'string'
      ? mend(checkWords('address without key'))
      : fine(checkWords('gateway'));
  if (key !== undefined && key.toLowerCase() !== publicKey.toLowerCase()) return mend(checkWords('key bad'));
  if (address === null) return mend(checkWords('key without address', { path: interactionsPath }));
  return fine(checkWords('key fine'));
}

function clockFinding(at: number | null, now: Instant): readonly Finding[] {
  if (at === null) return [];
  const ahead = now - at;
  if (Math.abs(ahead) <= clockBound) return [fine(checkWords('clock fine'))];
  const seconds = Math.round(Math.abs(ahead) / 1000);
  return [mend(checkWords('clock bad', { seconds, way: ahead > 0 ? 'ahead' : 'behind' }))];
}

async function serverOf(ask: Ask, id: string, bot: string): Promise<Server> {
  const [guild, member] = await Promise.all([
    ask<{ readonly owner_id: string; readonly roles: readonly Role[] }>(Routes.guild(id)),
    ask<{ readonly roles: readonly string[] }>(Routes.guildMember(id, bot)),
  ]);
  return { id, owner: guild.body.owner_id, roles: guild.body.roles, own: member.body.roles };
}

async function checkServer(
  ask: Ask,
  options: DiscordOptions,
  application: string,
  bot: string,
  places: readonly BoundPlace[],
): Promise<readonly Finding[]> {
  const [first] = places;
  if (first === undefined) return [];
  try {
    const server = await serverOf(ask, first.tenant, bot);
    return (await Promise.all(places.map((place) => checkPlace(ask, server, bot, place)))).flat();
  } catch (why) {
    if (!saidNo(why, 403, 404)) return [unreachable(why, options)];
    return places.map((place) =>
      mend(checkWords('not in server', { place: placeName(place), invitation: invitation(application) })),
    );
  }
}

/** Asks Discord what it grants; never throws for what Discord does, and ends within eight seconds. */
export async function checkDiscord(
  options: DiscordOptions,
  places: readonly BoundPlace[],
  now: Instant,
): Promise<readonly Finding[]> {
  const ask = openAsk(options);
  try {
    const [me, application] = await Promise.all([
      ask<{ readonly id: string }>(Routes.user()),
      ask<Application>(Routes.currentApplication()),
    ]);
    const tenants = [...new Set(places.map(({ tenant }) => tenant))];
    const perServer = await Promise.all(
      tenants.map((tenant) =>
        checkServer(
          ask,
          options,
          application.body.id,
          me.body.id,
          places.filter((one) => one.tenant === tenant),
        ),
      ),
    );
    return [
      fine(checkWords('token fine')),
      applicationFinding(application.body, options),
      wayFinding(application.body, options),
      ...clockFinding(me.at, now),
      ...(places.length === 0 ? [fine(checkWords('no place'))] : perServer.flat()),
    ];
  } catch (why) {
    return [unreachable(why, options)];
  }
}
