import { openings, marks } from './question-form.js';
import { cues, type Cue } from './question-cues.js';
import { longestRun, pairShare } from './question-runs.js';
import { besideFeatures, clauseFeatures } from './question-beside.js';
import { generalFeatures } from './question-general.js';
import { nearFeatures } from './question-near.js';
import type { JudgingTools } from './tools.js';
import { topOf, type QuestionView } from './question-view.js';

/** Numbers by name, from which a model judges. */
export type Features = Readonly<Record<string, number>>;

/** Puts the features that hang on `located`, each clause's chance to hold the answer, beside the settled ones in `into`. */
export function putLocated(
  view: QuestionView,
  located: readonly number[],
  into: Record<string, number>,
): void {
  locatedFeatures(located, into);
  clauseFeatures(view, located, into);
}

/** The features that need no learned model. */
export function settledFeatures(view: QuestionView, tools: JudgingTools): Record<string, number> {
  const features: Record<string, number> = {};
  formFeatures(view, features);
  coverFeatures(view, features);
  nearFeatures(view, features, tools);
  cueFeatures(view, features);
  besideFeatures(view, features, tools);
  generalFeatures(view, features, tools);
  return features;
}

const openingNames = [...openings.map(({ name }) => name), 'other'];
const openingFeatures = openingNames.map((name) => [name, `opens ${name}`] as const);
const cueNames = (Object.keys(cues) as Cue[]).map(
  (cue) => [cue, `${cue} in best`, `${cue} after`, `${cue} before`] as const,
);

function formFeatures({ wording, terms, question }: QuestionView, into: Record<string, number>): void {
  for (const [name, feature] of openingFeatures) into[feature] = wording.opening === name ? 1 : 0;
  for (const { name } of marks) into[name] = wording.marks.has(name) ? 1 : 0;
  into.terms = terms.length;
  into.words = Math.log(Math.max(1, question.tokens.length));
  into['mean rarity'] = terms.reduce((sum, { rarity }) => sum + rarity, 0) / Math.max(1, terms.length);
}

function coverFeatures(view: QuestionView, into: Record<string, number>): void {
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
  Object.assign(into, {
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
  });
}

/** Highest share of the terms' rarity in `size` sentences in a row. */
function windowCover({ terms, segment }: QuestionView, size: number, total: number): number {
  const sums = new Array<number>(segment.sentences.length).fill(0);
  for (const { sentences, rarity } of terms) {
    let filled = -1;
    for (const sentence of sentences) {
      for (let first = Math.max(filled + 1, sentence - size + 1); first <= sentence; first++)
        sums[first]! += rarity;
      filled = sentence;
    }
  }
  return Math.max(0, ...sums) / total;
}

function cueFeatures({ segment, best, terms }: QuestionView, into: Record<string, number>): void {
  const { sentences, analysis } = segment;
  const [before, here, after, later] = [best - 1, best, best + 1, best + 2].map((i) => sentences[i]);
  for (const [cue, inBest, next, previous] of cueNames) {
    into[inBest] = here?.cues[cue] ?? 0;
    into[next] = after?.cues[cue] ?? 0;
    into[previous] = before?.cues[cue] ?? 0;
  }
  const feelingsIn = (sentence: typeof here): number => Math.min(2, sentence?.feelings ?? 0);
  into['feeling in best'] = feelingsIn(here);
  into['feeling after'] = feelingsIn(after);
  into['feeling before'] = feelingsIn(before);
  into['feeling later'] = feelingsIn(later);
  const all = sentences.reduce((sum, { feelings }) => sum + feelings, 0);
  into.feelings = (50 * all) / Math.max(1, analysis.tokens.length);
  const asked = (name: string): boolean => terms.some(({ word }) => word.stem === name);
  into['new names'] = [...(here?.names ?? [])].filter((name) => !asked(name)).length;
  into['because anywhere'] = sentences.some((sentence) => sentence.cues.because) ? 1 : 0;
  into['cause share'] =
    sentences.filter((sentence) => sentence.cues.cause).length / Math.max(1, sentences.length);
}

function locatedFeatures(located: readonly number[], into: Record<string, number>): void {
  const sum = located.reduce((total, chance) => total + chance, 0);
  const top = located[topOf(located)] ?? 0;
  const sorted = [...located].sort((a, b) => b - a);
  const none = located.reduce((product, chance) => product * (1 - chance), 1);
  Object.assign(into, {
    clause: Math.log(top + 1e-6),
    'clause chance': top,
    clauses: Math.log(sum + 1e-6),
    'second clause': sorted[1] ?? 0,
    'some clause': 1 - none,
    clearest: sum > 0 ? top / sum : 0,
  });
}
