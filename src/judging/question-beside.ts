/*
 * What stands beside a question's words wherever the text has them, not in its best sentence alone: causes and feelings,
 * the likeliest clause, and which of the question's parts the text lacks ("how did the hen feel | after the storm").
 */
import type { Cue } from './question-cues.js';
import { topOf, type QuestionView, type Term } from './question-view.js';
import type { SentenceView } from './segment-view.js';
import type { JudgingTools } from './tools.js';

const told: readonly Cue[] = ['because', 'cause', 'so', 'for', 'purpose', 'future', 'quote', 'but', 'when'];
const besideNames = told.map((cue) => [cue, `${cue} by cover`, `${cue} next to cover`] as const);

/** Puts what stands beside the question's words into `into`. */
export function besideFeatures(view: QuestionView, into: Record<string, number>, tools: JudgingTools): void {
  for (const [cue, here, next] of besideNames) {
    into[here] = highestCover(view, (sentence) => sentence.cues[cue] === 1, 0);
    into[next] = highestCover(view, (sentence) => sentence.cues[cue] === 1, 1);
  }
  into['feeling by cover'] = highestCover(view, ({ feelings }) => feelings > 0, 0);
  into['feeling next to cover'] = highestCover(view, ({ feelings }) => feelings > 0, 1);
  expectedFeatures(view, into);
  partFeatures(view, into);
  kindFeatures(view, into, tools);
}

/** Highest cover, as a share of the best, among sentences that hold something or (`reach` 1) stand next to one that does. */
function highestCover(
  { segment: { sentences }, sentenceCover, best }: QuestionView,
  holds: (sentence: SentenceView) => boolean,
  reach: 0 | 1,
): number {
  const top = sentenceCover[best] || 1;
  let highest = 0;
  for (let s = 0; s < sentences.length; s++) {
    const cover = sentenceCover[s]!;
    if (cover <= highest) continue;
    const [before, here, after] = [sentences[s - 1], sentences[s]!, sentences[s + 1]];
    if (reach === 0 ? holds(here) : (before && holds(before)) || (after && holds(after))) highest = cover;
  }
  return highest / top;
}

/** What kind of words an answer to each opening holds. */
const expected: Readonly<Record<string, readonly Cue[]>> = {
  why: ['because', 'cause', 'purpose', 'so', 'for'],
  'what cause': ['because', 'cause', 'so'],
  when: ['when', 'number', 'time'],
  where: ['place'],
  'how many': ['number'],
};

/** How near the question's words the kind of answer stands that it asks for. */
function expectedFeatures(view: QuestionView, into: Record<string, number>): void {
  const { opening } = view.wording;
  const wanted = Object.hasOwn(expected, opening) ? expected[opening] : undefined;
  const asked = new Set(view.terms.map(({ word }) => word.stem));
  const holds = ({ cues: held, names, feelings }: SentenceView): boolean =>
    wanted
      ? wanted.some((cue) => held[cue] === 1)
      : opening === 'who'
        ? [...names].some((name) => !asked.has(name))
        : opening === 'how feel' && feelings > 0;
  const expects = wanted !== undefined || opening === 'who' || opening === 'how feel';
  into['expects a kind'] = expects ? 1 : 0;
  into['kind by cover'] = expects ? highestCover(view, holds, 0) : 0;
  into['kind next to cover'] = expects ? highestCover(view, holds, 1) : 0;
  into['kind nowhere'] = expects && !view.segment.sentences.some(holds) ? 1 : 0;
}

/** Puts facts about the likeliest clause into `into`; `located` is each clause's chance to hold the answer. */
export function clauseFeatures(
  view: QuestionView,
  located: readonly number[],
  into: Record<string, number>,
): void {
  const { segment, sentenceCover, best } = view;
  const clause = segment.clauses[topOf(located)];
  if (!clause) return;
  const { sentence, first, end, quoted } = clause;
  const { cues: held, feelings } = segment.sentences[sentence]!;
  Object.assign(into, {
    'clause distance': Math.max(-4, Math.min(4, sentence - best)),
    'clause far': Math.min(6, Math.abs(sentence - best)),
    'clause cover': sentenceCover[sentence]!,
    'clause quoted': quoted ? 1 : 0,
    'clause because': held.because,
    'clause purpose': held.purpose,
    'clause feeling': Math.min(2, feelings),
    'clause length': end - first,
    'clause place': first / segment.analysis.tokens.length,
  });
}

const joins = new Set(['when', 'after', 'before', 'because', 'if', 'while', 'until', 'as', 'once', 'since']);

/** The question's first part and what follows "when", "after" or the like, each by how far the text covers it. */
function partFeatures({ wording, terms, sentenceCover }: QuestionView, into: Record<string, number>): void {
  const join = wording.words.findIndex(({ lower }, i) => i > 0 && joins.has(lower));
  const from = wording.words[join]?.token.start ?? Infinity;
  const first = terms.filter(({ word }) => word.token.start < from);
  const second = terms.filter(({ word }) => word.token.start > from);
  into['first part cover'] = coverOf(first, sentenceCover.length);
  into['second part cover'] = coverOf(second, sentenceCover.length);
  into['first part terms'] = Math.min(6, first.length);
  into['second part terms'] = Math.min(6, second.length);
}

/** Highest share of the terms' rarity that one sentence holds, 0 for no terms. */
function coverOf(terms: readonly Term[], sentences: number): number {
  const sums = new Float64Array(sentences);
  let total = 0;
  for (const { rarity, sentences: at } of terms) {
    total += rarity;
    for (const s of at) sums[s]! += rarity;
  }
  return total > 0 ? Math.max(0, ...sums) / total : 0;
}

/** Which kinds of words the text lacks: names, words that are mostly verbs, others. */
function kindFeatures(
  { terms, segment, best }: QuestionView,
  into: Record<string, number>,
  { lexicon }: JudgingTools,
): void {
  const lacking = { name: 0, verb: 0, other: 0 };
  let names = 0;
  let verbInBest = 0;
  let verbs = 0;
  for (const { word, at, sentences, rarity } of terms) {
    const name = word.token.name || segment.names.has(word.stem);
    const kind = name ? 'name' : lexicon.partShares(word.lower).verb > 0.5 ? 'verb' : 'other';
    if (name) names += 1;
    if (kind === 'verb') verbs += 1;
    if (kind === 'verb' && sentences.includes(best)) verbInBest = 1;
    if (at.length === 0) lacking[kind] += rarity;
  }
  Object.assign(into, {
    'names missing': lacking.name,
    'verbs missing': lacking.verb,
    'others missing': lacking.other,
    'names asked': Math.min(4, names),
    'verbs asked': Math.min(4, verbs),
    'verb covered by best': verbInBest,
  });
}
