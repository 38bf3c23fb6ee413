import type { Range } from '../../shared/text.js';
import type { Analysis } from './analysis.js';
import { isHeading } from './headings.js';

/** Words of a segment by grade (common practice, no source). Grades outside 3-8 take the nearest row. */
export const segmentSizes: readonly {
  readonly upTo: number;
  readonly least: number;
  readonly most: number;
}[] = [
  { upTo: 4, least: 40, most: 80 },
  { upTo: 6, least: 60, most: 120 },
  { upTo: 8, least: 100, most: 200 },
];

/** What a break costs before a sentence; a segment wholly out of its size costs about 4. Ours, set by eye on our own passages. */
const costs = {
  heading: -0.4,
  paragraph: 0,
  sentence: 0.6,
  pronoun: 0.7,
  item: 1.5,
  leadIn: 1.5,
  answer: 0.3,
};
const outOfSize = 4;
const offMiddle = 0.3;

const pronoun =
  /^["“‘'(]*(?:(?:and|but|so|then|when|while|because|if|as|after|before)\s+)?(?:he|she|it|they|him|her|them|his|their|its|this|these|that|those|such|both|neither|another|others|the other)\b/i;

function sizeOf(grade: number) {
  const row = segmentSizes.find(({ upTo }) => grade <= upTo) ?? segmentSizes.at(-1);
  return row ?? { upTo: 8, least: 100, most: 200 };
}

interface Unit extends Range {
  readonly words: number;
  /** Cost of a break before it; Infinity where none may be. */
  readonly before: number;
}

function breakCost(text: string, last: Range, next: Range): number {
  const gap = text.slice(last.end, next.start);
  const words = text.slice(next.start, next.end);
  if (isHeading(text, last)) return Infinity;
  if (isHeading(text, next)) return costs.heading;
  const leadIn = text.slice(last.start, last.end).endsWith(':') ? costs.leadIn : 0;
  const refers = pronoun.test(words) ? costs.pronoun : 0;
  if (/\n\s*\n/.test(gap)) {
    const answer = /^["“‘]/.test(words) && /["”’]/.test(text.slice(last.start, last.end)) ? costs.answer : 0;
    return costs.paragraph + leadIn + refers / 2 + answer;
  }
  return (gap.includes('\n') ? costs.item : costs.sentence) + leadIn + refers;
}

function unitsOf({ text, sentences, tokens }: Analysis): readonly Unit[] {
  const counts = new Array<number>(sentences.length).fill(0);
  for (const { sentence } of tokens) counts[sentence] = (counts[sentence] ?? 0) + 1;
  return sentences.map((range, n) => {
    const last = sentences[n - 1];
    return { ...range, words: counts[n] ?? 0, before: last ? breakCost(text, last, range) : 0 };
  });
}

/** Cuts a cleaned passage, blocks parted by blank lines, into segments for a grade: ranges of its text that hold all its sentences. */
export function cutSegments(passage: Analysis, grade: number): readonly Range[] {
  const { least, most } = sizeOf(grade);
  const middle = (least + most) / 2;
  const units = unitsOf(passage);
  const best: { readonly cost: number; readonly from: number }[] = [{ cost: 0, from: 0 }];
  for (let end = 1; end <= units.length; end++) {
    let least_ = { cost: Infinity, from: end - 1 };
    let words = 0;
    for (let from = end - 1; from >= 0; from--) {
      words += units[from]?.words ?? 0;
      const short = words < least ? (least - words) / least : 0;
      const long = words > most ? (words - most) / most : 0;
      const cost =
        (best[from]?.cost ?? Infinity) +
        (from > 0 ? (units[from]?.before ?? 0) : 0) +
        outOfSize * (short ** 2 + long ** 2) +
        offMiddle * ((words - middle) / middle) ** 2;
      if (cost < least_.cost) least_ = { cost, from };
      if (words > 4 * most) break;
    }
    best.push(least_);
  }
  return traceBack(units, best);
}

function traceBack(units: readonly Unit[], best: readonly { readonly from: number }[]): readonly Range[] {
  const segments: Range[] = [];
  let end = units.length;
  while (end > 0) {
    const from = best[end]?.from ?? 0;
    segments.unshift({ start: units[from]?.start ?? 0, end: units[end - 1]?.end ?? 0 });
    end = from;
  }
  return segments;
}
