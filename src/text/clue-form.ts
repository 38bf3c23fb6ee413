import type { ClueKind, Range } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import type { ClueRule } from './clue-rules.js';
import { antonymAmong, synonymAmong } from './word-sense.js';

const marks = new Set(['brackets', 'dash', 'colon']);
const mostBesideQuality = 3;
const pointing = /^(?:this|that|these|those|the|my|our|his|her|their|its) /i;

interface Shaped extends Range {
  readonly kind: ClueKind;
}

const listed = /^[^,;:]+(?:, [^,;:]+)+,? (?:and|or) [^,;:]+|^[^,;:]{2,60}(?:, [^,;:]{2,60}){2,}$/;
const pair = /^(?:\p{L}+s|\p{L}+) (?:and|or) \p{L}+$/iu;
/** "he was starving": who it is about stays outside. */
const subject =
  /^(?:he|she|it|they|we|i|you|this|that) (?:is|was|are|were|had|has|felt|looked|seemed) (?:very |so |quite )?|^that /i;
/** Longer names for the same thing than this are definitions. */
const mostSynonymWords = 2;
const timeOrPlace =
  /^(?:last|next|this|on|in|at|the others?|every) (?:year|week|month|monday|tuesday|wednesday|thursday|friday|saturday|sunday|time)\b/i;

function tokensIn({ tokens }: Analysis, { start, end }: Range): readonly Token[] {
  return tokens.filter((token) => token.start >= start && token.end <= end);
}

function trimmed({ text }: Analysis, { start, end }: Range): Range {
  const piece = text.slice(start, end);
  let front = /^[\s,:"“”‘’'()—–-]*/.exec(piece)?.[0].length ?? 0;
  const back = /[\s,:"“”‘’'()—–-]*$/.exec(piece)?.[0].length ?? 0;
  front += subject.exec(piece.slice(front))?.[0].length ?? 0;
  return front + back >= piece.length ? { start, end: start } : { start: start + front, end: end - back };
}

/** A list at the start of a stretch, where the sentence goes on behind it: "snakes, lizards and turtles | warm themselves". */
function cutList({ text }: Analysis, range: Range): Range {
  const list = /^(?:[^\s,]+ ?){1,4}(?:, (?:[^\s,]+ ?){1,4})*,? (?:and|or) (?:an? |the )?\p{L}+/u.exec(
    text.slice(range.start, range.end),
  );
  return list && /,/.test(list[0]) ? { start: range.start, end: range.start + list[0].length } : range;
}

/** Cuts what a rule of announcement found to its core and says of which kind it is; null where it tells nothing. */
export function clueForm(
  rule: ClueRule,
  found: Range,
  analysis: Analysis,
  word: string,
  lexicon: Lexicon,
): Shaped | null {
  const range = trimmed(analysis, found);
  const content = tokensIn(analysis, range).filter((token) => token.content);
  if (content.length === 0 || content.every((token) => token.name)) return null;
  const noun = lexicon.partShares(word).noun > 0.4 || lexicon.senses(word) === 0;
  // What is set beside an adjective or a verb by a stop is most often a further thought, no meaning.
  if (
    !noun &&
    (rule.name === 'comma and a kind' || (marks.has(rule.name) && content.length > mostBesideQuality))
  ) {
    return null;
  }
  if (rule.kind === 'example') return { kind: 'example', ...cutList(analysis, range) };
  if (rule.kind === 'synonym') return { kind: 'synonym', ...range };
  const text = analysis.text.slice(range.start, range.end);
  if (rule.kind === 'form' && (listed.test(text) || pair.test(text))) return { kind: 'example', ...range };
  const same = synonymAmong(word, content, lexicon);
  if (rule.kind === 'form' && same) return { kind: 'synonym', start: same.start, end: same.end };
  const first = text.split(',')[0] ?? text;
  const core =
    rule.kind === 'form' && first.length > 2
      ? { start: range.start, end: range.start + first.length }
      : range;
  if (marks.has(rule.name) && !noun && pointing.test(text)) return null;
  const short = tokensIn(analysis, core).length <= mostSynonymWords;
  return {
    kind: rule.kind === 'form' && short ? 'synonym' : rule.kind === 'form' ? 'definition' : rule.kind,
    ...core,
  };
}

/** What is left of a cause or contrast, and whether it is the opposite of the word. */
export interface TrimmedClue extends Range {
  readonly opposite: boolean;
}

/** Cuts a cause or contrast to what tells something; null for a mere time or nothing of weight. With a word, to its opposite where that stands there. */
export function trimClue(
  found: Range,
  analysis: Analysis,
  against: { readonly word: string; readonly lexicon: Lexicon } | null,
): TrimmedClue | null {
  const range = trimmed(analysis, found);
  const content = tokensIn(analysis, range).filter((token) => token.content);
  const text = analysis.text.slice(range.start, range.end);
  if (content.length === 0 || timeOrPlace.test(text)) return null;
  const opposite = against ? antonymAmong(against.word, content, against.lexicon) : null;
  return opposite
    ? { start: opposite.start, end: opposite.end, opposite: true }
    : { ...range, opposite: false };
}
