import type { Analysis } from '../text/analysis.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { viewSegment, type SegmentView } from './segment-view.js';
import { readWording, type MeantWord, type Wording } from './question-wording.js';
import type { JudgingTools } from './tools.js';

/** A content word of a question, and where the segment has it. */
export interface Term {
  readonly word: MeantWord;
  /** How much it tells: rare words and those that the segment does not repeat tell more; about .05 to 1.5. */
  readonly rarity: number;
  /** Tokens of the segment with its stem. */
  readonly at: readonly number[];
  /** Sentences of the segment with its stem, each once, in order. */
  readonly sentences: readonly number[];
}

/** A question laid beside its segment: which of its words stand where. */
export interface QuestionView {
  readonly question: Analysis;
  readonly segment: SegmentView;
  readonly wording: Wording;
  readonly terms: readonly Term[];
  /** Share, 0..1, of the terms' rarity that each sentence and each clause holds. */
  readonly sentenceCover: readonly number[];
  readonly clauseCover: readonly number[];
  /** The sentence that holds most, -1 in an empty segment. */
  readonly best: number;
}

/** Words that frame a question and need not stand in the text. */
const frame = new Set([
  'feel',
  'happen',
  'do',
  'think',
  'clue',
  'text',
  'part',
  'stori',
  'author',
  'writer',
  'reason',
  'passag',
  'paragraph',
  'tell',
  'show',
]);

/** How much a word tells by its frequency in films, 0.05..1.5; a word unknown there counts as rare. */
export function rarityOf(lower: string, lexicon: Lexicon): number {
  const zipf = lexicon.zipf(lower.replace(/'s?$/, '')) || 2.5;
  return Math.max(0.05, (7.6 - zipf) / 5);
}

/** Lays a question beside its segment. */
export function viewQuestion(text: string, segmentText: string, tools: JudgingTools): QuestionView {
  const question = tools.analyse(text);
  const segment = viewSegment(tools.analyse(segmentText), tools);
  const wording = readWording(question, segment.analysis, tools);
  const terms = termsOf(wording, segment, tools.lexicon);
  const total = terms.reduce((sum, { rarity }) => sum + rarity, 0) || 1;
  const sentenceCover = new Array<number>(segment.sentences.length).fill(0);
  const clauseCover = new Array<number>(segment.clauses.length).fill(0);
  for (const { at, sentences, rarity } of terms) {
    for (const s of sentences) sentenceCover[s]! += rarity / total;
    for (const c of new Set(at.map((i) => segment.clauseOf[i]!))) clauseCover[c]! += rarity / total;
  }
  return { question, segment, wording, terms, sentenceCover, clauseCover, best: topOf(sentenceCover) };
}

function termsOf(wording: Wording, segment: SegmentView, lexicon: Lexicon): readonly Term[] {
  const terms = new Map<string, Term>();
  for (const word of wording.words) {
    if (!word.content || frame.has(word.stem) || terms.has(word.stem)) continue;
    const at = segment.stems.get(word.stem) ?? [];
    const repeated = 1 + 0.15 * Math.max(0, at.length - 1);
    terms.set(word.stem, {
      word,
      rarity: rarityOf(word.lower, lexicon) / repeated,
      at,
      sentences: sentencesOf(at, segment),
    });
  }
  return [...terms.values()];
}

function sentencesOf(at: readonly number[], { analysis }: SegmentView): readonly number[] {
  return [...new Set(at.map((i) => analysis.tokens[i]!.sentence))];
}

/** Index of the first highest number, -1 for none. */
export function topOf(numbers: readonly number[]): number {
  return numbers.reduce((top, number, i) => (top < 0 || number > numbers[top]! ? i : top), -1);
}
