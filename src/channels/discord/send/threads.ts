import { DiscordAPIError, Routes, type REST } from 'discord.js';
import type { Delivery } from '../../../../shared/channel.js';
import { limits } from '../limits.js';
import { openMemory } from '../memory.js';
import { say } from '../words.js';
import { codes, saysCode } from './failure.js';
import { readSentId } from './sent-id.js';

/**
 * One thread for each practice, begun from the first message that its channel gets, whose id it has (Discord's "Start
 * Thread from Message"). All that follows stands in it. Where none can be begun, the talk goes on in the channel.
 */
export interface Threads {
  /** The thread in which a message belongs, whether it is there or not; null for the channel itself. */
  of(delivery: Delivery): string | null;
  /** Begins the thread from the practice's first message; false where that can't be done. */
  begin(delivery: Delivery, message: string): Promise<boolean>;
  /** Runs some work in the thread, which is begun or opened again where it must be; null where it can't be, and the channel has to do. */
  inside<T>(delivery: Delivery, thread: string, work: () => Promise<T>): Promise<T | null>;
  /** Runs some work in a place, which is opened again where it is an archived thread. */
  open<T>(place: string, work: () => Promise<T>): Promise<T>;
  /** What staff have to hear of a place where no thread can be begun; each time it is asked it is said once. */
  complaint(room: string): string | null;
}

/** How long, in milliseconds, a place is known to allow no thread, before it is tried again. */
const remembered = 600_000;

/** How long, in minutes, a thread stays in sight without a message; the longest that Discord has. */
const archiveAfter = 10_080;

/** Begins, finds and opens threads. */
export function openThreads(rest: REST, now: () => number): Threads {
  const without = openMemory<true>(500, remembered, now);
  const complaints = new Map<string, string>();

  const give = (room: string, key: 'no threads' | 'thread gone' | null): void => {
    if (without.find(room) === undefined && key !== null) complaints.set(room, say(key));
    without.keep(room, true);
  };

  const begin: Threads['begin'] = async ({ room, telling }, message) => {
    const title = 'talk' in telling ? (telling.talk?.title ?? '') : '';
    const name = title.trim().slice(0, limits.threadName).trim() || say('talk');
    try {
      const body = { name, auto_archive_duration: archiveAfter };
      await rest.post(Routes.threads(room, message), { body });
      return true;
    } catch (why) {
      if (saysCode(why, codes.hasThread)) return true;
      if (saysCode(why, codes.noPermission, codes.noAccess)) give(room, 'no threads');
      else if (saysCode(why, codes.unknownMessage, codes.manyThreads)) give(room, 'thread gone');
      // Some places, threads among them, hold no threads.
      else if (saysCode(why, codes.wrongPlace)) give(room, null);
      else throw why;
      return false;
    }
  };

  const open: Threads['open'] = async (place, work) => {
    try {
      return await work();
    } catch (why) {
      if (!saysCode(why, codes.archived)) throw why;
      try {
        await rest.patch(Routes.channel(place), { body: { archived: false } });
      } catch (second) {
        // Locked by staff: that it is archived says best what is in the way.
        throw second instanceof DiscordAPIError ? why : second;
      }
      return work();
    }
  };

  return {
    of({ room, telling, opening }) {
      if (!('talk' in telling) || telling.talk === undefined || opening === undefined) return null;
      if (without.find(room) !== undefined) return null;
      const first = readSentId(opening);
      return first.thread ?? first.ids[0] ?? null;
    },
    begin,
    open,
    async inside(delivery, thread, work) {
      const refused = [codes.noPermission, codes.noAccess] as const;
      try {
        return await open(thread, work);
      } catch (why) {
        if (saysCode(why, ...refused)) give(delivery.room, 'no threads');
        if (saysCode(why, ...refused)) return null;
        if (!saysCode(why, codes.unknownChannel)) throw why;
      }
      if (!(await begin(delivery, thread))) return null;
      try {
        return await open(thread, work);
      } catch (why) {
        if (!saysCode(why, codes.unknownChannel, ...refused)) throw why;
        give(delivery.room, saysCode(why, ...refused) ? 'no threads' : 'thread gone');
        return null;
      }
    },
    complaint(room) {
      const words = complaints.get(room) ?? null;
      complaints.delete(room);
      return words;
    },
  };
}
