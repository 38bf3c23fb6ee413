/** Bits of Discord's permissions (its API documentation, "Permissions"). */
export const bits = {
  Administrator: 1n << 3n,
  ViewChannel: 1n << 10n,
  SendMessages: 1n << 11n,
  ReadMessageHistory: 1n << 16n,
  CreatePublicThreads: 1n << 35n,
  SendMessagesInThreads: 1n << 38n,
} as const;

/** Whom a channel's own rule is for, as Discord counts them. */
export const overwriteFor = { role: 0, member: 1 } as const;

/** A permission that the bot needs, with why, and what is lost without it; `least` marks those without which nothing works. */
export interface Permission {
  readonly bit: bigint;
  /** As Discord's own settings call it. */
  readonly name: string;
  readonly why: string;
  readonly without: string;
  /** Wanted in every place, or only where a group talks. */
  readonly where: 'everywhere' | 'talk';
  readonly least: boolean;
}

/** Every permission that the bot asks for. Answers to a person need none: they are part of the interaction. */
export const permissions: readonly Permission[] = [
  {
    bit: bits.ViewChannel,
    name: 'View Channel',
    why: 'the bot sees the place at all',
    without: 'nothing can be written there',
    where: 'everywhere',
    least: true,
  },
  {
    bit: bits.SendMessages,
    name: 'Send Messages',
    why: 'posts, changes and withdraws its own messages',
    without: 'nothing can be written there',
    where: 'everywhere',
    least: true,
  },
  {
    bit: bits.ReadMessageHistory,
    name: 'Read Message History',
    why: 'finds its own message again after a crash; nobody else’s words are kept or used',
    without: 'after a crash the place stops and asks staff whether a message arrived',
    where: 'everywhere',
    least: false,
  },
  {
    bit: bits.CreatePublicThreads,
    name: 'Create Public Threads',
    why: 'each text gets a thread of its own',
    without: 'all talk stands in the channel itself',
    where: 'talk',
    least: false,
  },
  {
    bit: bits.SendMessagesInThreads,
    name: 'Send Messages in Threads',
    why: 'writes the parts and the talk into that thread',
    without: 'all talk stands in the channel itself',
    where: 'talk',
    least: false,
  },
];

/** Rights by which somebody writes in a place without the bot. */
export const writing = bits.SendMessages | bits.SendMessagesInThreads;

export interface Role {
  readonly id: string;
  readonly name?: string;
  readonly permissions: string;
  /** Belongs to a bot or another service. */
  readonly managed?: boolean;
}
export interface Overwrite {
  readonly id: string;
  readonly type: number;
  readonly allow: string;
  readonly deny: string;
}

const all = (1n << 64n) - 1n;

/**
 * What somebody with some roles may do in a channel (Discord's "permission hierarchy"): the server's right for everybody
 * and for the roles; then the channel's for everybody, for the roles together, for the member. Who administers may all.
 */
export function permissionsIn(
  server: string,
  roles: readonly Role[],
  overwrites: readonly Overwrite[],
  who: { readonly roles: readonly string[]; readonly user: string | null },
): bigint {
  const own = new Set([server, ...who.roles]);
  const base = roles
    .filter(({ id }) => own.has(id))
    .reduce((sum, role) => sum | BigInt(role.permissions), 0n);
  if ((base & bits.Administrator) !== 0n) return all;
  const change = (before: bigint, some: readonly Overwrite[]): bigint => {
    const denied = some.reduce((sum, { deny }) => sum | BigInt(deny), 0n);
    const allowed = some.reduce((sum, { allow }) => sum | BigInt(allow), 0n);
    return (before & ~denied) | allowed;
  };
  const ofRoles = overwrites.filter(({ type }) => type === overwriteFor.role);
  const steps = [
    ofRoles.filter(({ id }) => id === server),
    ofRoles.filter(({ id }) => id !== server && own.has(id)),
    overwrites.filter(({ id, type }) => type === overwriteFor.member && id === who.user),
  ];
  return steps.reduce(change, base);
}

/** Whether the role that everybody has may write in a channel or its threads. Who can't see the place now may be given sight of it by another role, so sight doesn't count. */
export function everybodyMayWrite(
  server: string,
  roles: readonly Role[],
  overwrites: readonly Overwrite[],
): boolean {
  return (permissionsIn(server, roles, overwrites, { roles: [], user: null }) & writing) !== 0n;
}

/** All permissions as the one number of an invitation. */
export function invitation(applicationId: string): string {
  const sum = permissions.reduce((so, { bit }) => so | bit, 0n);
  return `https://discord.com/oauth2/authorize?client_id=${applicationId}&scope=bot+applications.commands&permissions=${sum}`;
}
