import type { WebClient } from '@slack/web-api';
import type { Delivered, Delivery } from '../../../shared/channel.js';
import type { Message } from '../../../shared/messages.js';
import type { Instant } from '../../../shared/time.js';
import { findParts } from './history.js';
import type { SlackLog } from './options.js';
import { changeParts, postParts, removeParts } from './posts.js';
import { stuckWords } from './stuck.js';
import { troubleOf, type Trouble } from './web.js';
import { say } from './words.js';

/**
 * Messages on their way to Slack. A long message is several posts; together they are one to us, their times joined by commas.
 *
 * Slack drops no repeats, so every post carries its nonce in its metadata. Where it isn't known whether a post arrived
 * (the connection broke, Slack failed, the program was ended), the channel's history is asked before it is made again.
 */
export interface Sending {
  deliver(delivery: Delivery): Promise<Delivered>;
  stands(delivery: Delivery): Promise<{ readonly id: string } | null | 'unknown'>;
}

/** How many nonces are remembered. */
const remembered = 2000;

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

/** What this process knows of its messages: which arrived, of which that is in doubt, and where it has posted before. */
class Memory {
  readonly #sent = new Map<string, string>();
  readonly #doubtful = new Set<string>();
  readonly #places = new Set<string>();

  idOf(nonce: string): string | undefined {
    return this.#sent.get(nonce);
  }
  arrived(nonce: string, place: string, id: string): void {
    this.#doubtful.delete(nonce);
    this.#places.add(place);
    this.#sent.set(nonce, id);
    const [oldest] = this.#sent.keys();
    if (this.#sent.size > remembered && oldest !== undefined) this.#sent.delete(oldest);
  }
  doubt(nonce: string): void {
    this.#doubtful.add(nonce);
  }
  isDoubtful(nonce: string): boolean {
    return this.#doubtful.has(nonce);
  }
  /** The first message to a place after a start may be one whose sending a crash cut off. */
  mayStand(nonce: string, place: string): boolean {
    return this.#doubtful.has(nonce) || !this.#places.has(place);
  }
}

/** Opens sending over a client. */
export function openSending(client: WebClient, log: SlackLog, now: () => Instant): Sending {
  const memory = new Memory();

  const failed = (nonce: string, why: unknown): Delivered => {
    const trouble = troubleOf(why, now());
    if (trouble.kind === 'in doubt') memory.doubt(nonce);
    log.warn({ nonce, trouble: trouble.kind }, 'a message did not reach Slack');
    return outcomeOf(trouble);
  };

  const sayIt = async (delivery: Delivery, message: Message): Promise<Delivered> => {
    const { nonce, tenant, room } = delivery;
    const before = memory.idOf(nonce);
    if (before !== undefined) return { sent: before };
    const place = `${tenant}/${room}`;
    let there: ReadonlyMap<number, string> = new Map();
    if (memory.mayStand(nonce, place)) {
      const found = await findParts(client, room, nonce);
      if (found.kind === 'found') there = found.parts;
      else if (found.kind === 'failed') return failed(nonce, found.why);
      else if (memory.isDoubtful(nonce)) return { stuck: say('stuck unsure', { code: found.code }) };
    }
    try {
      const id = (await postParts(client, delivery, message, there)).join(',');
      memory.arrived(nonce, place, id);
      return { sent: id };
    } catch (why) {
      return failed(nonce, why);
    }
  };

  /** The posts of a message with those that an earlier try to change it may have added. */
  const grown = async ({ room, nonce }: Delivery, before: readonly string[]): Promise<readonly string[]> => {
    if (!memory.isDoubtful(nonce)) return before;
    const found = await findParts(client, room, nonce);
    if (found.kind === 'failed') throw found.why;
    if (found.kind === 'closed') return before;
    const last = Math.max(before.length - 1, ...found.parts.keys());
    const all = Array.from({ length: last + 1 }, (_, part) => before[part] ?? found.parts.get(part) ?? '');
    return all.filter((ts) => ts !== '');
  };

  const replaceIt = async (
    delivery: Delivery,
    message: Message,
    before: readonly string[],
  ): Promise<Delivered> => {
    const { tenant, room, nonce } = delivery;
    try {
      const ids = await changeParts(client, delivery, message, await grown(delivery, before));
      if (ids !== null) {
        memory.arrived(nonce, `${tenant}/${room}`, ids.join(','));
        return { sent: ids.join(',') };
      }
      await removeParts(client, room, before);
    } catch (why) {
      return failed(nonce, why);
    }
    return sayIt(delivery, message);
  };

  const withdrawIt = async ({ room, nonce }: Delivery, before: readonly string[]): Promise<Delivered> => {
    try {
      await removeParts(client, room, before);
      return { sent: null };
    } catch (why) {
      return failed(nonce, why);
    }
  };

  return {
    async deliver(delivery) {
      const { telling } = delivery;
      const before = (delivery.before ?? '').split(',').filter((ts) => ts !== '');
      // News for one person waits in their tray: "For you" opens it.
      if (telling.do !== 'withdraw' && telling.message.audience.to === 'person') return { sent: null };
      switch (telling.do) {
        case 'say':
          return sayIt(delivery, telling.message);
        case 'replace':
          return before.length === 0
            ? sayIt(delivery, telling.message)
            : replaceIt(delivery, telling.message, before);
        case 'withdraw':
          return withdrawIt(delivery, before);
        default:
          return telling satisfies never;
      }
    },
    async stands(delivery) {
      const found = await findParts(client, delivery.room, delivery.nonce);
      if (found.kind !== 'found') return 'unknown';
      if (found.parts.size === 0) return null;
      // A long message of which only some parts arrived is gone on with, not repeated.
      if (found.parts.size < found.of) {
        memory.doubt(delivery.nonce);
        return null;
      }
      const ids = Array.from({ length: found.of }, (_, part) => found.parts.get(part) ?? '');
      return { id: ids.join(',') };
    },
  };
}
