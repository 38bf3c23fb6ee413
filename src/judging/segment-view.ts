import type { Analysis } from '../text/analysis.js';
import { clausesOf, type Clause } from './clauses.js';
import { cues, feelings, type Cue } from './question-cues.js';

/** What a segment offers to any question about it, worked out once. */
export interface SegmentView {
  readonly analysis: Analysis;
  readonly clauses: readonly Clause[];
  /** Of each sentence: tokens, feeling words, whether each cue stands in it. */
  readonly sentences: readonly SentenceView[];
  /** Index of the clause of each token. */
  readonly clauseOf: readonly number[];
  /** Where each stem stands, function words too. */
  readonly stems: ReadonlyMap<string, readonly number[]>;
  /** Stems of names. */
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
export function viewSegment(analysis: Analysis): SegmentView {
  const known = views.get(analysis);
  if (known) return known;
  const clauses = clausesOf(analysis);
  const stems = new Map<string, number[]>();
  analysis.tokens.forEach(({ stem }, i) => {
    const at = stems.get(stem);
    if (at) at.push(i);
    else stems.set(stem, [i]);
  });
  const clauseOf = clauses.flatMap(({ first, end }, i) => new Array<number>(end - first).fill(i));
  const names = new Set(analysis.tokens.filter(({ name }) => name).map(({ stem }) => stem));
  const view = { analysis, clauses, sentences: sentencesOf(analysis), clauseOf, stems, names };
  views.set(analysis, view);
  return view;
}

function sentencesOf({ text, sentences, tokens }: Analysis): readonly SentenceView[] {
  const views = sentences.map(({ start, end }) => ({
    words: 0,
    feelings: 0,
    names: new Set<string>(),
    cues: cuesIn(text.slice(start, end).toLowerCase()),
  }));
  for (const { sentence, lower, name, stem } of tokens) {
    const view = views[sentence]!;
    view.words += 1;
    if (feelings.has(lower)) view.feelings += 1;
    if (name) view.names.add(stem);
  }
  return views;
}

function cuesIn(sentence: string): Record<Cue, number> {
  const found = Object.entries(cues).map(([cue, pattern]) => [cue, pattern.test(sentence) ? 1 : 0] as const);
  return Object.fromEntries(found) as Record<Cue, number>;
}
