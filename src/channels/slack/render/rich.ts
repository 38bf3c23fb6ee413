import type { PlainTextElement, RichTextBlock, RichTextSection, RichTextText } from '@slack/types';
import type { Prose } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { parted, plain } from '../plain.js';

/** A text that Slack draws as it is: no marks, no mentions, no links, no emoji by name. */
export function plainText(text: string): PlainTextElement {
  return { type: 'plain_text', text: plain(text), emoji: false };
}

function element(text: string, strong: boolean): RichTextText {
  return strong ? { type: 'text', text, style: { bold: true } } : { type: 'text', text };
}

/** Prose as rows of text elements, each row at most `limits.text` long, parted at ends of sentences or words. */
function rows(prose: Prose): readonly (readonly RichTextText[])[] {
  const all: RichTextText[][] = [[]];
  let length = 0;
  for (const { text, strong } of prose) {
    const clean = plain(text);
    const room = limits.text - length;
    const parts =
      clean.length <= room
        ? [clean]
        : room < limits.text / 4
          ? ['', ...parted(clean, limits.text)]
          : parted(clean, room);
    for (const [at, part] of parts.flatMap((one) => parted(one, limits.text)).entries()) {
      if (at > 0) {
        all.push([]);
        length = 0;
      }
      if (part === '') continue;
      all.at(-1)?.push(element(part, strong === true));
      length += part.length;
    }
  }
  return all.filter((row) => row.length > 0);
}

/** Prose as rich text blocks; none where there is nothing to read. */
export function sections(prose: Prose): readonly RichTextBlock[] {
  return rows(prose).map((row) => ({
    type: 'rich_text',
    elements: [{ type: 'rich_text_section', elements: [...row] }],
  }));
}

/** Words of a text or a person, set apart; `by` stands beneath them. */
export function quotes(text: string, by: string | null): readonly RichTextBlock[] {
  return [
    ...rows([{ text }]).map((row): RichTextBlock => ({
      type: 'rich_text',
      elements: [{ type: 'rich_text_quote', elements: [...row] }],
    })),
    ...(by === null ? [] : sections([{ text: `— ${by}`, strong: true }])),
  ];
}

/** A list with a mark before each item; a long one becomes several blocks. */
export function lists(items: readonly Prose[]): readonly RichTextBlock[] {
  const blocks: RichTextBlock[] = [];
  let some: RichTextSection[] = [];
  let length = 0;
  const close = (): void => {
    if (some.length === 0) return;
    blocks.push({
      type: 'rich_text',
      elements: [{ type: 'rich_text_list', style: 'bullet', elements: some }],
    });
    some = [];
    length = 0;
  };
  for (const row of items.flatMap(rows)) {
    const own = row.reduce((sum, { text }) => sum + text.length, 0);
    if (length + own > limits.text) close();
    some.push({ type: 'rich_text_section', elements: [...row] });
    length += own;
  }
  close();
  return blocks;
}
