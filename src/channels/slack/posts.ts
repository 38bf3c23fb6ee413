import type { WebClient } from '@slack/web-api';
import type { Message } from '../../../shared/messages.js';
import { markOf } from './history.js';
import { payloadsOf, type Payload } from './render/payload.js';
import { troubleOf } from './web.js';
import { say } from './words.js';

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

/** Nothing of a text is parsed, named or unfurled. */
const inert = { mrkdwn: false, link_names: false, unfurl_links: false, unfurl_media: false } as const;

/** Where one message stands or shall stand, and by what it is found again. */
export interface Spot {
  readonly room: string;
  readonly nonce: string;
  /** The post under which it stands; null for the channel itself. */
  readonly thread: string | null;
}

function payloads(message: Message): readonly Payload[] {
  return payloadsOf([message], null, message.audience.to === 'channel' ? entries : []);
}

function isGone(why: unknown): boolean {
  const trouble = troubleOf(why, 0);
  return trouble.kind === 'refused' && goneCodes.has(trouble.code);
}

async function postOne(
  client: WebClient,
  { room, nonce, thread }: Spot,
  payload: Payload,
  part: number,
  of: number,
): Promise<string> {
  const { ts } = await client.chat.postMessage({
    channel: room,
    ...payload,
    ...inert,
    ...(thread === null ? {} : { thread_ts: thread }),
    metadata: markOf(nonce, part, of),
  });
  return ts ?? '';
}

/** Posts all parts of a message that don't stand yet; the times of all of them, in order. Throws what the client throws. */
export async function postParts(
  client: WebClient,
  spot: Spot,
  message: Message,
  there: ReadonlyMap<number, string>,
): Promise<readonly string[]> {
  const all = payloads(message);
  const ids: string[] = [];
  for (const [part, payload] of all.entries()) {
    ids.push(there.get(part) ?? (await postOne(client, spot, payload, part, all.length)));
  }
  return ids;
}

/** Takes posts away; what is gone already counts as taken away. Throws what the client throws. */
export async function removeParts(client: WebClient, room: string, ids: readonly string[]): Promise<void> {
  for (const ts of ids) {
    try {
      await client.chat.delete({ channel: room, ts });
    } catch (why) {
      if (!isGone(why)) throw why;
    }
  }
}

/** Puts new words where old ones stand; the times of the posts that stand afterwards, or null where one of the old ones is gone. Throws what the client throws. */
export async function changeParts(
  client: WebClient,
  spot: Spot,
  message: Message,
  before: readonly string[],
): Promise<readonly string[] | null> {
  const all = payloads(message);
  const ids: string[] = [];
  for (const [part, payload] of all.entries()) {
    const ts = before[part];
    if (ts === undefined) {
      ids.push(await postOne(client, spot, payload, part, all.length));
      continue;
    }
    try {
      const metadata = markOf(spot.nonce, part, all.length);
      await client.chat.update({ channel: spot.room, ts, ...payload, link_names: false, metadata });
      ids.push(ts);
    } catch (why) {
      if (isGone(why)) return null;
      throw why;
    }
  }
  await removeParts(client, spot.room, before.slice(all.length));
  return ids;
}
