import { PermissionFlagsBits } from 'discord.js';
import type { Who } from '../../../../shared/channel.js';
import { asId, type GroupId } from '../../../../shared/ids.js';
import type { Audience } from '../../../../shared/messages.js';
import { writePressed } from '../custom-id.js';
import { minimumAge } from '../limits.js';
import type { From, Given } from '../read/interaction.js';
import { say, type DiscordKey } from '../words.js';
import type { Answer, Desk } from './desk.js';
import { refusalWords, told, word } from './show.js';

const needed = PermissionFlagsBits.ViewChannel | PermissionFlagsBits.SendMessages;

async function bind(desk: Desk, from: From, who: Who, audience: Audience): Promise<Answer> {
  const tenant = from.tenant ?? '';
  const reply = await desk.house.bindPlace(who, 'discord', tenant, from.room, audience);
  if (!reply.done) return { show: told(refusalWords(reply)) };
  const warnings: DiscordKey[] = [];
  if ((from.may & needed) !== needed) warnings.push('cannot say here');
  const writes = audience.to === 'channel' && (await desk.everyoneWrites(tenant, from.room));
  if (writes === true) warnings.push('pupils can write');
  return { show: told([refusalWords(reply), ...warnings.map((key) => say(key))].join('\n')) };
}

/** Ties this place to a group's talk, once the age was confirmed. */
export async function bindGroup(desk: Desk, from: From, who: Who, group: GroupId): Promise<Answer> {
  return bind(desk, from, who, { to: 'channel', group });
}

/** Ties this place to staff, or asks for the age first where it is for pupils. */
export async function here(desk: Desk, from: From, who: Who, action: string, given: Given): Promise<Answer> {
  if (action === 'staff') return bind(desk, from, who, { to: 'staff', group: null });
  const typed = given.texts['group'] ?? '';
  const groups = await desk.house.suggest(who, 'groups', '');
  const group = groups.find(({ value }) => value === typed) ?? groups.find(({ label }) => label === typed);
  if (group === undefined) return word('bind one');
  const id = writePressed({ does: 'bind', group: asId<GroupId>(group.value) });
  return {
    show: told(say('age first', { age: minimumAge }), [{ id, label: say('old enough'), main: true }]),
  };
}
