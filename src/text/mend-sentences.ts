import type { Range } from '../../shared/text.js';

/** Short forms after which a small letter goes on with the sentence. */
const shortForm =
  /(?:^|[\s(.])(?:e\.g|i\.e|etc|vs|approx|no|fig|pp?|[ap]\.m|a\.d|b\.c|mr|mrs|ms|dr|st|jr|sr|prof|capt|lt|col|gen|in|ft|oz|lb|\p{L})$/iu;
/** A place where a child's sentence may end though no capital follows, or a line that ends without a stop. */
const looseEnd = /(?<![.])\.(?=[ \t]+["“‘']?\p{Ll})|[!?]+(?=\s+\p{Ll})|(?<=\p{L}{2})[.!?](?=\p{L}{2})|\n+/gu;
/** "Stop!" Wren said: what is said and who says it are one sentence. */
const saidAfter =
  /^(?:(?:the|his|her|my|our|old|little)\s+)*[\p{L}'’-]+(?:\s+[\p{Lu}][\p{L}'’-]+)?\s+(?:said|asked|cried|called|shouted|whispered|replied|answered|yelled|added|laughed|sighed|muttered|begged|groaned|gasped|told|wondered)\b/iu;
const saidEnd = /[!?,…—-]["”’']$/u;
/** Lines this long were wrapped by an editor and go on in the next line. */
const wrappedAt = 60;

function endsLine(text: string, start: number, at: number, next: number): boolean {
  const line = text.slice(Math.max(start, text.lastIndexOf('\n', at - 1) + 1), at).trim();
  return line.length < wrappedAt && /^[\p{Lu}\p{N}"“‘'*•-]/u.test(text.slice(next).trimStart());
}

function* pieces(text: string, { start, end }: Range): Generator<Range> {
  let from = start;
  const piece = text.slice(start, end);
  for (const { index, 0: mark } of piece.matchAll(looseEnd)) {
    const at = start + index;
    const after = at + mark.length;
    const before = text.slice(Math.max(start, at - 8), at);
    if (mark.startsWith('\n') ? !endsLine(text, from, at, after) : mark === '.' && shortForm.test(before))
      continue;
    yield { start: from, end: mark.startsWith('\n') ? at : after };
    from = after;
  }
  yield { start: from, end };
}

function trimmed(text: string, range: Range): Range {
  const piece = text.slice(range.start, range.end);
  const start = range.start + piece.length - piece.trimStart().length;
  return { start, end: Math.max(start, range.end - (piece.length - piece.trimEnd().length)) };
}

/** Splits where a child left out the capital or a line ends, and joins "Stop!" with who said it; every sentence holds a letter or digit. */
export function mendSentences(text: string, found: readonly Range[]): readonly Range[] {
  const mended: Range[] = [];
  for (const whole of found) {
    for (const piece of pieces(text, whole)) {
      const sentence = trimmed(text, piece);
      const words = text.slice(sentence.start, sentence.end);
      const last = mended.at(-1);
      const between = last === undefined ? '\n' : text.slice(last.end, sentence.start);
      const speech =
        last !== undefined && saidEnd.test(text.slice(last.start, last.end)) && saidAfter.test(words);
      if (last !== undefined && !between.includes('\n') && (speech || !/[\p{L}\p{N}]/u.test(words))) {
        mended[mended.length - 1] = { start: last.start, end: sentence.end };
      } else if (/[\p{L}\p{N}]/u.test(words)) mended.push(sentence);
    }
  }
  return mended;
}
