import type { Analysis, Token } from '../text/analysis.js';

/** A stretch of a sentence between marks, at least four words where it can be; token indices, end exclusive. */
export interface Clause {
  readonly first: number;
  readonly end: number;
  readonly sentence: number;
  /** Opens its sentence. */
  readonly opens: boolean;
  readonly quoted: boolean;
}

const shortest = 4;
const mark = /[,;:"“”()—–]|--|\s-\s/;
const quote = /["“”]/;

function marked(text: string, before: Token, after: Token | undefined): boolean {
  return after !== undefined && mark.test(text.slice(before.end, after.start));
}

/** Cuts every sentence of a text into clauses at its marks; the clauses cover all tokens. */
export function clausesOf({ text, tokens }: Analysis): readonly Clause[] {
  const clauses: Clause[] = [];
  let first = 0;
  tokens.forEach((token, i) => {
    const next = tokens[i + 1];
    const ends = next?.sentence !== token.sentence;
    if (!ends && (i + 1 - first < shortest || !marked(text, token, next))) return;
    const from = first > 0 ? tokens[first - 1]!.end : 0;
    const to = next ? next.start : text.length;
    const opens = first === 0 || tokens[first - 1]!.sentence !== token.sentence;
    clauses.push({
      first,
      end: i + 1,
      sentence: token.sentence,
      opens,
      quoted: quote.test(text.slice(from, to)),
    });
    first = i + 1;
  });
  return clauses;
}
