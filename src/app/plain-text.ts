import type { Block, Choice, Field, Message, Picture, Prose } from '../../shared/messages.js';

function prose(spans: Prose): string {
  return spans.map(({ text }) => text).join('');
}

function choice({ label }: Choice): string {
  return `[${label}]`;
}

function field(one: Field): string {
  switch (one.kind) {
    case 'pick':
      return `  ${one.label}: ${one.options.map(({ label }) => label).join(' / ')}`;
    case 'line':
    case 'text':
    case 'sentence':
    case 'word':
    case 'file':
      return `  ${one.label}: ____`;
  }
}

function picture(one: Picture): string {
  return `(${one.alternative})`;
}

function block(one: Block): string {
  switch (one.type) {
    case 'heading':
      return one.text.toUpperCase() === one.text
        ? one.text
        : `${one.text}\n${'-'.repeat(Math.min(60, one.text.length))}`;
    case 'prose':
      return prose(one.prose);
    case 'quotation':
      return `${one.by === null ? '' : `${one.by}: `}“${one.text}”`;
    case 'list':
      return one.items.map((item) => `- ${prose(item)}`).join('\n');
    case 'measure':
      return `${one.label}: ${one.words}`;
    case 'picture':
      return picture(one.picture);
    case 'choices':
      return [one.prompt ?? '', one.choices.map(choice).join(' ')].filter((part) => part !== '').join(' ');
    case 'form':
      return [one.title, ...one.fields.map(field), `  [${one.submit}]`].join('\n');
  }
}

/** A message as plain text for the terminal, block by block. */
export function plainText(message: Message): string {
  const text = message.blocks.map(block).join('\n');
  return text === '' ? message.summary : text;
}
