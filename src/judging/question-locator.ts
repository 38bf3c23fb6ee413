/*
 * Where in the segment would the answer stand? A logistic model scores every clause: how well it and its neighbours
 * cover the question, and which words it holds that the question does not, learned per kind of question ("because" for a
 * why, feelings for a how-feel). It is learned from the answers of questions whose answer stands in the text.
 */
import { feelings } from './question-cues.js';
import type { QuestionView } from './question-view.js';

/** Kinds of question that look for different words; index 0 is the rest. */
export const locatorKinds = [
  'other', 'why', 'how feel', 'what happened', 'what will', 'how', 'who', 'where', 'what did do', 'what did',
] as const; // prettier-ignore

/** Learned weights: per kind, those of the facts below, then those of words. */
export interface Locator {
  readonly facts: Readonly<Record<string, readonly number[]>>;
  readonly words: Readonly<Record<string, readonly number[]>>;
}

/** Index of the kind of a question among `locatorKinds`. */
export function locatorKind(opening: string): number {
  const name = opening === 'what cause' ? 'why' : opening;
  return Math.max(0, locatorKinds.indexOf(name as (typeof locatorKinds)[number]));
}

/** Names of a clause's facts, in the order of `clauseFacts`. */
export const clauseFactNames = [
  'always', 'clause', 'sentence', 'sentence before', 'sentence after', 'clause before', 'clause after', 'share of best',
  'best', 'before share of best', 'follows best', 'precedes best', 'quoted', 'new name', 'feeling', 'length', 'opens',
  'position', 'best cover', 'feeling in cover', 'feeling after cover', 'clauses', 'same sentence after match',
] as const; // prettier-ignore

/** Facts about clause `i` for a question, as numbers in the order of `clauseFactNames`. */
export function clauseFacts(view: QuestionView, i: number): readonly number[] {
  const { segment, sentenceCover, clauseCover, best, terms } = view;
  const { clauses, analysis } = segment;
  const { first, end, sentence, opens, quoted } = clauses[i]!;
  const cover = sentenceCover[sentence]!;
  const before = sentenceCover[sentence - 1] ?? 0;
  const after = sentenceCover[sentence + 1] ?? 0;
  const top = sentenceCover[best] || 1;
  let feeling = 0;
  let name = 0;
  for (let t = first; t < end; t++) {
    const token = analysis.tokens[t]!;
    if (feelings.has(token.lower)) feeling = 1;
    if (token.name && !terms.some(({ word }) => word.stem === segment.roots[t])) name = 1;
  }
  const earlier = clauses[i - 1];
  const follows = earlier?.sentence === sentence && clauseCover[i - 1]! > clauseCover[i]! ? 1 : 0;
  return [
    1, clauseCover[i]!, cover, before, after, clauseCover[i - 1] ?? 0, clauseCover[i + 1] ?? 0, cover / top,
    cover === sentenceCover[best] ? 1 : 0, before / top, before === sentenceCover[best] ? 1 : 0,
    after === sentenceCover[best] ? 1 : 0, quoted ? 1 : 0, name, feeling, Math.log(end - first), opens ? 1 : 0,
    i / clauses.length, sentenceCover[best] ?? 0, feeling * cover, feeling * before, Math.log(clauses.length), follows,
  ]; // prettier-ignore
}

/** Words of clause `i` that the question does not hold, each once, in lower case. */
export function clauseWords(view: QuestionView, i: number): ReadonlySet<string> {
  const { segment, terms } = view;
  const { first, end } = segment.clauses[i]!;
  const words = new Set<string>();
  for (let t = first; t < end; t++) {
    const token = segment.analysis.tokens[t]!;
    if (!token.content || !terms.some(({ word }) => word.stem === segment.roots[t])) words.add(token.lower);
  }
  return words;
}

/** How much a clause's words count: fully in a sentence that covers the question best, half in one that shares nothing. */
export function wordShare(view: QuestionView, i: number): number {
  const top = view.sentenceCover[view.best] || 1;
  return 0.5 + (0.5 * view.sentenceCover[view.segment.clauses[i]!.sentence]!) / top;
}

/** Chance of each clause, 0..1, that it holds the answer. */
export function locate(view: QuestionView, locator: Locator): readonly number[] {
  const kind = locatorKind(view.wording.opening);
  const weights = clauseFactNames.map((name) => locator.facts[name]![kind]!);
  return view.segment.clauses.map((_, i) => {
    let sum = 0;
    clauseFacts(view, i).forEach((fact, k) => (sum += fact * weights[k]!));
    const share = wordShare(view, i);
    for (const word of clauseWords(view, i)) sum += share * (locator.words[word]?.[kind] ?? 0);
    return 1 / (1 + Math.exp(-sum));
  });
}
