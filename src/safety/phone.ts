import { eachMatch } from './each-match.js';
import type { Finding } from '../../shared/judgements.js';
import type { Folded } from './folding.js';

const digitWords =
  'zero|oh|o|nought|one|two|three|four|five|six|seven|eight|nine|null|eins|zwei|zwo|drei|vier|funf|sechs|sieben|acht|neun|un|deux|trois|quatre|cinq|sept|huit|neuf|cero|uno|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|nul|een|twee|drie|vijf|zes|zeven|negen|due|tre|quattro|cinque|sei|sette|otto|nove|sifir|bir|iki|uc|dort|bes|alti|yedi|sekiz|dokuz|um|dois|quatro|sete|oito|noll|ett|tva|fyra|fem|sex|sju|atta|nio|jeden|dwa|trzy|cztery|piec|szesc|siedem|osiem|dziewiec';
const counted = `(?:double|triple|treble|doppel|doble)?[ ,-]{0,2}(?:${digitWords}|hundred|thousand|\\d)`;
const inWords = new RegExp(
  `(?<![\\p{L}\\p{N}])(?:${counted})(?:(?:[ ,.\\n-]{1,3}|[ ,]*(?:and|then|und|et|y)[ ,]+)(?:${counted}))*(?![\\p{L}\\p{N}])`,
  'gu',
);
const jammed = new RegExp(`(?:zero|oh|one|two|three|four|five|six|seven|eight|nine|double|triple){6,}`, 'gu');
const inDigits =
  /(?<![\p{L}\p{N}.,:])(?:\+|\(?00)?\(?\d(?:(?:[ \t\n().,/\\_*~+•|-]{0,3}| (?:then|and|und|dann|puis|et|y|luego|next|after that|dash|plus|space) )\d){5,18}(?![\p{N}\p{L}])/gu;
const about =
  /\b(?:phone|fone|number|nummer|numero|numer|num|mobile|handy|cell|call|ring|text|txt|message|msg|whats ?app|tel|telephone|telefon|reach me|contact|landline|hotline|dial)\w*/u;
const unit =
  /^\s*(?:km|kilomet|met|m\b|cm|mm|miles?|mi\b|feet|ft|years?|people|bees|days?|hours?|minutes?|seconds?|kg|kilos?|tons?|tonnes?|grams?|degrees?|percent|%|dollars?|pounds?|euros?|litres?|stars?|trees?|animals?|times|points?|[=x*/+×÷<>]|million|thousand|billion)/u;

/** Digits in a child's spelling; only where a post speaks of a phone and many stand in a row. */
const misspelt =
  /(?<![\p{L}\p{N}])(?:(?:zero|zro|zeero|oh|o|nought|noght|nowt|naught|nort|not|one|wun|won|two|too|to|tu|three|thre|free|tree|four|for|fore|foor|five|fiv|fife|six|siks|sicks|seven|sevn|sevun|seben|eight|ate|eit|ait|eigt|nine|nyne|nien|nin|nein|double|dubble|triple|hundred|\d)(?:[ ,.-]{1,3}|$)){6,}/gu;
const digitCue =
  /first half|second half|other half|starts with|begins with|ends with|ends in|last (?:three|four|five|six|\d) digits|rest of/u;

const finding = (rule: string, folded: Folded, at: number, length: number): Finding => ({
  kind: 'personal',
  rule,
  place: { in: 'text', start: folded.starts[at] ?? 0, end: folded.ends[at + length - 1] ?? 0 },
});

/** Thousands set in groups ("640 000 000", "1,200,000"), dates, years, ranges and sums are no phone numbers. */
function looksLikeNumber(match: string, before: string, after: string): boolean {
  if (unit.test(after) || /[=x*×÷<>/]\s*$/u.test(before)) return true;
  if (
    /^[1-9]\d{0,2}(?:[ ,.]\d{3})+$/u.test(match) &&
    (/^[1-9]\d{0,2}(?:[ ,.]000)+$/u.test(match) || match.includes(','))
  )
    return true;
  if (
    /^(?:\d{1,3}(?:, ?| and ))+\d{1,3}$/u.test(match) &&
    !/(?:number|phone|call|ring|text|mobile)/u.test(before)
  )
    return true;
  if (
    /(?:isbn|barcode|bar code|serial|model|record|population|prisoner|engine|flight|catalogue)\W*(?:\w+\W+)?$/u.test(
      before,
    )
  )
    return true;
  if (/^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}$/u.test(match)) return true;
  if (/^(?:1\d|20)\d\d\s?[-/–, ]\s?(?:1\d|20)\d\d$/u.test(match)) return true;
  if (/^(?:\d{1,3}[ ,-]+){4,}\d{1,3}$/u.test(match) && ascending(match)) return true;
  return /(?:page|pages|line|lines|pg|p|chapter|ch)s?\.?\s*$/u.test(before);
}

function ascending(match: string): boolean {
  const numbers = match.match(/\d+/gu)?.map(Number) ?? [];
  const steps = new Set(numbers.slice(1).map((n, at) => n - (numbers[at] ?? 0)));
  return steps.size === 1;
}

/** Phone numbers in digits, and in words of a few languages, doubled digits and all. */
export function phonesIn(folded: Folded): readonly Finding[] {
  const { text } = folded;
  const cue = about.test(text);
  const out: Finding[] = [];
  for (const match of eachMatch(inDigits, text)) {
    const digits = match[0].replace(/\D/gu, '').length;
    const after = text.slice(match.index + match[0].length, match.index + match[0].length + 20);
    if (looksLikeNumber(match[0], text.slice(Math.max(0, match.index - 30), match.index), after)) continue;
    const grouped = /[ ().,/_-]/u.test(match[0]);
    if (digits >= 9 || (digits >= 7 && (grouped || cue)) || (digits >= 6 && cue)) {
      out.push(finding('phone number', folded, match.index, match[0].length));
    }
  }
  for (const match of eachMatch(misspelt, text)) {
    const many = match[0].match(/[\p{L}\p{N}]+/gu)?.length ?? 0;
    if ((cue || many >= 8) && !counting(match[0].match(/[\p{L}\p{N}]+/gu) ?? []))
      out.push(finding('phone number in words', folded, match.index, match[0].length));
  }
  for (const match of cue && digitCue.test(text) ? eachMatch(/(?<![\d.,])0?\d{3,}(?![\d.,])/gu, text) : [])
    out.push(finding('phone number', folded, match.index, match[0].length));
  for (const match of eachMatch(inWords, text)) {
    const words = match[0].match(/[\p{L}\p{N}]+/gu) ?? [];
    const digits = words.reduce((sum, word, at) => sum + worth(word, words[at - 1]), 0);
    if (!/\p{L}/u.test(match[0]) || counting(words)) continue;
    if (digits >= 7 || (digits >= 5 && cue))
      out.push(finding('phone number in words', folded, match.index, match[0].length));
  }
  for (const match of eachMatch(jammed, text))
    out.push(finding('phone number in words', folded, match.index, match[0].length));
  return out;
}

function worth(word: string, before: string | undefined): number {
  if (/^(?:double|triple|treble|doppel|doble|and|then|und|et|y|hundred|thousand)$/u.test(word)) return 0;
  if (before === 'double' || before === 'doppel' || before === 'doble') return 2;
  return before === 'triple' || before === 'treble' ? 3 : 1;
}

const order = 'zero one two three four five six seven eight nine'.split(' ');
/** Counting up or down, or the same number said over and over, is no phone number. */
function counting(words: readonly string[]): boolean {
  const values = words.map((word) => order.indexOf(word));
  const steps = new Set(values.slice(1).map((value, at) => value - (values[at] ?? 0)));
  return values.every((value) => value >= 0) && steps.size === 1;
}
