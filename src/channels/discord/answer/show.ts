import type { Reply } from '../../../../shared/channel.js';
import type { Action, Block, Message } from '../../../../shared/messages.js';
import { asId, type PersonId } from '../../../../shared/ids.js';
import { hashOf, writePressed } from '../custom-id.js';
import type { From } from '../read/interaction.js';
import { payloadsOf, withRow, type Payload } from '../render/payloads.js';
import type { Button } from '../render/pieces.js';
import { say, type DiscordKey } from '../words.js';
import type { Answer, Desk } from './desk.js';

/** Several messages as one, since an interaction has one answer. */
export function merged(messages: readonly Message[]): Message {
  const [first] = messages;
  const blocks = messages.flatMap(({ blocks, summary }): readonly Block[] =>
    blocks.length > 0 ? blocks : [{ type: 'prose', prose: [{ text: summary }] }],
  );
  const nobody = { to: 'person', person: asId<PersonId>('') } as const;
  return { audience: first?.audience ?? nobody, summary: first?.summary ?? say('nothing'), blocks };
}

/** What can be pressed or opened in a message, with its form where it is one. */
function remember(desk: Desk, user: string, message: Message, origin: Action | null): void {
  for (const block of message.blocks) {
    if (block.type === 'form') desk.forms.keep(`${user}|${hashOf(block.action)}`, { form: block, origin });
    if (block.type !== 'choices') continue;
    for (const { action } of block.choices) desk.actions.keep(`${user}|${hashOf(action)}`, action);
  }
}

/** Payloads of which each but the last leads on to the next; they are kept for a while. */
export function paged(desk: Desk, from: From, payloads: readonly Payload[]): Answer {
  const [first] = payloads;
  if (first === undefined || payloads.length === 1) return { show: payloads };
  const key = BigInt(from.id).toString(36);
  const pages = payloads.map((payload, at) =>
    at === payloads.length - 1
      ? payload
      : withRow(payload, [
          { id: writePressed({ does: 'page', key, page: at + 1 }), label: say('more'), main: false },
        ]),
  );
  desk.pages.keep(`${from.user}|${key}`, pages);
  return { show: pages.slice(0, 1) };
}

/** Shows messages to who acted; `origin` is the look that they answer, if one did. */
export function shown(
  desk: Desk,
  from: From,
  messages: readonly Message[],
  origin: Action | null,
  foot: readonly Button[] = [],
): Answer {
  const message = merged(messages);
  remember(desk, from.user, message, origin);
  return paged(desk, from, payloadsOf(message, { origin, ...(foot.length === 0 ? {} : { foot }) }));
}

/** Words of the channel's own, with buttons. */
export function told(
  text: string,
  buttons: readonly Button[] = [],
  quoted: readonly string[] = [],
): readonly Payload[] {
  const blocks: Block[] = [{ type: 'prose', prose: [{ text }] }];
  for (const one of quoted) blocks.push({ type: 'quotation', text: one, by: null });
  const message: Message = { ...merged([]), summary: text, blocks };
  return payloadsOf(message, { origin: null, ...(buttons.length === 0 ? {} : { foot: buttons }) });
}

/** A word of the channel's own as an answer. */
export function word(key: DiscordKey, buttons: readonly Button[] = []): Answer {
  return { show: told(say(key), buttons) };
}

/** A button that takes a look. */
export function lookButton(key: DiscordKey, name: string, main = false, mark = ''): Button {
  const action: Action = { kind: 'look', name, args: {} };
  return { id: writePressed({ does: 'act', action }, mark), label: say(key), main };
}

/** What was refused, said as the house says it. */
export function refusalWords({ messages }: Reply): string {
  return messages.map(({ summary }) => summary).join(' ');
}
