import { MessageFlags } from 'discord.js';
import type { Delivery } from '../../../../shared/channel.js';
import { writePressed } from '../custom-id.js';
import { limits } from '../limits.js';
import { payloadsOf, type Payload } from '../render/payloads.js';
import type { Button } from '../render/pieces.js';
import { say } from '../words.js';

/** What is told with words, not taken back. */
export type Told = Exclude<Delivery['telling'], { do: 'withdraw' }>;

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

/** Whether a payload's parts are laid out. */
export function isLaidOut({ flags }: Payload): boolean {
  return (flags & MessageFlags.IsComponentsV2) !== 0;
}

/** Each part has a nonce of its own. */
export function nonceOf(nonce: string, part: number): string {
  return part === 0 ? nonce.slice(0, limits.nonce) : `${nonce.slice(0, limits.nonce - 3)}-${part}`;
}
