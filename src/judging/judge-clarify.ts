import type { ClarifyJudgement, JudgeInput, Reason } from '../../shared/judgements.js';
import type { FixUp } from '../../shared/strategies.js';
import type { Clue } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from '../text/analysis.js';
import { readyWord } from './clarify-word.js';
import { fixUpIn } from './clarify-fix-ups.js';
import { clarifyLevel } from './clarify-level.js';
import { sameMeaning } from './clarify-match.js';
import { plainOf, proposedMeaning, type ProposedMeaning } from './clarify-meaning.js';
import { findPlace, type FoundPlace } from './clarify-place.js';
import { saysNothing, troubleOf } from './clarify-trouble.js';
import { meaningFeatures } from './meaning-features.js';
import { meaningFit, meaningWeightsVersion } from './meaning-fit.js';
import { sided, sideOf, type Side } from './meaning-polarity.js';
import type { JudgingTools } from './tools.js';

type ClarifyInput = Extract<JudgeInput, { kind: 'clarify' }>;

/** Of the rules of this judge; raised with every change of a rule. */
const rules = 1;
/** What a meaning can fit at most: turned round, or with a "not" whose sense can't be told (ours). */
const atMost = { against: 0.1, negated: 0.45 };
/** Words of the segment beside the hard word that make a pupil's text point at evidence. */
const evidenceWords = 2;

/** Fix-ups that are told by giving the meaning itself. */
const explaining: ReadonlySet<FixUp> = new Set([
  'find who "it" or "they" is',
  'say it in my own words',
  'try another word in its place',
]);

interface Fitted {
  readonly fit: number | null;
  readonly side: Side;
}

function fitOf(
  meaning: ProposedMeaning | null,
  segment: Analysis,
  found: FoundPlace | null,
  lexicon: Lexicon,
): Fitted {
  if (!meaning || !found) return { fit: null, side: 'unknown' };
  const { word, sides } = readyWord(segment, found, lexicon);
  const corrected = meaning.tokens.map(({ lower, content }) => spelt(lower, content, lexicon));
  const words = sided(meaning.tokens, corrected);
  const side = sideOf(words, sides, lexicon);
  const fit = meaningFit(meaningFeatures(word, corrected, lexicon));
  if (side === 'against') return { fit: Math.min(fit, atMost.against), side };
  const negated = words.some((one) => one.negated);
  const turned = words.some((one) => one.negated && sides.opposites.has(one.word));
  return { fit: negated && !turned ? Math.min(fit, atMost.negated) : fit, side };
}

/** A word that no list knows, read as the word that it most likely misspells. */
function spelt(lower: string, content: boolean, lexicon: Lexicon): string {
  return !content || lexicon.knows(lower) ? lower : (lexicon.spellings(lower)[0] ?? lower);
}

/** Tokens of the segment within a clue. */
function clueTokens(segment: Analysis, { place }: Clue): readonly Token[] {
  return segment.tokens.filter(({ start, end }) => start >= place.start && end <= place.end);
}

function matchesGiven(
  meaning: ProposedMeaning | null,
  side: Side,
  clue: Clue | null,
  input: ClarifyInput,
  segment: Analysis,
  tools: JudgingTools,
): boolean {
  if (!meaning || side === 'against') return false;
  const given = input.meaning?.trim() ? tools.analyse(input.meaning).tokens : null;
  if (given && sameMeaning(meaning.tokens, given, tools.lexicon)) return true;
  const defines = clue !== null && (clue.kind === 'definition' || clue.kind === 'synonym');
  return defines && sameMeaning(meaning.tokens, clueTokens(segment, clue), tools.lexicon);
}

/** Whether the text points at words of the segment around the hard place. */
function pointsAtText(
  text: Analysis,
  segment: Analysis,
  found: FoundPlace | null,
  meaning: ProposedMeaning | null,
): boolean {
  if (!found) return false;
  const named = new Set(segment.tokens.slice(found.firstToken, found.endToken).map(({ stem }) => stem));
  const behind = text.tokens.filter(
    ({ start, content, stem }) =>
      content && !named.has(stem) && segment.stems.has(stem) && (!meaning || start >= meaning.place.end),
  );
  const tried = text.tokens.filter(
    ({ content, stem }) => content && !named.has(stem) && segment.stems.has(stem),
  );
  return (
    new Set(behind.map(({ stem }) => stem)).size >= evidenceWords ||
    new Set(tried.map(({ stem }) => stem)).size > evidenceWords
  );
}

/** Judges a clarifying try: the place found, the kind of trouble, the fix-up used, and how well a proposed meaning fits. */
export function judgeClarify(input: ClarifyInput, tools: JudgingTools): ClarifyJudgement {
  const { lexicon } = tools;
  const segment = tools.analyse(input.segment);
  const text = tools.analyse(input.text);
  const named = tools.analyse(input.word);
  const plain = plainOf(input.text);
  const none =
    saysNothing(plain) ||
    (named.tokens.length === 0 && text.tokens.length === 0 && input.offset === undefined);
  const found = findPlace(named, segment, input.offset, lexicon);
  const hard = found ? segment.tokens.slice(found.firstToken, found.endToken) : named.tokens;
  const picked = fixUpIn(input.text, input.fixUp);
  const did = picked && !explaining.has(picked.fixUp) ? picked.at : null;
  const meaning = none ? null : proposedMeaning(text, hard, lexicon, did);
  const { fit, side } = fitOf(meaning, segment, found, lexicon);
  const clue = found ? readyWord(segment, found, lexicon).clue : null;
  const matches = matchesGiven(meaning, side, clue, input, segment, tools);
  const trouble = none ? null : troubleOf(named.tokens, found !== null, plain);
  const standing = {
    named: !none && found !== null,
    asksOrExplains: !none && trouble !== null && text.tokens.length > 0,
    meaning: meaning !== null,
    fixUp: picked !== null,
    evidence: pointsAtText(text, segment, found, meaning),
    matches,
    against: side === 'against',
    fit,
  };
  const { level, value, rule } = clarifyLevel(standing);
  return {
    kind: 'clarify',
    level,
    value,
    probability: null,
    measures: {
      found: found ? { start: found.start, end: found.end } : null,
      misspelt: found?.misspelt ?? false,
      fit: matches && fit !== null ? Math.max(fit, 0.9) : fit,
      clue,
      trouble,
      fixUp: picked?.fixUp ?? null,
    },
    reasons: reasonsOf(rule, found, clue, meaning, fit, picked?.at ?? null),
    version: `${rules}.${meaningWeightsVersion}`,
  };
}

function reasonsOf(
  rule: string,
  found: FoundPlace | null,
  clue: Clue | null,
  meaning: ProposedMeaning | null,
  fit: number | null,
  fixUpAt: readonly [number, number] | null,
): readonly Reason[] {
  return [
    { rule, place: meaning ? { in: 'text', ...meaning.place } : null },
    ...(found
      ? [
          {
            rule: found.misspelt ? 'hard place, misspelt' : 'hard place',
            place: { in: 'segment', start: found.start, end: found.end },
          } as const,
        ]
      : []),
    ...(clue ? [{ rule: `clue: ${clue.kind}`, place: clue.place }] : []),
    ...(fixUpAt
      ? [{ rule: 'fix-up named', place: { in: 'text', start: fixUpAt[0], end: fixUpAt[1] } } as const]
      : []),
    ...(fit === null ? [] : [{ rule: 'nearness of the meaning', place: null, figures: { fit } }]),
  ];
}
