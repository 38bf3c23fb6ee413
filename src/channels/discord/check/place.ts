import { ChannelType, Routes } from 'discord.js';
import type { BoundPlace, Finding } from '../../../../shared/channel.js';
import { bits, everybodyMayWrite, permissions, permissionsIn, writing } from '../permissions.js';
import type { Overwrite, Role } from '../permissions.js';
import { failureCode } from '../send/failure.js';
import { saidNo, type Ask } from './ask.js';
import { checkWords } from './words.js';

/** A server as the bot sees it: its roles and the bot's own. */
export interface Server {
  readonly id: string;
  readonly owner: string;
  readonly roles: readonly Role[];
  readonly own: readonly string[];
}

interface Room {
  readonly name?: string;
  readonly type?: number;
  readonly parent_id?: string | null;
  readonly permission_overwrites?: readonly Overwrite[];
}

const fine = (words: string): Finding => ({ fine: true, words });
const mend = (words: string): Finding => ({ fine: false, words });

const threads: readonly (number | undefined)[] = [
  ChannelType.PublicThread,
  ChannelType.PrivateThread,
  ChannelType.AnnouncementThread,
];

/** How a place is called before it is known by name. */
export function placeName({ room, audience }: BoundPlace, name?: string): string {
  const whose = audience.to === 'channel' ? 'a group’s channel' : 'a staff channel';
  return `${name === undefined ? `channel ${room}` : `#${name}`} (${whose})`;
}

/** What the bot lacks in a place; a group's place needs more than one of the staff. */
function lacking(place: BoundPlace, label: string, may: bigint): readonly Finding[] {
  const wanted = permissions.filter(({ where }) => where === 'everywhere' || place.audience.to === 'channel');
  const lacks = wanted.filter(({ bit }) => (may & bit) === 0n);
  if (lacks.length === 0) return [fine(checkWords('place fine', { place: label }))];
  return lacks.map(({ name, why, without }) =>
    mend(checkWords('lacks', { place: label, name, why, without })),
  );
}

/** Who else can write where a group talks. A role of staff may; whoever runs the server always can. */
function pastTheBot({ id, roles }: Server, label: string, overwrites: readonly Overwrite[]): Finding {
  if (everybodyMayWrite(id, roles, overwrites)) return mend(checkWords('everybody writes', { place: label }));
  const others = roles.filter((role) => {
    if (role.id === id || role.managed) return false;
    if ((BigInt(role.permissions) & bits.Administrator) !== 0n) return false;
    return (permissionsIn(id, roles, overwrites, { roles: [role.id], user: null }) & writing) !== 0n;
  });
  return others.length === 0
    ? fine(checkWords('only the bot writes', { place: label }))
    : fine(
        checkWords('roles write', {
          place: label,
          roles: others.map(({ name, id: role }) => name ?? role).join(', '),
        }),
      );
}

/** Looks at one place that is tied. A thread has the rights of its channel. */
export async function checkPlace(
  ask: Ask,
  server: Server,
  bot: string,
  place: BoundPlace,
): Promise<readonly Finding[]> {
  try {
    const { body: room } = await ask<Room>(Routes.channel(place.room));
    const inside = threads.includes(room.type) && room.parent_id;
    const holder = inside ? (await ask<Room>(Routes.channel(inside))).body : room;
    const overwrites = holder.permission_overwrites ?? [];
    const label = placeName(place, room.name);
    const may =
      server.owner === bot
        ? (1n << 64n) - 1n
        : permissionsIn(server.id, server.roles, overwrites, { roles: server.own, user: bot });
    const others = place.audience.to === 'channel' ? [pastTheBot(server, label, overwrites)] : [];
    return [...lacking(place, label, may), ...others];
  } catch (why) {
    if (saidNo(why, 403, 404)) return [mend(checkWords('no channel', { place: placeName(place) }))];
    return [mend(checkWords('cannot ask', { code: failureCode(why) }))];
  }
}
