import { Routes, type REST } from 'discord.js';
import { everybodyMayWrite, type Overwrite, type Role } from '../permissions.js';

/** Asks Discord whether everybody may write in a place past the bot; null where that can't be seen. */
export async function everyoneWrites(rest: REST, server: string, room: string): Promise<boolean | null> {
  try {
    const [roles, channel] = await Promise.all([
      rest.get(Routes.guildRoles(server)) as Promise<readonly Role[]>,
      rest.get(Routes.channel(room)) as Promise<{ readonly permission_overwrites?: readonly Overwrite[] }>,
    ]);
    return everybodyMayWrite(server, roles, channel.permission_overwrites ?? []);
  } catch {
    return null;
  }
}
