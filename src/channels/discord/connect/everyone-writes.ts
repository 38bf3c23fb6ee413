import { OverwriteType, PermissionFlagsBits, Routes, type REST } from 'discord.js';

interface Role {
  readonly id: string;
  readonly permissions: string;
}
interface Overwrite {
  readonly id: string;
  readonly type: OverwriteType;
  readonly allow: string;
  readonly deny: string;
}

/** Whether the role that everybody has may write in a channel (Discord's "permission hierarchy"): the server's right, then the channel's. */
export function mayWrite(server: string, roles: readonly Role[], overwrites: readonly Overwrite[]): boolean {
  const write = PermissionFlagsBits.SendMessages;
  const base = BigInt(roles.find(({ id }) => id === server)?.permissions ?? '0');
  const own = overwrites.find(({ id, type }) => id === server && type === OverwriteType.Role);
  if (own && (BigInt(own.allow) & write) !== 0n) return true;
  if (own && (BigInt(own.deny) & write) !== 0n) return false;
  return (base & write) !== 0n;
}

/** Asks Discord whether everybody may write in a place past the bot; null where that can't be seen. */
export async function everyoneWrites(rest: REST, server: string, room: string): Promise<boolean | null> {
  try {
    const [roles, channel] = await Promise.all([
      rest.get(Routes.guildRoles(server)) as Promise<readonly Role[]>,
      rest.get(Routes.channel(room)) as Promise<{ readonly permission_overwrites?: readonly Overwrite[] }>,
    ]);
    return mayWrite(server, roles, channel.permission_overwrites ?? []);
  } catch {
    return null;
  }
}
