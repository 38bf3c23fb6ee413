import { messageFaults, threadFaults, type AnyPayload } from './discord-limits.js';

/** A message that stands in a room. */
export interface Standing extends AnyPayload {
  readonly id: string;
  readonly author: { readonly id: string };
}

/** What the bot may not do in a room: see it, write, read history, begin threads, write in them. */
export type Forbidden = 'see' | 'write' | 'read' | 'threads' | 'write in threads';

/** What a right is called in Discord's bit set. */
export const bits: Readonly<Record<Forbidden, bigint>> = {
  see: 1n << 10n,
  write: 1n << 11n,
  read: 1n << 16n,
  threads: 1n << 35n,
  'write in threads': 1n << 38n,
};

export interface StandInReply {
  readonly status: number;
  readonly body?: unknown;
}

/** Discord's answer where it says no by a code. */
export function saysNo(status: number, code: number): StandInReply {
  return { status, body: { code, message: `error ${code}` } };
}

interface Room {
  readonly id: string;
  /** The channel of a thread, null for a channel. */
  readonly parent: string | null;
  readonly name: string;
  readonly messages: Standing[];
  readonly forbidden: Set<Forbidden>;
  open: boolean;
  archived: boolean;
  locked: boolean;
}

/** Channels and threads of the stand-in's server, as the bot may use them. */
export interface StandInRooms {
  /** Messages of a channel and of its threads, oldest first. */
  all(id: string): readonly Standing[];
  /** Messages of a channel or a thread alone. */
  only(id: string): readonly Standing[];
  threads(id: string): readonly { readonly id: string; readonly name: string; readonly archived: boolean }[];
  open(id: string): void;
  close(id: string): void;
  /** Archives a thread; locked, only who runs the server opens it again. */
  archive(id: string, locked: boolean): void;
  forbid(id: string, what: Forbidden, on: boolean): void;
  forbidden(id: string): ReadonlySet<Forbidden>;
  remove(id: string, message: string): void;
  /** Answers what is asked of channels; parts are the path after "channels". */
  answer(method: string, parts: readonly string[], body: unknown): StandInReply;
}

const numberOf = (id: string): bigint => BigInt(/^\d+$/.test(id) ? id : '0');

