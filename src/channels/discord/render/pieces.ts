import type { Action, Block, Choice, Picture } from '../../../../shared/messages.js';
import { hashOf, writeAct, writePressed } from '../custom-id.js';
import { limits } from '../limits.js';
import { escape, spans } from './escape.js';
import { plain, short } from './plain.js';
import { splitText } from './split-text.js';

/** A button before it is written as a payload. */
export interface Button {
  readonly id: string;
  readonly label: string;
  readonly main: boolean;
}

/** What a message is laid out from: text that stands together, or a row of buttons. */
export type Piece = { readonly text: string } | { readonly row: readonly Button[] };

/** The longest text that one piece may be; several fit a message of laid-out parts, most fit a plain one. */
const longestPiece = 1900;

type Handler<T extends Block['type']> = (
  block: Extract<Block, { type: T }>,
  origin: Action | null,
) => readonly Piece[];

function texts(lines: readonly string[]): readonly Piece[] {
  return lines.filter((line) => line.trim() !== '').map((text) => ({ text }));
}

/** One text, cut where it is too long for one piece. */
function cut(text: string, render: (piece: string) => string): readonly Piece[] {
  return texts(splitText(plain(text), (piece) => render(piece).length <= longestPiece).map(render));
}

/** Lines that stand together as long as they fit, each cut by itself where it is too long. */
function together(lines: readonly (readonly Piece[])[]): readonly Piece[] {
  const pieces: string[] = [];
  for (const piece of lines.flat()) {
    if (!('text' in piece)) continue;
    const last = pieces.at(-1);
    if (last === undefined || last.length + piece.text.length + 1 > longestPiece) pieces.push(piece.text);
    else pieces[pieces.length - 1] = `${last}\n${piece.text}`;
  }
  return texts(pieces);
}

function quoted(text: string): string {
  return escape(text)
    .split('\n')
    .map((line) => `> ${line}`)
    .join('\n');
}

function prose(block: Extract<Block, { type: 'prose' }>['prose']): readonly Piece[] {
  const whole = spans(block);
  if (whole.length <= longestPiece) return texts([whole]);
  return block.flatMap((span) => cut(span.text, (piece) => spans([{ ...span, text: piece }])));
}

const barLength = 10;

function bar(value: number, of: number): string {
  const full = Math.round((barLength * Math.min(Math.max(value, 0), of)) / of);
  return `${'▰'.repeat(full)}${'▱'.repeat(barLength - full)}`;
}

function picture({ alternative, data }: Picture): readonly Piece[] {
  if (typeof data === 'string') return [...cut(alternative, escape), ...cut(data, escape)];
  const most = Math.max(1, ...data.map(({ value, of }) => of ?? value));
  const rows = data.map(({ label, value, of }) => {
    const drawn = `${bar(value, of ?? most)} ${of === undefined ? value : `${value} / ${of}`}`;
    return cut(label, (piece) => `- ${escape(piece)}: ${drawn}`);
  });
  return together([cut(alternative, escape), ...rows]);
}

/** Marks a button within the answer of the same look, such as a stem in a step: its form opens at once. */
export const opensAtOnce = 'o';

function button(choice: Choice, origin: Action | null): Button {
  const { kind, name } = choice.action;
  const again = kind === 'look' && origin?.kind === 'look' && origin.name === name;
  return {
    id: writeAct(choice.action, origin, again ? opensAtOnce : ''),
    label: short(choice.label, limits.label),
    main: choice.main ?? false,
  };
}

/** Labels that are too long for a button stand whole above it. */
function longLabels(choices: readonly Choice[]): readonly Piece[] {
  const long = choices.map(({ label }) => plain(label).trim()).filter((label) => label.length > limits.label);
  return together(long.map((label) => cut(label, (piece) => `- ${escape(piece)}`)));
}

function rows(buttons: readonly Button[]): readonly Piece[] {
  const mainFirst = [...buttons.filter(({ main }) => main), ...buttons.filter(({ main }) => !main)];
  return Array.from({ length: Math.ceil(mainFirst.length / limits.rowButtons) }, (_, at) => ({
    row: mainFirst.slice(at * limits.rowButtons, (at + 1) * limits.rowButtons),
  }));
}

/** How each kind of block becomes pieces. */
const handlers: { readonly [T in Block['type']]: Handler<T> } = {
  heading: ({ text }) => cut(text.replace(/\s+/gu, ' '), (piece) => `### ${escape(piece)}`),
  prose: (block) => prose(block.prose),
  quotation: ({ text, by }) => {
    const said = cut(text, quoted);
    return by === null ? said : together([said, cut(by, (piece) => `— ${escape(piece)}`)]);
  },
  list: ({ items }) =>
    together(
      items.map((item) => {
        const whole = `- ${spans(item)}`;
        return whole.length <= longestPiece ? texts([whole]) : prose(item);
      }),
    ),
  measure: ({ label, value, of, words }) => {
    const drawn = of === null || of <= 0 ? '' : ` ${bar(value, of)}`;
    return together([cut(label, (piece) => `**${escape(piece).trim()}**${drawn}`), cut(words, escape)]);
  },
  picture: (block) => picture(block.picture),
  choices: ({ prompt, choices }, origin) => [
    ...(prompt === null ? [] : cut(prompt, escape)),
    ...longLabels(choices),
    ...rows(choices.map((choice) => button(choice, origin))),
  ],
  form: (block, origin) => {
    const opens = writePressed({ does: 'open', hash: hashOf(block.action), page: 0, origin });
    const { title, main = false } = block;
    const long = longLabels([{ label: title, action: block.action }]);
    return [...long, ...rows([{ id: opens, label: short(title, limits.label), main }])];
  },
};

/** A block as pieces; `origin` is the look whose answer it stands in, null in a message that was told. */
export function piecesOf(block: Block, origin: Action | null): readonly Piece[] {
  const handle = handlers[block.type] as Handler<Block['type']>;
  return handle(block, origin);
}
