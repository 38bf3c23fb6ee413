import type { WebClient } from '@slack/web-api';
import type { BoundPlace, Finding } from '../../../../shared/channel.js';
import { troubleOf } from '../web.js';
import { checkWords } from './words.js';

const fine = (words: string): Finding => ({ fine: true, words });
const mend = (words: string): Finding => ({ fine: false, words });

/** Who may do something in a channel, as Slack says it (`properties` of a channel); nobody is named where everybody may. */
interface Restriction {
  readonly type?: readonly string[];
  readonly user?: readonly string[];
}

interface Conversation {
  readonly name?: string;
  readonly is_archived?: boolean;
  readonly is_member?: boolean;
  readonly properties?: {
    readonly posting_restricted_to?: Restriction;
    readonly threads_restricted_to?: Restriction;
  };
}

/** How a place is called, by name where that is known. */
export function placeName({ room, audience }: BoundPlace, name?: string): string {
  const whose = audience.to === 'channel' ? 'a group’s channel' : 'a staff channel';
  return `${name === undefined ? `channel ${room}` : `#${name}`} (${whose})`;
}

function isRestricted(restriction: Restriction | undefined): restriction is Restriction {
  const types = restriction?.type ?? [];
  if (types.includes('user') || types.includes('everyone')) return false;
  return types.length > 0 || (restriction?.user ?? []).length > 0;
}

/** Who can write where a group talks without the bot. */
function pastTheBot(label: string, { properties }: Conversation): Finding {
  const { posting_restricted_to: posting, threads_restricted_to: replying } = properties ?? {};
  if (!isRestricted(posting)) return mend(checkWords('everybody posts', { place: label }));
  if (!isRestricted(replying)) return mend(checkWords('everybody replies', { place: label }));
  const who = [posting, replying].flatMap(({ type = [], user = [] }) => [...type, ...user]);
  return fine(checkWords('only some post', { place: label, who: [...new Set(who)].join(', ') }));
}

/** Looks at one channel that is tied. */
export async function checkPlace(client: WebClient, place: BoundPlace): Promise<readonly Finding[]> {
  try {
    const { channel } = await client.conversations.info({ channel: place.room });
    const there = (channel ?? {}) as Conversation;
    const label = placeName(place, there.name);
    if (there.is_archived) return [mend(checkWords('archived', { place: label }))];
    const inside = there.is_member
      ? fine(checkWords('place fine', { place: label }))
      : mend(checkWords('outside', { place: label }));
    return place.audience.to === 'channel' ? [inside, pastTheBot(label, there)] : [inside];
  } catch (why) {
    const trouble = troubleOf(why, 0);
    const label = placeName(place);
    if (trouble.kind === 'slow down') return [mend(checkWords('slow down'))];
    if (trouble.kind !== 'refused') return [mend(checkWords('cannot ask', { code: trouble.code }))];
    if (trouble.code === 'missing_scope') {
      const scope = place.room.startsWith('G') ? 'groups:read' : 'channels:read or groups:read';
      return [mend(checkWords('place unknown', { place: label, scope }))];
    }
    return [mend(checkWords('not there', { place: label }))];
  }
}
