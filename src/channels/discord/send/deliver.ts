import { MessageFlags, Routes, type REST } from 'discord.js';
import type { Delivered, Delivery } from '../../../../shared/channel.js';
import { writePressed } from '../custom-id.js';
import { limits } from '../limits.js';
import { openMemory } from '../memory.js';
import type { DiscordLog } from '../options.js';
import { payloadsOf, type Payload } from '../render/payloads.js';
import type { Button } from '../render/pieces.js';
import { say } from '../words.js';
import { afterFailure, failureCode, isGone, isUncertain } from './failure.js';
import { findSent } from './find-sent.js';
import { readSentId, writeSentId, type SentId } from './sent-id.js';

type Told = Exclude<Delivery['telling'], { do: 'withdraw' }>;

/** How long, in milliseconds, Discord is trusted to drop a repeat of the same nonce; it says "a few minutes". */
const nonceHolds = 100_000;

/** The button below a told message: what is for one person alone isn't shown here. Its mark finds the message again. */
function footOf(telling: Told, nonce: string): readonly Button[] {
  const staff = telling.message.audience.to === 'staff';
  const action = { kind: 'look', name: staff ? 'waiting' : 'for-you', args: {} } as const;
  const id = writePressed({ does: 'act', action }, nonce);
  return [{ id, label: say(staff ? 'what waits' : 'for you'), main: false }];
}

/** The payloads of a delivery; `laidOut` where the message that is replaced was. */
export function payloadsFor(telling: Told, nonce: string, laidOut: boolean): readonly Payload[] {
  return payloadsOf(telling.message, { origin: null, foot: footOf(telling, nonce), laidOut });
}

function isLaidOut({ flags }: Payload): boolean {
  return (flags & MessageFlags.IsComponentsV2) !== 0;
}

/** Each part has a nonce of its own. */
function nonceOf(nonce: string, part: number): string {
  return part === 0 ? nonce.slice(0, limits.nonce) : `${nonce.slice(0, limits.nonce - 3)}-${part}`;
}

export interface Sender {
  deliver(delivery: Delivery): Promise<Delivered>;
  stands(delivery: Delivery): Promise<{ readonly id: string } | null | 'unknown'>;
}

/** Says, replaces and withdraws messages in channels; never throws for what Discord does. */
export function openSender(
  rest: REST,
  log: DiscordLog,
  now: () => number,
  ownId: () => string | null,
): Sender {
  const failures = new Map<string, number>();
  /** Since when nobody knows whether a message arrived, by nonce. */
  const uncertain = openMemory<number>(1000, 3_600_000, now);

  const post = async (room: string, payload: Payload, nonce: string): Promise<string> => {
    const body = { ...payload, nonce, enforce_nonce: true };
    return ((await rest.post(Routes.channelMessages(room), { body })) as { readonly id: string }).id;
  };
  const remove = async (room: string, id: string): Promise<void> => {
    await rest.delete(Routes.channelMessage(room, id)).catch((why: unknown) => {
      if (!isGone(why)) throw why;
    });
  };

  const sayAnew = async ({ room, nonce }: Delivery, payloads: readonly Payload[]): Promise<SentId> => {
    const ids: string[] = [];
    for (const [part, payload] of payloads.entries())
      ids.push(await post(room, payload, nonceOf(nonce, part)));
    return { laidOut: payloads.some(isLaidOut), ids };
  };

  const replace = async (
    delivery: Delivery,
    payloads: readonly Payload[],
    before: SentId,
  ): Promise<SentId> => {
    const ids: string[] = [];
    try {
      for (const [part, payload] of payloads.entries()) {
        const old = before.ids[part];
        if (old === undefined) {
          ids.push(await post(delivery.room, payload, nonceOf(delivery.nonce, part)));
          continue;
        }
        const body = isLaidOut(payload) ? { ...payload, content: null } : payload;
        await rest.patch(Routes.channelMessage(delivery.room, old), { body });
        ids.push(old);
      }
    } catch (why) {
      if (!isGone(why)) throw why;
      for (const id of before.ids) await remove(delivery.room, id);
      return sayAnew(delivery, payloads);
    }
    for (const id of before.ids.slice(payloads.length)) await remove(delivery.room, id);
    return { laidOut: payloads.some(isLaidOut), ids };
  };

  const stands: Sender['stands'] = async (delivery) => {
    const { telling, nonce } = delivery;
    if (telling.do !== 'say') return null;
    try {
      const payloads = payloadsFor(telling, nonce, false);
      const found = await findSent(rest, delivery.room, nonce, payloads.length, ownId());
      if (found === null || found === 'unknown') return found;
      return { id: writeSentId({ laidOut: payloads.some(isLaidOut), ids: found }) };
    } catch (why) {
      log.warn({ code: failureCode(why) }, 'history can’t be read on Discord');
      return 'unknown';
    }
  };

  const tryOnce = async (delivery: Delivery): Promise<string | null> => {
    const { telling, nonce } = delivery;
    const before = readSentId(delivery.before);
    if (telling.do === 'withdraw') {
      for (const id of before.ids) await remove(delivery.room, id);
      return null;
    }
    const since = uncertain.find(nonce);
    if (telling.do === 'say' && since !== undefined && now() - since > nonceHolds) {
      const there = await stands(delivery);
      if (there !== null && there !== 'unknown') return there.id;
    }
    const payloads = payloadsFor(telling, nonce, before.laidOut);
    const sent =
      before.ids.length === 0 ? await sayAnew(delivery, payloads) : await replace(delivery, payloads, before);
    return writeSentId(sent);
  };

  return {
    stands,
    async deliver(delivery) {
      const { room, nonce } = delivery;
      try {
        const sent = await tryOnce(delivery);
        failures.delete(room);
        uncertain.drop(nonce);
        return { sent };
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
