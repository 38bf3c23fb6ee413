import type { KnownBlock } from '@slack/types';
import type { Message } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { beginning, escaped } from '../plain.js';
import type { LookRef } from '../press-code.js';
import { say } from '../words.js';
import { unitsOf } from './blocks.js';
import { buttonBlocks } from './choices.js';
import { renderContext } from './context.js';
import { glued, pagesOf } from './pages.js';
import { sections } from './rich.js';

/** What a message on Slack is made of. `text` is for notifications and screen readers; it is the one field that Slack parses, so it is escaped. */
export interface Payload {
  readonly text: string;
  readonly blocks: KnownBlock[];
}

/** The longest notification text; ours, far within Slack's own 40,000. */
const longestText = 2000;

/** The summaries of messages as a notification. */
export function notification(messages: readonly Message[]): string {
  return beginning(escaped(messages.map(({ summary }) => summary).join(' ')), longestText) || say('title');
}

/** Messages as payloads in order, each within all limits. */
export function payloadsOf(
  messages: readonly Message[],
  look: LookRef | null,
  entries: readonly { readonly label: string; readonly look: string }[] = [],
): readonly Payload[] {
  const context = renderContext(look);
  const ways = buttonBlocks(
    entries.map((entry) => ({
      label: entry.label,
      press: { press: 'act', action: { kind: 'look', name: entry.look, args: {} } },
      main: false,
    })),
    context,
  );
  const units = [...unitsOf(messages, context), ...glued(ways)];
  const pages = pagesOf(units, { blocks: limits.blocksOfMessage, text: limits.allText });
  const text = notification(messages);
  if (pages.length === 0) return [{ text, blocks: [...sections([{ text: say('nothing here') }])] }];
  return pages.map((blocks) => ({ text, blocks: [...blocks] }));
}

/** One page of an answer, with a button to the next one; without a look to take again the last words say where the rest is kept. */
export function pageOf(messages: readonly Message[], look: LookRef | null, page: number): Payload {
  const context = renderContext(look);
  // Two blocks and some text are kept back for the way to the next page.
  const pages = pagesOf(unitsOf(messages, context), {
    blocks: limits.blocksOfMessage - 2,
    text: limits.allText - 500,
  });
  const text = notification(messages);
  const blocks = pages[Math.min(page, pages.length - 1)];
  if (!blocks) return { text, blocks: [...sections([{ text: say('nothing here') }])] };
  return { text, blocks: [...blocks, ...nextPage(look, page, pages.length, context.newName)] };
}

/** The way from one page of an answer to the next; nothing on the last one. */
export function nextPage(
  look: LookRef | null,
  page: number,
  many: number,
  newName: () => string,
): readonly KnownBlock[] {
  if (page >= many - 1) return [];
  if (look === null) return sections([{ text: say('more kept') }]);
  return [
    ...sections([{ text: say('page', { n: page + 1, many }) }]),
    ...buttonBlocks([{ label: say('more'), press: { press: 'page', look, page: page + 1 }, main: true }], {
      ...renderContext(look),
      newName,
    }),
  ];
}
