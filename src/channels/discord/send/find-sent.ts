import { Routes, type REST } from 'discord.js';
import { markOf } from '../custom-id.js';

interface Part {
  readonly custom_id?: string;
  readonly components?: readonly Part[];
}
interface Past extends Part {
  readonly id: string;
  readonly author?: { readonly id?: string };
  readonly nonce?: string | number;
}

/** How many messages are looked through, newest first; as many as Discord gives at once. */
const most = 100;

function marks(part: Part): readonly string[] {
  const own = part.custom_id === undefined ? [] : [markOf(part.custom_id)];
  return [...own, ...(part.components ?? []).flatMap(marks)];
}

/**
 * The ids of a message of ours in a channel's history: its last part is known by the mark of its button, the parts before
 * it stand right before. `null` where it isn't there; 'unknown' where history is hidden from the bot: Discord then shows an
 * empty one.
 */
export async function findSent(
  rest: REST,
  room: string,
  nonce: string,
  parts: number,
  ownId: string | null,
): Promise<readonly string[] | null | 'unknown'> {
  const query = new URLSearchParams({ limit: String(most) });
  const past = (await rest.get(Routes.channelMessages(room), { query })) as readonly Past[];
  if (past.length === 0) {
    const channel = (await rest.get(Routes.channel(room))) as { readonly last_message_id?: string | null };
    return channel.last_message_id === null ? null : 'unknown';
  }
  const ours = past.filter(({ author }) => ownId === null || author?.id === ownId);
  const at = ours.findIndex(
    (one) => one.nonce === nonce || marks(one).some((mark) => mark.split('.')[0] === nonce),
  );
  // One message at a time goes to a channel, so one that arrived stands after all others of ours.
  if (at < 0) return ours.length > 0 || past.length < most ? null : 'unknown';
  return ours
    .slice(at, at + parts)
    .map(({ id }) => id)
    .toReversed();
}
