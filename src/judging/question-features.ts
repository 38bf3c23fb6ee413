import { openings, marks } from './question-form.js';
import { cues, type Cue } from './question-cues.js';
import { longestRun, pairShare } from './question-runs.js';
import { topOf, type QuestionView } from './question-view.js';

/** Numbers by name, from which a logistic model judges. */
export type Features = Readonly<Record<string, number>>;

/** Openings whose questions are answered in ways of their own, so that the other features weigh differently for them. */
const weighedApart = [
  'why',
  'how feel',
  'how',
  'what did',
  'what did do',
  'what happened',
  'what will',
  'who',
  'what was',
];
const apart = [
  'best cover', 'cover of two', 'cover', 'missing', 'rarest missing', 'run', 'length', 'cause in best', 'because in best', 'cause after',
  'cause before', 'so in best', 'for in best', 'purpose in best', 'for after', 'feeling in best', 'feeling after', 'feeling before', 'feelings',
  'half covered', 'position', 'quote in best', 'future in best', 'terms', 'after', 'negation', 'will', 'want', 'when inside', 'pairs',
  'spread', 'but before', 'but in best', 'clause', 'clauses', 'clearest',
]; // prettier-ignore

/** All features of a question on its segment; `located` is each clause's chance to hold the answer. */
export function questionFeatures(view: QuestionView, located: readonly number[]): Features {
  const plain = {
    ...formFeatures(view),
    ...coverFeatures(view),
    ...cueFeatures(view),
    ...locatedFeatures(located),
  };
  const { opening } = view.wording;
  if (!weighedApart.includes(opening)) return plain;
  const own = apart.map((name) => [`${opening}: ${name}`, plain[name]!] as const);
  return { ...plain, ...Object.fromEntries(own) };
}

function formFeatures({ wording, terms, question }: QuestionView): Record<string, number> {
  const opening = [...openings.map(({ name }) => name), 'other'];
  return {
    ...Object.fromEntries(opening.map((name) => [`opens ${name}`, wording.opening === name ? 1 : 0])),
    ...Object.fromEntries(marks.map(({ name }) => [name, wording.marks.has(name) ? 1 : 0])),
    terms: terms.length,
    words: Math.log(Math.max(1, question.tokens.length)),
    'mean rarity': terms.reduce((sum, { rarity }) => sum + rarity, 0) / Math.max(1, terms.length),
  };
}

function coverFeatures(view: QuestionView): Record<string, number> {
  const { terms, sentenceCover, best, segment } = view;
  const missing = terms.filter(({ at }) => at.length === 0);
  const total = terms.reduce((sum, { rarity }) => sum + rarity, 0) || 1;
  const lost = missing.reduce((sum, { rarity }) => sum + rarity, 0);
  const present = terms.filter(({ at }) => at.length > 0);
  const bestCover = sentenceCover[best] ?? 0;
  const cover = terms.length > 0 ? 1 - lost / total : 0;
  const sentences = segment.sentences.length;
  const position = sentences > 1 ? best / (sentences - 1) : 0;
  const run = longestRun(view);
  return {
    'best cover': bestCover,
    'second cover': [...sentenceCover].sort((a, b) => b - a)[1] ?? 0,
    'cover of two': windowCover(view, 2, total),
    'cover of three': windowCover(view, 3, total),
    cover,
    spread: cover - bestCover,
    missing: missing.length,
    'share missing': missing.length / Math.max(1, terms.length),
    'rarest missing': Math.max(0, ...missing.map(({ rarity }) => rarity)),
    'rarity missing': lost,
    'rarest present': Math.max(0, ...present.map(({ rarity }) => rarity)),
    'fewest places': Math.min(5, ...present.map(({ at }) => at.length)),
    'last missing': terms.at(-1)?.at.length === 0 ? 1 : 0,
    position,
    'at end': position > 0.8 ? 1 : 0,
    'at start': position < 0.1 ? 1 : 0,
    'half covered': sentenceCover.filter((share) => share >= 0.5).length,
    'best length': Math.log(segment.sentences[best]?.words ?? 1),
    length: Math.log(Math.max(1, segment.analysis.tokens.length)),
    sentences: Math.log(Math.max(1, sentences)),
    run: run.words / Math.max(1, view.wording.words.length),
    'run content': run.content,
    pairs: pairShare(view),
  };
}

/** Highest share of the terms' rarity in `size` sentences in a row. */
function windowCover({ terms, segment }: QuestionView, size: number, total: number): number {
  const sentenceOf = (i: number): number => segment.analysis.tokens[i]!.sentence;
  const found = terms.map(({ at, rarity }) => ({ rarity, in: [...new Set(at.map(sentenceOf))] }));
  const sums = segment.sentences.map((_, first) =>
    found.reduce(
      (sum, { rarity, in: at }) => (at.some((s) => s >= first && s < first + size) ? sum + rarity : sum),
      0,
    ),
  );
  return Math.max(0, ...sums) / total;
}

function cueFeatures({ segment, best, terms }: QuestionView): Record<string, number> {
  const { sentences, analysis } = segment;
  const found: Record<string, number> = {};
  for (const cue of Object.keys(cues) as Cue[]) {
    found[`${cue} in best`] = sentences[best]?.cues[cue] ?? 0;
    found[`${cue} after`] = sentences[best + 1]?.cues[cue] ?? 0;
    found[`${cue} before`] = sentences[best - 1]?.cues[cue] ?? 0;
  }
  const feelingsAt = (i: number): number => Math.min(2, sentences[i]?.feelings ?? 0);
  const asked = new Set(terms.map(({ word }) => word.stem));
  const per50 = 50 / Math.max(1, analysis.tokens.length);
  return {
    ...found,
    'feeling in best': feelingsAt(best),
    'feeling after': feelingsAt(best + 1),
    'feeling before': feelingsAt(best - 1),
    'feeling later': feelingsAt(best + 2),
    feelings: sentences.reduce((sum, { feelings }) => sum + feelings, 0) * per50,
    'new names': [...(sentences[best]?.names ?? [])].filter((name) => !asked.has(name)).length,
    'because anywhere': sentences.some(({ cues }) => cues.because) ? 1 : 0,
    'cause share': sentences.filter(({ cues }) => cues.cause).length / Math.max(1, sentences.length),
  };
}

function locatedFeatures(located: readonly number[]): Record<string, number> {
  const sum = located.reduce((total, chance) => total + chance, 0);
  const top = located[topOf(located)] ?? 0;
  const sorted = [...located].sort((a, b) => b - a);
  const none = located.reduce((product, chance) => product * (1 - chance), 1);
  return {
    clause: Math.log(top + 1e-6),
    'clause chance': top,
    clauses: Math.log(sum + 1e-6),
    'second clause': sorted[1] ?? 0,
    'some clause': 1 - none,
    clearest: sum > 0 ? top / sum : 0,
  };
}
