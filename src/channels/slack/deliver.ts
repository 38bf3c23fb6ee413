import type { WebClient } from '@slack/web-api';
import type { Delivered, Delivery } from '../../../shared/channel.js';
import type { Message } from '../../../shared/messages.js';
import type { Instant } from '../../../shared/time.js';
import { findParts, markOf } from './history.js';
import type { SlackLog } from './options.js';
import { payloadsOf, type Payload } from './render/payload.js';
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

/** Codes with which Slack says that what is to be changed isn't there, or no longer can be. */
const goneCodes = new Set([
  'message_not_found',
  'cant_update_message',
  'edit_window_closed',
  'cant_delete_message',
]);

/** Buttons by which everybody of a group finds their own page and tray from the channel. */
const entries = [
  { label: say('my page'), look: 'turn' },
  { label: say('for you'), look: 'for-you' },
] as const;

function payloads(message: Message): readonly Payload[] {
  return payloadsOf([message], null, message.audience.to === 'channel' ? entries : []);
}

function fixed({ text, blocks }: Payload): Pick<Payload, 'text' | 'blocks'> & {
  readonly mrkdwn: false;
  readonly link_names: false;
  readonly unfurl_links: false;
  readonly unfurl_media: false;
} {
  return { text, blocks, mrkdwn: false, link_names: false, unfurl_links: false, unfurl_media: false };
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

/** Opens sending over a client. */
export function openSending(client: WebClient, log: SlackLog, now: () => Instant): Sending {
  const sent = new Map<string, string>();
  const doubtful = new Set<string>();
  const knownPlaces = new Set<string>();

  const remember = (nonce: string, id: string): void => {
    doubtful.delete(nonce);
    sent.set(nonce, id);
    const [oldest] = sent.keys();
    if (sent.size > remembered && oldest !== undefined) sent.delete(oldest);
  };
  const failed = (nonce: string, why: unknown): Delivered => {
    const trouble = troubleOf(why, now());
    if (trouble.kind === 'in doubt') doubtful.add(nonce);
    log.warn({ nonce, trouble: trouble.kind }, 'a message did not reach Slack');
    return outcomeOf(trouble);
  };

  /** Posts all parts that don't stand yet. */
  const post = async (
    { room, nonce }: Delivery,
    message: Message,
    there: ReadonlyMap<number, string>,
  ): Promise<string> => {
    const all = payloads(message);
    const ids: string[] = [];
    for (const [part, payload] of all.entries()) {
      const before = there.get(part);
      if (before !== undefined) {
        ids.push(before);
        continue;
      }
      const { ts } = await client.chat.postMessage({
        channel: room,
        ...fixed(payload),
        metadata: markOf(nonce, part, all.length),
      });
      ids.push(ts ?? '');
    }
    return ids.join(',');
  };

  const sayIt = async (delivery: Delivery, message: Message): Promise<Delivered> => {
    const { nonce, tenant, room } = delivery;
    const before = sent.get(nonce);
    if (before !== undefined) return { sent: before };
    const place = `${tenant}/${room}`;
    let there: ReadonlyMap<number, string> = new Map();
    // The first message to a place after a start may be one whose sending a crash cut off.
    if (doubtful.has(nonce) || !knownPlaces.has(place)) {
      const found = await findParts(client, room, nonce);
      if (found.kind === 'found') there = found.parts;
      else if (found.kind === 'failed') return failed(nonce, found.why);
      else if (doubtful.has(nonce)) return { stuck: say('stuck unsure', { code: found.code }) };
    }
    try {
      const id = await post(delivery, message, there);
      knownPlaces.add(place);
      remember(nonce, id);
      return { sent: id };
    } catch (why) {
      return failed(nonce, why);
    }
  };

  const removeOne = async (room: string, ts: string): Promise<void> => {
    try {
      await client.chat.delete({ channel: room, ts });
    } catch (why) {
      const trouble = troubleOf(why, now());
      if (trouble.kind !== 'refused' || !goneCodes.has(trouble.code)) throw why;
    }
  };

  /** Puts new words where old ones stand; the ids that stand afterwards, or null where something of it is gone. */
  const change = async (
    delivery: Delivery,
    message: Message,
    before: readonly string[],
  ): Promise<string | null> => {
    const all = payloads(message);
    const ids: string[] = [];
    for (const [part, payload] of all.entries()) {
      const ts = before[part];
      const metadata = markOf(delivery.nonce, part, all.length);
      if (ts === undefined) {
        const posted = await client.chat.postMessage({ channel: delivery.room, ...fixed(payload), metadata });
        ids.push(posted.ts ?? '');
        continue;
      }
      try {
        await client.chat.update({
          channel: delivery.room,
          ts,
          text: payload.text,
          blocks: payload.blocks,
          link_names: false,
          metadata,
        });
        ids.push(ts);
      } catch (why) {
        const trouble = troubleOf(why, now());
        if (trouble.kind === 'refused' && goneCodes.has(trouble.code)) return null;
        throw why;
      }
    }
    for (const ts of before.slice(all.length)) await removeOne(delivery.room, ts);
    return ids.join(',');
  };

  const replaceIt = async (
    delivery: Delivery,
    message: Message,
    before: readonly string[],
  ): Promise<Delivered> => {
    try {
      const id = await change(delivery, message, before);
      if (id !== null) return { sent: id };
      for (const ts of before) await removeOne(delivery.room, ts);
    } catch (why) {
      return outcomeOf(troubleOf(why, now()));
    }
    return sayIt(delivery, message);
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
          try {
            for (const ts of before) await removeOne(delivery.room, ts);
            return { sent: null };
          } catch (why) {
            return outcomeOf(troubleOf(why, now()));
          }
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
        doubtful.add(delivery.nonce);
        return null;
      }
      const ids = Array.from({ length: found.of }, (_, part) => found.parts.get(part) ?? '');
      return { id: ids.join(',') };
    },
  };
}
