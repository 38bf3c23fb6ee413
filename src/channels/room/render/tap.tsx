import type { Field } from '../../../../shared/messages.js';
import { say } from '../words.js';
import { plain } from './plain.js';

type TapField = Extract<Field, { kind: 'sentence' | 'word' }>;

interface Piece {
  readonly text: string;
  /** "start-end" where it can be tapped. */
  readonly value: string | null;
}

/** Cuts a source into pieces that can be tapped and what stands between them; ranges that overlap an earlier one are left out. */
export function piecesOf(source: string, ranges: TapField['ranges']): readonly Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  for (const { start, end } of [...ranges].sort((a, b) => a.start - b.start)) {
    if (start < at || end <= start || end > source.length) continue;
    if (start > at) pieces.push({ text: source.slice(at, start), value: null });
    pieces.push({ text: source.slice(start, end), value: `${start}-${end}` });
    at = end;
  }
  if (at < source.length) pieces.push({ text: source.slice(at), value: null });
  return pieces;
}

/** A text in which a sentence or a word is tapped: radio buttons that look like the text itself. */
export function Tap({ field, value }: { readonly field: TapField; readonly value: string | undefined }) {
  return (
    <fieldset class={`field tap tap-${field.kind}`}>
      <legend>
        {plain(field.label)} {field.required ? null : <span class="optional">{say('may be empty')}</span>}
      </legend>
      <p class="tap-text" dir="auto">
        {piecesOf(field.source, field.ranges).map(({ text, value: range }) =>
          range === null ? (
            <span>{plain(text)}</span>
          ) : (
            <label class="tap-piece">
              <input
                type="radio"
                name={field.name}
                value={range}
                required={field.required}
                checked={range === value}
              />
              <span>{plain(text)}</span>
            </label>
          ),
        )}
      </p>
      {field.required ? null : (
        <label class="pick">
          <input type="radio" name={field.name} value="" checked={value === undefined || value === ''} />
          <span>{say('no pick')}</span>
        </label>
      )}
    </fieldset>
  );
}
