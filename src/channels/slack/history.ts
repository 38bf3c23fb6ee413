import type { WebClient } from '@slack/web-api';
import { troubleOf } from './web.js';

/** What every post of ours carries unseen, so that it is found again. */
export interface Mark {
  readonly event_type: 'turnstone_message';
  readonly event_payload: { readonly nonce: string; readonly part: number; readonly of: number };
}

/** How far back is looked; what was cut off is among the newest. */
const howMany = 100;
/** Ours: how many pages of a thread are read; two thousand posts are more than a text ever gets. */
const mostPages = 20;

interface Past {
  readonly ts?: string;
  readonly metadata?: { readonly event_payload?: unknown };
}

export function markOf(
  nonce: string,
  part: number,
  of: number,
): Mark & { event_payload: Record<string, string | number> } {
  return { event_type: 'turnstone_message', event_payload: { nonce, part, of } };
}

/** Posts of ours with a nonce by their part; or history can't be read; or Slack can't be asked just now. */
export type Found =
  | { readonly kind: 'found'; readonly parts: ReadonlyMap<number, string>; readonly of: number }
  | { readonly kind: 'closed'; readonly code: string }
  | { readonly kind: 'failed'; readonly why: unknown };

/** Codes by which Slack says that a thread isn't there, or takes no more. */
export const noThreadCodes: ReadonlySet<string> = new Set([
  'thread_not_found',
  'cannot_reply_to_message',
  'restricted_action_thread_locked',
]);

/** The newest posts of a channel, and of a thread in it where one is named; a thread that is gone has none. */
async function newest(client: WebClient, room: string, thread: string | null): Promise<readonly Past[]> {
  const asked = { channel: room, limit: howMany, include_all_metadata: true } as const;
  const { messages = [] } = await client.conversations.history(asked);
  if (thread === null) return messages;
  try {
    return [...messages, ...(await newestOfThread(client, { ...asked, ts: thread }))];
  } catch (why) {
    const trouble = troubleOf(why, 0);
    if (trouble.kind === 'refused' && noThreadCodes.has(trouble.code)) return messages;
    throw why;
  }
}

type Asked = Parameters<WebClient['conversations']['replies']>[0];

/** A thread is given from its beginning, so that its last page is the newest. */
async function newestOfThread(client: WebClient, asked: Asked): Promise<readonly Past[]> {
  let all: readonly Past[] = [];
  let cursor = '';
  for (let page = 0; page < mostPages; page += 1) {
    const answer = await client.conversations.replies(cursor === '' ? asked : { ...asked, cursor });
    all = [...all, ...((answer.messages ?? []) as readonly Past[])].slice(-2 * howMany);
    cursor = answer.response_metadata?.next_cursor ?? '';
    if (cursor === '') break;
  }
  return all;
}

/** Looks in a channel's history, and in a thread of it, for the posts of one message. */
export async function findParts(
  client: WebClient,
  room: string,
  nonce: string,
  thread: string | null = null,
): Promise<Found> {
  try {
    const parts = new Map<number, string>();
    let of = 0;
    for (const { ts, metadata } of await newest(client, room, thread)) {
      const payload = metadata?.event_payload as Partial<Mark['event_payload']> | undefined;
      if (payload?.nonce !== nonce || ts === undefined || typeof payload.part !== 'number') continue;
      parts.set(payload.part, ts);
      of = payload.of ?? 1;
    }
    return { kind: 'found', parts, of };
  } catch (why) {
    const trouble = troubleOf(why, 0);
    return trouble.kind === 'refused' ? { kind: 'closed', code: trouble.code } : { kind: 'failed', why };
  }
}
