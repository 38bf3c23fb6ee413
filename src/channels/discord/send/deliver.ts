import { Routes, type REST } from 'discord.js';
import type { Delivered, Delivery } from '../../../../shared/channel.js';
import { openMemory } from '../memory.js';
import type { DiscordLog } from '../options.js';
import type { Payload } from '../render/payloads.js';
import { say } from '../words.js';
import { afterFailure, codes, failureCode, isGone, isUncertain, saysCode } from './failure.js';
import { findSent } from './find-sent.js';
import { readSentId, writeSentId, type SentId } from './sent-id.js';
import { openThreads } from './threads.js';
import { isLaidOut, nonceOf, payloadsFor, type Told } from './told-payloads.js';

/** How long, in milliseconds, Discord is trusted to drop a repeat of the same nonce; it says "a few minutes". */
const nonceHolds = 100_000;

export interface Sender {
  deliver(delivery: Delivery): Promise<Delivered>;
  stands(delivery: Delivery): Promise<{ readonly id: string } | null | 'unknown'>;
}

/** Says, replaces and withdraws messages in channels and their threads; never throws for what Discord does. */
export function openSender(
  rest: REST,
  log: DiscordLog,
  now: () => number,
  ownId: () => string | null,
): Sender {
  const failures = new Map<string, number>();
  /** Since when nobody knows whether a message arrived, by nonce. */
  const uncertain = openMemory<number>(1000, 3_600_000, now);
  const threads = openThreads(rest, now);

  const post = async (place: string, payload: Payload, nonce: string): Promise<string> => {
    const body = { ...payload, nonce, enforce_nonce: true };
    return ((await rest.post(Routes.channelMessages(place), { body })) as { readonly id: string }).id;
  };
  const remove = async (place: string, id: string): Promise<void> => {
    await rest.delete(Routes.channelMessage(place, id)).catch((why: unknown) => {
      if (!isGone(why) && !saysCode(why, codes.unknownChannel)) throw why;
    });
  };
  const removeAll = async ({ room }: Delivery, { thread, ids }: SentId): Promise<void> => {
    const place = thread ?? room;
    for (const id of ids) await threads.open(place, () => remove(place, id));
  };

  const postAll = async (place: string, nonce: string, payloads: readonly Payload[]): Promise<string[]> => {
    const ids: string[] = [];
    for (const [part, payload] of payloads.entries())
      ids.push(await post(place, payload, nonceOf(nonce, part)));
    return ids;
  };

  const sayAnew = async (delivery: Delivery, payloads: readonly Payload[]): Promise<SentId> => {
    const { room, nonce, telling, opening } = delivery;
    const laidOut = payloads.some(isLaidOut);
    const thread = threads.of(delivery);
    if (thread !== null) {
      const ids = await threads.inside(delivery, thread, () => postAll(thread, nonce, payloads));
      if (ids !== null) return { laidOut, ids, thread };
    }
    const ids = await postAll(room, nonce, payloads);
    const [first] = ids;
    if ('talk' in telling && telling.talk && opening === undefined && first !== undefined) {
      // The message stands; where the line breaks now, the next one begins the thread.
      await threads.begin(delivery, first).catch((why: unknown) => {
        log.warn({ code: failureCode(why), room }, 'a thread was not begun on Discord');
      });
    }
    return { laidOut, ids, thread: null };
  };

  const replace = async (
    delivery: Delivery,
    payloads: readonly Payload[],
    before: SentId,
  ): Promise<SentId> => {
    const place = before.thread ?? delivery.room;
    const ids: string[] = [];
    try {
      for (const [part, payload] of payloads.entries()) {
        const old = before.ids[part];
        if (old === undefined) {
          ids.push(await threads.open(place, () => post(place, payload, nonceOf(delivery.nonce, part))));
          continue;
        }
        const body = isLaidOut(payload) ? { ...payload, content: null } : payload;
        await threads.open(place, () => rest.patch(Routes.channelMessage(place, old), { body }));
        ids.push(old);
      }
    } catch (why) {
      const threadGone = before.thread !== null && saysCode(why, codes.unknownChannel);
      if (!isGone(why) && !threadGone) throw why;
      await removeAll(delivery, before);
      return sayAnew(delivery, payloads);
    }
    await removeAll(delivery, { ...before, ids: before.ids.slice(payloads.length) });
    return { laidOut: payloads.some(isLaidOut), ids, thread: before.thread };
  };

  /** Where a message may stand: in its thread, and in the channel where that could not be begun. */
  const findIn = async (delivery: Delivery, telling: Told): Promise<SentId | null | 'unknown'> => {
    const { room, nonce } = delivery;
    const payloads = payloadsFor(telling, nonce, readSentId(delivery.before).laidOut);
    const laidOut = payloads.some(isLaidOut);
    const thread = threads.of(delivery) ?? readSentId(delivery.before).thread;
    if (thread !== null) {
      const found = await findSent(rest, thread, nonce, payloads.length, ownId()).catch((why: unknown) => {
        if (saysCode(why, codes.unknownChannel)) return null;
        throw why;
      });
      if (found === 'unknown') return found;
      if (found !== null) return { laidOut, ids: found, thread };
    }
    const found = await findSent(rest, room, nonce, payloads.length, ownId());
    return found === null || found === 'unknown' ? found : { laidOut, ids: found, thread: null };
  };

  const stands: Sender['stands'] = async (delivery) => {
    const { telling, before } = delivery;
    if (telling.do === 'withdraw') return null;
    // Putting new words where old ones stand may be done twice; only what was said anew must be found.
    const unknown = telling.do === 'replace' && readSentId(before).ids.length > 0 ? null : 'unknown';
    try {
      const found = await findIn(delivery, telling);
      if (found === 'unknown') return unknown;
      return found === null ? null : { id: writeSentId(found) };
    } catch (why) {
      log.warn({ code: failureCode(why) }, 'history can’t be read on Discord');
      return unknown;
    }
  };

  const tryOnce = async (delivery: Delivery): Promise<Delivered> => {
    const { telling, nonce } = delivery;
    const before = readSentId(delivery.before);
    if (telling.do === 'withdraw') {
      await removeAll(delivery, before);
      return { sent: null };
    }
    // Begun by a process that ended, at most the sender's patience ago: asked of history before long, however often it fails now.
    if (delivery.again && uncertain.find(nonce) === undefined) uncertain.keep(nonce, now() - nonceHolds / 2);
    const since = uncertain.find(nonce);
    if (since !== undefined && now() - since > nonceHolds) {
      const there = await stands(delivery);
      if (there === 'unknown') return { stuck: say('unsure') };
      if (there !== null) return { sent: there.id };
    }
    const payloads = payloadsFor(telling, nonce, before.laidOut);
    const sent =
      before.ids.length === 0 ? await sayAnew(delivery, payloads) : await replace(delivery, payloads, before);
    return { sent: writeSentId(sent) };
  };

  return {
    stands,
    async deliver(delivery) {
      const { room, nonce } = delivery;
      try {
        const outcome = await tryOnce(delivery);
        failures.delete(room);
        if ('sent' in outcome) uncertain.drop(nonce);
        const tell = 'sent' in outcome ? threads.complaint(room) : null;
        return tell === null ? outcome : { ...outcome, tell };
      } catch (why) {
        const tries = (failures.get(room) ?? 0) + 1;
        failures.set(room, tries);
        if (isUncertain(why) && uncertain.find(nonce) === undefined) uncertain.keep(nonce, now());
        const outcome = afterFailure(why, now(), tries);
        log.warn(
          { code: failureCode(why), room, stuck: 'stuck' in outcome },
          'a message did not go out on Discord',
        );
        return outcome;
      }
    },
  };
}
