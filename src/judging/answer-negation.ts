/*
 * Overlap can't see a "not". So for every content word it is noted whether it stands under a negation: from the negating
 * word to the end of the clause, four content words at most. An answer contradicts a text where it negates what the text
 * says plainly, or says plainly what the text only negates. "carts do not sink" against "where carts sink".
 */
import type { Analysis } from '../text/analysis.js';

const negators =
  /^(not|no|never|nobody|nothing|none|neither|nor|without|hardly|cannot|aint|\w+n't|(is|are|was|were|do|does|did|would|could|should|ca|wo|have|has|had)nt)$/;
const clauseEnds = /[,;:.!?()—–]/;
const joins = new Set([
  'because',
  'but',
  'so',
  'and',
  'until',
  'when',
  'while',
  'if',
  'though',
  'cause',
  'cuz',
  'becuz',
  'that',
]);
const reach = 4;

/** How often each stem stands plainly and how often under a negation. */
export type Polarity = ReadonlyMap<
  string,
  { readonly plain: number; readonly negated: number; readonly token: number }
>;

/** Polarity of all content words; `keys` are their stems with spelling put right, the tokens' own where absent. */
export function polarityOf(analysis: Analysis, keys?: readonly string[]): Polarity {
  const found = new Map<string, { plain: number; negated: number; token: number }>();
  let left = 0;
  analysis.tokens.forEach((token, i) => {
    const before = analysis.tokens[i - 1];
    if (before && clauseEnds.test(analysis.text.slice(before.end, token.start))) left = 0;
    if (joins.has(token.lower)) left = 0;
    if (negators.test(token.lower)) {
      left = reach;
      return;
    }
    if (!token.content && !/^(enough|there|get|got|go|went|want|need|use|used|new)$/.test(token.lower))
      return;
    const stem = keys?.[i] ?? token.stem;
    const known = found.get(stem) ?? { plain: 0, negated: 0, token: i };
    found.set(stem, known);
    if (left > 0) known.negated += 1;
    else known.plain += 1;
    left = Math.max(0, left - 1);
  });
  return found;
}

/** Whether a text holds any negation. */
export function negates(analysis: Analysis): boolean {
  return analysis.tokens.some(({ lower }) => negators.test(lower));
}

/** Token of the answer whose polarity the text contradicts, or null. */
export function contradiction(answer: Polarity, text: Polarity): number | null {
  for (const [stem, here] of answer) {
    const there = text.get(stem);
    if (!there) continue;
    if (here.negated > 0 && there.negated === 0 && there.plain > 0) return here.token;
    if (here.plain > 0 && here.negated === 0 && there.plain === 0 && there.negated > 0) return here.token;
  }
  return null;
}

/** Pairs of which one can't be said for the other; each word against those of the other side (list ours). */
const opposites: readonly (readonly [RegExp, RegExp])[] = [
  [/^(more|higher|bigger|larger|greater|longer|faster|increases?|increased|heavier|louder|stronger|taller|hotter|warmer|gain)$/, /^(less|lower|smaller|fewer|shorter|slower|decreases?|decreased|lighter|quieter|softer|weaker|cooler|colder|lose|loses)$/],
  [/^(yes|same|all|always|open|opened|up|in|inside|before|first|above|hot|warm)$/, /^(no|different|none|never|closed|shut|down|out|outside|after|last|below|cold|cool)$/],
  [/^(happy|glad|pleased|good|safe|brave|rich|easy|light|wet|soft|strong)$/, /^(sad|unhappy|angry|upset|bad|dangerous|afraid|scared|poor|hard|dark|heavy|dry|weak)$/],
]; // prettier-ignore

/** Whether one text uses a word from one side of a pair of opposites, and the other only from the other side. */
export function opposed(one: Analysis, other: Analysis): boolean {
  const has = ({ tokens }: Analysis, side: RegExp): boolean => tokens.some(({ lower }) => side.test(lower));
  return opposites.some(
    ([up, down]) =>
      (has(one, up) && !has(one, down) && has(other, down) && !has(other, up)) ||
      (has(one, down) && !has(one, up) && has(other, up) && !has(other, down)),
  );
}
