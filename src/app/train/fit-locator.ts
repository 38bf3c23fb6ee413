import {
  clauseFactNames,
  clauseFacts,
  clauseWords,
  locatorKind,
  locatorKinds,
  wordShare,
  type Locator,
} from '../../judging/question-locator.js';
import { viewStems } from '../../judging/answer-view.js';
import type { QuestionView } from '../../judging/question-view.js';
import type { JudgingTools } from '../../judging/tools.js';
import { fitLogistic } from './fit-logistic.js';
import { rowPacker, type Rows } from './rows.js';

const vocabularySize = 700;
/** The first tried; not tuned. */
const ridge = 50;

/** All clauses of all questions as rows, made once and fitted on many parts. */
export interface ClauseTable {
  readonly rows: Rows;
  readonly kinds: Uint8Array;
  /** 1 where the clause holds the answer. */
  readonly labels: Uint8Array;
  /** Question of each clause. */
  readonly of: Int32Array;
  readonly vocabulary: readonly string[];
}

/** Lays out the clauses; `answers` gives null for a question whose answer does not stand in the text. */
export function clauseTable(
  views: readonly QuestionView[],
  answers: readonly (string | null)[],
  tools: JudgingTools,
): ClauseTable {
  const vocabulary = commonWords(views);
  const column = new Map(vocabulary.map((word, k) => [word, clauseFactNames.length + k]));
  const packer = rowPacker(clauseFactNames.length + vocabulary.length);
  const kinds: number[] = [];
  const labels: number[] = [];
  const of: number[] = [];
  views.forEach((view, q) => {
    const answer = answers[q];
    const holder = answer == null ? -1 : answerClause(view, answer, tools);
    view.segment.clauses.forEach((_, i) => {
      const share = wordShare(view, i);
      clauseFacts(view, i).forEach((fact, k) => packer.put(k, fact));
      for (const word of clauseWords(view, i)) {
        const known = column.get(word);
        if (known !== undefined) packer.put(known, share);
      }
      packer.endRow();
      kinds.push(locatorKind(view.wording.opening));
      labels.push(i === holder ? 1 : 0);
      of.push(q);
    });
  });
  return {
    rows: packer.rows(),
    kinds: Uint8Array.from(kinds),
    labels: Uint8Array.from(labels),
    of: Int32Array.from(of),
    vocabulary,
  };
}

/** Fits the locator on the questions for which `use` holds. */
export function fitLocator(table: ClauseTable, use: (question: number) => boolean): Locator {
  const { rows, kinds, labels, of, vocabulary } = table;
  const counts = Uint8Array.from(of, (q) => (use(q) ? 1 : 0));
  const weights = fitLogistic({
    rows,
    labels,
    counts,
    kinds,
    kindCount: locatorKinds.length,
    ridge,
    free: new Set([0]),
  });
  const perKind = (column: number): readonly number[] =>
    locatorKinds.map((_, kind) => weights[kind * rows.width + column]!);
  return {
    facts: Object.fromEntries(clauseFactNames.map((name, k) => [name, perKind(k)])),
    words: Object.fromEntries(vocabulary.map((word, k) => [word, perKind(clauseFactNames.length + k)])),
  };
}

/** The mean of locators with the same facts and words. */
export function meanLocator(locators: readonly Locator[]): Locator {
  const mean = (part: 'facts' | 'words'): Locator['facts'] =>
    Object.fromEntries(
      Object.keys(locators[0]![part]).map((name) => [
        name,
        locatorKinds.map(
          (_, kind) => locators.reduce((sum, one) => sum + one[part][name]![kind]!, 0) / locators.length,
        ),
      ]),
    );
  return { facts: mean('facts'), words: mean('words') };
}

/** The clause that holds most of the answer's own words, its sentence's cover breaking ties; -1 where none holds any. */
function answerClause(view: QuestionView, answer: string, tools: JudgingTools): number {
  const asked = new Set(view.terms.map(({ word }) => word.stem));
  const all = [...viewStems(answer, view.segment.analysis, tools).rarities.keys()];
  const fresh = all.filter((stem) => !asked.has(stem));
  const stems = fresh.length > 0 ? fresh : all;
  const held = new Array<number>(view.segment.clauses.length).fill(0);
  for (const stem of stems)
    for (const c of new Set((view.segment.stems.get(stem) ?? []).map((t) => view.segment.clauseOf[t]!)))
      held[c]! += 1;
  let best = -1;
  let most = 0.3;
  held.forEach((count, c) => {
    const worth = count / stems.length + 0.3 * view.sentenceCover[view.segment.clauses[c]!.sentence]!;
    if (count > 0 && worth > most) [best, most] = [c, worth];
  });
  return best;
}

function commonWords(views: readonly QuestionView[]): readonly string[] {
  const counts = new Map<string, number>();
  const seen = new Set<unknown>();
  for (const { segment } of views) {
    if (seen.has(segment)) continue;
    seen.add(segment);
    for (const { lower } of segment.analysis.tokens) counts.set(lower, (counts.get(lower) ?? 0) + 1);
  }
  const sorted = [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
  return sorted.slice(0, vocabularySize).map(([word]) => word);
}
