import type { WebClient } from '@slack/web-api';
import { troubleOf } from './web.js';

/** What every post of ours carries unseen, so that it is found again. */
export interface Mark {
  readonly event_type: 'turnstone_message';
  readonly event_payload: { readonly nonce: string; readonly part: number; readonly of: number };
}

/** How far back is looked; what was cut off is among the newest. */
const howMany = 100;

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

/** Looks in a channel's history for the posts of one message. */
export async function findParts(client: WebClient, room: string, nonce: string): Promise<Found> {
  try {
    const { messages } = await client.conversations.history({
      channel: room,
      limit: howMany,
      include_all_metadata: true,
    });
    const parts = new Map<number, string>();
    let of = 0;
    for (const { ts, metadata } of messages ?? []) {
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
