import type { Audience, Message } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import { fill } from '../coaching/catalogue.js';
import { feedWords } from '../coaching/feed-words.js';
import type { Place } from '../store/store.js';

const staff: Audience = { to: 'staff', group: null };
const platforms = { room: 'the room', discord: 'Discord', slack: 'Slack' } as const;

/** One message for each place, so that staff have one however often it stops. */
function keyOf({ channel, tenant, room }: Place): string {
  return `stuck/${channel}/${tenant}/${room}`;
}

/** Tells staff that a place of a platform is silent, and why; `why` is what the channel says to staff. */
export function tellStuck(place: Place, why: string): Telling {
  const words = fill(feedWords.stuck, { platform: platforms[place.channel], why });
  const message: Message = {
    audience: staff,
    summary: words,
    blocks: [
      { type: 'prose', prose: [{ text: words }] },
      { type: 'prose', prose: [{ text: fill(feedWords.stuckWay) }] },
      {
        type: 'choices',
        prompt: null,
        choices: [
          {
            label: fill(feedWords.seeWaiting),
            action: { kind: 'look', name: 'waiting', args: {} },
            main: true,
          },
        ],
      },
    ],
  };
  return { do: 'say', key: keyOf(place), message };
}

/** Takes that back once the place is tied again, or another takes its part. */
export function tellMended(place: Place): Telling {
  return { do: 'withdraw', key: keyOf(place), audience: staff };
}
