import type { WebClient } from '@slack/web-api';
import type { Delivered, Delivery } from '../../../shared/channel.js';
import type { Message } from '../../../shared/messages.js';
import type { Instant } from '../../../shared/time.js';
import { findParts, noThreadCodes } from './history.js';
import type { Workspaces } from './install/workspaces.js';
import type { SlackLog } from './options.js';
import { changeParts, postParts, removeParts, type Spot } from './posts.js';
import { openMemory } from './sent-memory.js';
import { stuckWords } from './stuck.js';
import { troubleOf, type Trouble } from './web.js';
import { say } from './words.js';

/**
 * Messages on their way to Slack. A long message is several posts; together they are one to us, their times joined by commas.
 * What belongs to a practice stands under the first message of it.
 *
 * Slack drops no repeats, so every post carries its nonce in its metadata. Where it isn't known whether a post arrived
 * (the connection broke, Slack failed, the program was ended), the channel's history is asked before it is made again.
 */
export interface Sending {
  deliver(delivery: Delivery): Promise<Delivered>;
  stands(delivery: Delivery): Promise<{ readonly id: string } | null | 'unknown'>;
}

function outcomeOf(trouble: Trouble): Delivered {
  switch (trouble.kind) {
    case 'refused':
      return { stuck: stuckWords(trouble.code) };
    case 'slow down':
      return { again: trouble.until, why: 'Slack asks to wait' };
    case 'not reached':
    case 'in doubt':
      return { again: trouble.until, why: `Slack did not answer (${trouble.code})` };
    default:
      return trouble satisfies never;
  }
}

const idsOf = (text: string | null | undefined): readonly string[] =>
  (text ?? '').split(',').filter((ts) => ts !== '');

/** The post under which a message belongs: the first of its practice in this channel. */
function threadOf({ telling, opening, before }: Delivery): string | null {
  if (!('talk' in telling) || telling.talk === undefined) return null;
  const first = idsOf(opening)[0] ?? null;
  // The first message itself grows in the channel.
  return first === idsOf(before)[0] ? null : first;
}

/** Opens sending over the workspaces' clients. */
export function openSending(
  workspaces: Pick<Workspaces, 'clientOf'>,
  log: SlackLog,
  now: () => Instant,
): Sending {
  const memory = openMemory();
  const spotOf = (delivery: Delivery): Spot => ({
    room: delivery.room,
    nonce: delivery.nonce,
    thread: threadOf(delivery),
  });

  const failed = (nonce: string, why: unknown): Delivered => {
    const trouble = troubleOf(why, now());
    if (trouble.kind === 'in doubt') memory.doubt(nonce);
    log.warn({ nonce, trouble: trouble.kind }, 'a message did not reach Slack');
    return outcomeOf(trouble);
  };

  /** Posts under the first message, or in the channel where that can't be. */
  const post = async (
    client: WebClient,
    spot: Spot,
    message: Message,
    there: ReadonlyMap<number, string>,
  ): Promise<{ readonly sent: string; readonly tell?: string }> => {
    try {
      return { sent: (await postParts(client, spot, message, there)).join(',') };
    } catch (why) {
      const trouble = troubleOf(why, now());
      if (spot.thread === null || trouble.kind !== 'refused' || !noThreadCodes.has(trouble.code)) throw why;
      const ids = await postParts(client, { ...spot, thread: null }, message, there);
      return { sent: ids.join(','), tell: say('thread gone', { code: trouble.code }) };
    }
  };

  const sayIt = async (client: WebClient, delivery: Delivery, message: Message): Promise<Delivered> => {
    const { nonce, tenant, room } = delivery;
    const before = memory.idOf(nonce);
    if (before !== undefined) return { sent: before };
    if (delivery.again) memory.doubt(nonce);
    const place = `${tenant}/${room}`;
    const spot = spotOf(delivery);
    let there: ReadonlyMap<number, string> = new Map();
    if (memory.mayStand(nonce, place)) {
      const found = await findParts(client, room, nonce, spot.thread);
      if (found.kind === 'found') there = found.parts;
      else if (found.kind === 'failed') return failed(nonce, found.why);
      else if (memory.isDoubtful(nonce)) return { stuck: say('stuck unsure', { code: found.code }) };
    }
    try {
      const outcome = await post(client, spot, message, there);
      memory.arrived(nonce, place, outcome.sent);
      return outcome;
    } catch (why) {
      return failed(nonce, why);
    }
  };

  /** The posts of a message with those that an earlier try to change it may have added. */
  const grown = async (
    client: WebClient,
    { room, nonce, thread }: Spot,
    before: readonly string[],
    again: boolean,
  ): Promise<readonly string[]> => {
    if (!again && !memory.isDoubtful(nonce)) return before;
    const found = await findParts(client, room, nonce, thread);
    if (found.kind === 'failed') throw found.why;
    if (found.kind === 'closed') return before;
    const last = Math.max(before.length - 1, ...found.parts.keys());
    const all = Array.from({ length: last + 1 }, (_, part) => before[part] ?? found.parts.get(part) ?? '');
    return all.filter((ts) => ts !== '');
  };

  const replaceIt = async (client: WebClient, delivery: Delivery, message: Message): Promise<Delivered> => {
    const { tenant, room, nonce } = delivery;
    const before = idsOf(delivery.before);
    const spot = spotOf(delivery);
    try {
      const standing = await grown(client, spot, before, delivery.again ?? false);
      const ids = await changeParts(client, spot, message, standing);
      if (ids !== null) {
        memory.arrived(nonce, `${tenant}/${room}`, ids.join(','));
        return { sent: ids.join(',') };
      }
      await removeParts(client, room, before);
    } catch (why) {
      return failed(nonce, why);
    }
    return sayIt(client, delivery, message);
  };

  const withdrawIt = async (client: WebClient, { room, nonce, before }: Delivery): Promise<Delivered> => {
    try {
      await removeParts(client, room, idsOf(before));
      return { sent: null };
    } catch (why) {
      return failed(nonce, why);
    }
  };

  return {
    async deliver(delivery) {
      const { telling, tenant } = delivery;
      // News for one person waits in their tray: "For you" opens it.
      if (telling.do !== 'withdraw' && telling.message.audience.to === 'person') return { sent: null };
      const client = await workspaces.clientOf(tenant);
      if (client === null) return { stuck: say('stuck workspace') };
      switch (telling.do) {
        case 'say':
          return sayIt(client, delivery, telling.message);
        case 'replace':
          return idsOf(delivery.before).length === 0
            ? sayIt(client, delivery, telling.message)
            : replaceIt(client, delivery, telling.message);
        case 'withdraw':
          return withdrawIt(client, delivery);
        default:
          return telling satisfies never;
      }
    },
    async stands(delivery) {
      const { telling, tenant, room, nonce, before } = delivery;
      // Changing or taking away what stands may be done twice.
      if (telling.do === 'withdraw' || (telling.do === 'replace' && idsOf(before).length > 0)) return null;
      const client = await workspaces.clientOf(tenant);
      if (client === null) return 'unknown';
      const found = await findParts(client, room, nonce, threadOf(delivery));
      if (found.kind !== 'found') return 'unknown';
      if (found.parts.size === 0) return null;
      // A long message of which only some parts arrived is gone on with, not repeated.
      if (found.parts.size < found.of) {
        memory.doubt(nonce);
        return null;
      }
      const ids = Array.from({ length: found.of }, (_, part) => found.parts.get(part) ?? '');
      return { id: ids.join(',') };
    },
  };
}
