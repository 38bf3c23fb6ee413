const sentenceEnds = /[^]*?(?:[.!?…]["”’)\]]*(?=\s|$)|\n|$)\s*/gu;

function inPieces(text: string, pattern: RegExp): readonly string[] {
  return (text.match(pattern) ?? []).filter((piece) => piece !== '');
}

/** Ways to cut a text, finest last: at the ends of sentences, between words, between characters. */
const cuts: readonly ((text: string) => readonly string[])[] = [
  (text) => inPieces(text, sentenceEnds),
  (text) => inPieces(text, /\S+\s*|\s+/gu),
  (text) =>
    Array.from(
      new Intl.Segmenter(undefined, { granularity: 'grapheme' }).segment(text),
      ({ segment }) => segment,
    ),
  (text) => Array.from(text),
];

/**
 * Cuts a text into pieces that fit as they are rendered, at the ends of sentences, else between words, else between
 * characters; nothing is lost but blanks at the cuts.
 */
export function splitText(text: string, fits: (piece: string) => boolean, cut = 0): readonly string[] {
  if (fits(text)) return [text];
  const pieces = cuts[cut]?.(text);
  if (pieces === undefined) return [text];
  const lines: string[] = [];
  let line = '';
  for (const piece of pieces) {
    if (fits((line + piece).trimEnd())) {
      line += piece;
      continue;
    }
    if (line.trim() !== '') lines.push(line.trimEnd());
    if (fits(piece.trimEnd())) {
      line = piece;
      continue;
    }
    const finer = splitText(piece.trimEnd(), fits, cut + 1);
    lines.push(...finer.slice(0, -1));
    line = finer.at(-1) ?? '';
    if (/\s$/u.test(piece)) line += ' ';
  }
  if (line.trim() !== '') lines.push(line.trimEnd());
  return lines;
}
