import type { Analysis } from '../text/analysis.js';
import { clausesOf, type Clause } from './clauses.js';
import { rootOf } from './root.js';
import type { JudgingTools } from './tools.js';
import { cues, feelings, type Cue } from './question-cues.js';

/** What a segment offers to any question about it, worked out once. */
export interface SegmentView {
  readonly analysis: Analysis;
  readonly clauses: readonly Clause[];
  /** Of each sentence: tokens, feeling words, whether each cue stands in it. */
  readonly sentences: readonly SentenceView[];
  /** Index of the clause of each token. */
  readonly clauseOf: readonly number[];
  /** Root of each token. */
  readonly roots: readonly string[];
  /** Where each root stands, function words too. */
  readonly stems: ReadonlyMap<string, readonly number[]>;
  /** Roots of names. */
  readonly names: ReadonlySet<string>;
}

export interface SentenceView {
  readonly words: number;
  readonly feelings: number;
  readonly names: ReadonlySet<string>;
  readonly cues: Readonly<Record<Cue, number>>;
}

const views = new WeakMap<Analysis, SegmentView>();

/** The view of a segment; the same analysis is viewed once. */
export function viewSegment(analysis: Analysis, { lexicon }: JudgingTools): SegmentView {
  const known = views.get(analysis);
  if (known) return known;
  const clauses = clausesOf(analysis);
  const stems = new Map<string, number[]>();
  const roots = analysis.tokens.map(({ lower }) => rootOf(lower, lexicon));
  roots.forEach((stem, i) => {
    const at = stems.get(stem);
    if (at) at.push(i);
    else stems.set(stem, [i]);
  });
  const clauseOf = clauses.flatMap(({ first, end }, i) => new Array<number>(end - first).fill(i));
  const names = new Set(analysis.tokens.flatMap(({ name }, i) => (name ? [roots[i]!] : [])));
  const view = { analysis, clauses, roots, sentences: sentencesOf(analysis, roots), clauseOf, stems, names };
  views.set(analysis, view);
  return view;
}

function sentencesOf(
  { text, sentences, tokens }: Analysis,
  roots: readonly string[],
): readonly SentenceView[] {
  const views = sentences.map(({ start, end }) => ({
    words: 0,
    feelings: 0,
    names: new Set<string>(),
    cues: cuesIn(text.slice(start, end).toLowerCase()),
  }));
  for (const [i, { sentence, lower, name }] of tokens.entries()) {
    const view = views[sentence]!;
    view.words += 1;
    if (feelings.has(lower)) view.feelings += 1;
    if (name) view.names.add(roots[i]!);
  }
  return views;
}

function cuesIn(sentence: string): Record<Cue, number> {
  const found = Object.entries(cues).map(([cue, pattern]) => [cue, pattern.test(sentence) ? 1 : 0] as const);
  return Object.fromEntries(found) as Record<Cue, number>;
}