/** Opens the rooms; `check` keeps breaches of published limits and says no where there are some. */
export function openRooms(tools: {
  readonly bot: string;
  readonly botRole: string;
  readonly nextId: () => string;
  readonly check: (what: string, faults: readonly string[]) => StandInReply | null;
}): StandInRooms {
  const rooms = new Map<string, Room>();
  const make = (id: string, parent: string | null, name: string): Room => {
    const room: Room = {
      id,
      parent,
      name,
      messages: [],
      forbidden: new Set(),
      open: true,
      archived: false,
      locked: false,
    };
    rooms.set(id, room);
    return room;
  };
  const opened = (id: string): Room => {
    const room = rooms.get(id) ?? make(id, null, `room-${id}`);
    room.open = true;
    return room;
  };
  const may = ({ parent, forbidden }: Room, what: Forbidden): boolean => {
    const rights = parent === null ? forbidden : (rooms.get(parent)?.forbidden ?? forbidden);
    return !rights.has(what);
  };
  const threadsOf = (id: string): readonly Room[] =>
    [...rooms.values()].filter(({ parent }) => parent === id);

  const post = (room: Room, payload: AnyPayload & { enforce_nonce?: boolean }): StandInReply => {
    if (!may(room, room.parent === null ? 'write' : 'write in threads')) return saysNo(403, 50013);
    if (room.archived && room.locked) return saysNo(400, 50083);
    const same = room.messages.find(({ nonce }) => nonce !== undefined && nonce === payload.nonce);
    if (payload.enforce_nonce && same) return { status: 200, body: same };
    const wrong = tools.check('message', messageFaults(payload));
    if (wrong) return wrong;
    room.archived = false;
    const made: Standing = { ...payload, id: tools.nextId(), author: { id: tools.bot } };
    room.messages.push(made);
    return { status: 200, body: made };
  };

  const inMessage = (method: string, room: Room, message: string, body: unknown): StandInReply => {
    const at = room.messages.findIndex((one) => one.id === message);
    const old = room.messages[at];
    if (old === undefined) return saysNo(404, 10008);
    if (method === 'DELETE') {
      room.messages.splice(at, 1);
      return { status: 204 };
    }
    if (!may(room, 'write')) return saysNo(403, 50013);
    if (room.archived) return saysNo(400, 50083);
    const edited: Standing = { ...old, ...(body as AnyPayload), id: old.id, author: old.author };
    const wentBack = ((old.flags ?? 0) & 32768) !== 0 && ((edited.flags ?? 0) & 32768) === 0;
    const faults = [...messageFaults(edited), ...(wentBack ? ['laid out went back to plain'] : [])];
    const wrong = tools.check('edit', faults);
    if (wrong) return wrong;
    room.messages[at] = edited;
    return { status: 200, body: edited };
  };

  const begin = (room: Room, message: string, body: unknown): StandInReply => {
    if (room.parent !== null) return saysNo(400, 50024);
    if (!may(room, 'threads')) return saysNo(403, 50013);
    if (rooms.get(message)?.open) return saysNo(400, 160004);
    if (!room.messages.some(({ id }) => id === message)) return saysNo(404, 10008);
    const asked = body as { readonly name?: string; readonly auto_archive_duration?: number };
    const wrong = tools.check('thread', threadFaults(asked));
    if (wrong) return wrong;
    const { id, name } = make(message, room.id, asked.name ?? '');
    return { status: 201, body: { id, name, type: 11, parent_id: room.id } };
  };

  const inRoom = (method: string, room: Room, body: unknown): StandInReply => {
    if (method === 'PATCH') {
      if (room.locked) return saysNo(403, 50013);
      room.archived = (body as { readonly archived?: boolean }).archived ?? room.archived;
    }
    const denied = [...room.forbidden].reduce((sum, what) => sum | bits[what], 0n);
    return {
      status: 200,
      body: {
        id: room.id,
        name: room.name,
        type: room.parent === null ? 0 : 11,
        parent_id: room.parent,
        last_message_id: room.messages.at(-1)?.id ?? null,
        permission_overwrites:
          denied === 0n ? [] : [{ id: tools.botRole, type: 0, allow: '0', deny: String(denied) }],
      },
    };
  };

  return {
    all: (id) =>
      [id, ...threadsOf(id).map((thread) => thread.id)]
        .flatMap((one) => rooms.get(one)?.messages ?? [])
        .toSorted((a, b) => (numberOf(a.id) < numberOf(b.id) ? -1 : 1)),
    only: (id) => rooms.get(id)?.messages ?? [],
    threads: (id) => threadsOf(id).filter(({ open }) => open),
    open: (id) => void opened(id),
    close(id) {
      // A channel's threads go with it.
      for (const room of [...rooms.values()].filter((one) => one.id === id || one.parent === id))
        room.open = false;
    },
    archive(id, locked) {
      Object.assign(opened(id), { archived: true, locked });
    },
    forbid(id, what, on) {
      if (on) opened(id).forbidden.add(what);
      else opened(id).forbidden.delete(what);
    },
    forbidden: (id) => rooms.get(id)?.forbidden ?? new Set(),
    remove(id, message) {
      for (const { messages } of [opened(id), ...threadsOf(id)]) {
        const at = messages.findIndex((one) => one.id === message);
        if (at >= 0) messages.splice(at, 1);
      }
    },
    answer(method, [id = '', second = '', message = '', fourth = ''], body) {
      const room = rooms.get(id);
      if (!room?.open) return saysNo(404, 10003);
      if (!may(room, 'see')) return saysNo(403, 50001);
      if (second === '') return inRoom(method, room, body);
      if (fourth === 'threads') return begin(room, message, body);
      if (method === 'GET') {
        return { status: 200, body: may(room, 'read') ? room.messages.toReversed().slice(0, 100) : [] };
      }
      return method === 'POST'
        ? post(room, body as AnyPayload & { enforce_nonce?: boolean })
        : inMessage(method, room, message, body);
    },
  };
}
