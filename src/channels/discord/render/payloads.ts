import { ButtonStyle, ComponentType, MessageFlags } from 'discord.js';
import type { Action, Message } from '../../../../shared/messages.js';
import { markOf } from '../custom-id.js';
import { limits } from '../limits.js';
import { escape } from './escape.js';
import { piecesOf, type Button, type Piece } from './pieces.js';

interface ButtonPart {
  readonly type: ComponentType.Button;
  readonly style: ButtonStyle;
  readonly label: string;
  readonly custom_id: string;
}
interface RowPart {
  readonly type: ComponentType.ActionRow;
  readonly components: readonly ButtonPart[];
}
interface TextPart {
  readonly type: ComponentType.TextDisplay;
  readonly content: string;
}

/** A message as Discord takes it; with parts laid out (text between its buttons) there is no content. */
export interface Payload {
  readonly content?: string;
  readonly components: readonly (RowPart | TextPart)[];
  readonly flags: number;
  /** Nobody is ever called by a message. */
  readonly allowed_mentions: { readonly parse: readonly [] };
}

/** How a message is to be laid out. */
export interface Layout {
  /** The look that was answered; null for a message that was told. */
  readonly origin: Action | null;
  /** Buttons below the last payload. */
  readonly foot?: readonly Button[];
  /** Parts laid out, also where a plain message would do: a message that began so can't go back. */
  readonly laidOut?: boolean;
}

/** Kept free in each payload for a row that is added later: a row and its buttons. */
const spare = { parts: 4, text: 120 } as const;

const nobody = { parse: [] } as const;

function rowPart(row: readonly Button[], seen: Set<string>): RowPart {
  const components = row.map(({ id, label, main }) => {
    let own = id;
    for (let n = 1; seen.has(own); n += 1) own = markOf(id) === '' ? `${id}^${n}` : `${id}.${n}`;
    seen.add(own);
    const style = main ? ButtonStyle.Primary : ButtonStyle.Secondary;
    return { type: ComponentType.Button, style, label, custom_id: own } as const;
  });
  return { type: ComponentType.ActionRow, components };
}

function joined(texts: readonly string[]): string {
  // A quotation runs on into what follows it, unless a blank line parts them.
  return texts.reduce(
    (so, text) => (so === '' ? text : `${so}\n${/(?:^|\n)> [^\n]*$/u.test(so) ? '\n' : ''}${text}`),
    '',
  );
}

/** A plain message, where all text comes first and everything fits; else null. */
function plainPayload(pieces: readonly Piece[]): Payload | null {
  const firstRow = pieces.findIndex((piece) => 'row' in piece);
  const texts = (firstRow < 0 ? pieces : pieces.slice(0, firstRow)).flatMap((piece) =>
    'text' in piece ? [piece.text] : [],
  );
  const rows = pieces.flatMap((piece) => ('row' in piece ? [piece.row] : []));
  const content = joined(texts);
  if (texts.length + rows.length !== pieces.length || rows.length > limits.rows) return null;
  if (content === '' || content.length > limits.content) return null;
  const seen = new Set<string>();
  return {
    content,
    components: rows.map((row) => rowPart(row, seen)),
    flags: MessageFlags.SuppressEmbeds,
    allowed_mentions: nobody,
  };
}

interface Sheet {
  readonly parts: (RowPart | TextPart)[];
  readonly seen: Set<string>;
  count: number;
  text: number;
}

function openSheet(): Sheet {
  return { parts: [], seen: new Set(), count: 0, text: 0 };
}

function sizeOf(piece: Piece): { readonly parts: number; readonly text: number } {
  if ('text' in piece) return { parts: 1, text: piece.text.length + 2 };
  return { parts: 1 + piece.row.length, text: piece.row.reduce((sum, { label }) => sum + label.length, 0) };
}

function put(sheet: Sheet, piece: Piece): void {
  const { parts, text } = sizeOf(piece);
  const last = sheet.parts.at(-1);
  if ('text' in piece && last?.type === ComponentType.TextDisplay) {
    sheet.parts[sheet.parts.length - 1] = { ...last, content: joined([last.content, piece.text]) };
    sheet.text += text;
    return;
  }
  sheet.parts.push(
    'text' in piece
      ? { type: ComponentType.TextDisplay, content: piece.text }
      : rowPart(piece.row, sheet.seen),
  );
  sheet.count += parts;
  sheet.text += text;
}

/** Whether a row would be parted from the text that it is about. */
function startsGroup(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  return piece !== undefined && 'text' in piece;
}

function laidOutPayloads(pieces: readonly Piece[]): readonly Payload[] {
  const sheets = [openSheet()];
  for (let at = 0; at < pieces.length; at += 1) {
    const piece = pieces[at] as Piece;
    const sheet = sheets.at(-1) as Sheet;
    const next = pieces[at + 1];
    const own = sizeOf(piece);
    // A short text stays with the buttons right after it.
    const follows =
      startsGroup(pieces, at) && next !== undefined && 'row' in next ? sizeOf(next) : { parts: 0, text: 0 };
    const full =
      sheet.count + own.parts + follows.parts > limits.parts - spare.parts ||
      sheet.text + own.text + follows.text > limits.laidOut - spare.text;
    if (full && sheet.parts.length > 0) sheets.push(openSheet());
    put(sheets.at(-1) as Sheet, piece);
  }
  return sheets.map(({ parts }) => ({
    components: parts,
    flags: MessageFlags.IsComponentsV2,
    allowed_mentions: nobody,
  }));
}

/** A message as payloads in order, each within every limit; nothing is cut. */
export function payloadsOf(message: Message, layout: Layout): readonly Payload[] {
  const pieces = message.blocks.flatMap((block) => piecesOf(block, layout.origin));
  const some: readonly Piece[] = pieces.some((piece) => 'text' in piece)
    ? pieces
    : [{ text: escape(message.summary) || '…' }, ...pieces];
  const foot: readonly Piece[] = layout.foot === undefined ? [] : [{ row: layout.foot }];
  const whole = layout.laidOut ? null : plainPayload([...some, ...foot]);
  return whole === null ? laidOutPayloads([...some, ...foot]) : [whole];
}

/** A payload with one more row of buttons, for which room was kept. */
export function withRow(payload: Payload, row: readonly Button[]): Payload {
  const ids = payload.components.flatMap((part) =>
    part.type === ComponentType.ActionRow ? part.components.map(({ custom_id }) => custom_id) : [],
  );
  return { ...payload, components: [...payload.components, rowPart(row, new Set(ids))] };
}
