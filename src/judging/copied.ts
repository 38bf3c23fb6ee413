import type { Range } from '../../shared/text.js';
import type { Analysis, Token } from '../text/analysis.js';
import { copiedRuns, type CopiedRun } from './copied-runs.js';

/** How much of a text stands in a source nearly word for word. */
export interface Copied {
  /** Words in copied runs as a share of all, 0..1; names and unavoidable terms are left out of both. */
  readonly share: number;
  /** Longest run first. */
  readonly runs: readonly CopiedRun[];
  /** For each token of the text, whether it lies in a run. */
  readonly inRun: readonly boolean[];
}

/** What words are compared by: the stem of a content word, a small word as it is. */
export function keyOf({ content, stem, lower }: Token): string {
  return content ? stem : lower;
}

/** A stem that stands this often in the source can't be avoided when writing about it (ours). */
const unavoidableFrom = 3;
/** At most so many unavoidable terms, the most frequent ones (ours): else a long passage would free half its words. */
const unavoidableMost = 4;

/** Stems that nobody can write about the source without: those that it says most often, three times at least. */
export function unavoidableStems(source: Analysis): ReadonlySet<string> {
  return new Set(
    [...source.stems]
      .filter(([, places]) => places.length >= unavoidableFrom)
      .sort((a, b) => b[1].length - a[1].length || (a[0] < b[0] ? -1 : 1))
      .slice(0, unavoidableMost)
      .map(([stem]) => stem),
  );
}

/** Stems of names in the source. */
function nameStems(source: Analysis): ReadonlySet<string> {
  return new Set(source.tokens.filter(({ name }) => name).map(({ stem }) => stem));
}

/** Tokens (by number) of the text that lie in runs, and where a scrambled sentence of the source is put together again. */
function marked(
  length: number,
  runs: readonly { readonly first: number; readonly end: number }[],
): boolean[] {
  const inRun = new Array<boolean>(length).fill(false);
  for (const { first, end } of runs) inRun.fill(true, first, end);
  return inRun;
}

const scrambled = { contentWords: 5, ofText: 0.8, ofSource: 0.6 };

/** Sentences of the text that hold most words of one sentence of the source and little else, in whatever order. */
function scrambledRuns(
  text: Analysis,
  textKeys: readonly string[],
  source: Analysis,
  sourceKeys: readonly string[],
  free: readonly boolean[],
): readonly CopiedRun[] {
  const ofSource = contentBySentence(source, sourceKeys);
  return contentBySentence(text, textKeys, free).flatMap(({ keys, first, end }) => {
    if (keys.size < scrambled.contentWords) return [];
    const whole = ofSource.find((sentence) => {
      let shared = 0;
      for (const key of keys) if (sentence.keys.has(key)) shared++;
      return shared >= scrambled.ofText * keys.size && shared >= scrambled.ofSource * sentence.keys.size;
    });
    return whole ? [{ first, end, source: whole.range }] : [];
  });
}

interface SentenceKeys {
  readonly keys: Set<string>;
  readonly first: number;
  end: number;
  readonly range: Range;
}

function contentBySentence(
  of: Analysis,
  keys: readonly string[],
  free?: readonly boolean[],
): readonly SentenceKeys[] {
  const sentences = new Map<number, SentenceKeys>();
  of.tokens.forEach(({ content, sentence }, at) => {
    const range = of.sentences[sentence] ?? { start: 0, end: 0 };
    const known = sentences.get(sentence) ?? { keys: new Set<string>(), first: at, end: at, range };
    sentences.set(sentence, known);
    known.end = at + 1;
    if (content && free?.[at] !== true) known.keys.add(keys[at] ?? '');
  });
  return [...sentences.values()];
}

/** Measures copying of a text from a source. Keys are what words are compared by, one a token, so that a misspelt word can stand for the right one; `apart` marks tokens already accounted for elsewhere. */
export function copiedFrom(
  text: Analysis,
  textKeys: readonly string[],
  source: Analysis,
  about: Analysis,
  apart?: readonly boolean[],
): Copied {
  const sourceKeys = source.tokens.map(keyOf);
  const freeStems = new Set([...unavoidableStems(about), ...nameStems(about)]);
  const free = text.tokens.map((token, at) => freeStems.has(textKeys[at] ?? '') || apart?.[at] === true);
  const runs = [
    ...copiedRuns(text, textKeys, source, sourceKeys, free),
    ...scrambledRuns(text, textKeys, source, sourceKeys, free),
  ];
  const inRun = marked(text.tokens.length, runs);
  let all = 0;
  let copied = 0;
  free.forEach((isFree, at) => {
    if (isFree && apart?.[at] !== true) return;
    all++;
    if (inRun[at] && !isFree) copied++;
  });
  return {
    share: all === 0 ? 0 : copied / all,
    runs: runs.sort((a, b) => b.end - b.first - (a.end - a.first) || a.first - b.first),
    inRun,
  };
}
