import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lexicon } from '../../lexicon/lexicon.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { remember } from '../../lexicon/remember.js';
import { readLevel } from '../../text/level.js';
import { correlation, crossCheckHardWords, readHardWords } from '../train/hard-words.js';
import type { Evaluation, Row } from './row.js';
import { wilson } from './screen.js';

interface Version {
  readonly article: string;
  readonly level: 'Ele' | 'Int' | 'Adv';
  readonly text: string;
}
const order = ['Ele', 'Int', 'Adv'] as const;

/** Whether three figures rise strictly. */
function rises(values: readonly (number | null | undefined)[]): boolean {
  return values.every((value, at) => at === 0 || (value ?? -Infinity) > (values[at - 1] ?? Infinity));
}

function share(hits: number, n: number, judge: string, figure: string, baselines: Row['baselines']): Row {
  return {
    judge,
    figure,
    value: n === 0 ? null : hits / n,
    interval: wilson(hits, n),
    baselines,
    ceiling: null,
    n,
    more: true,
  };
}

function readVersions(dir: string): readonly Version[] {
  return readFileSync(join(dir, 'levels.jsonl'), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Version);
}

type Grader = (text: string) => number | null;

/** What stands beside the level's grade: the best known formula, and words a sentence. */
function gradersOf(lexicon: Lexicon) {
  const read = remember((text) => readLevel(text, lexicon));
  const grade: Grader = (text) => read(text).grade;
  const fleschKincaid: Grader = (text) => read(text).formulas['flesch-kincaid'] ?? null;
  const length: Grader = (text) => {
    const { words, sentences } = read(text);
    return words / Math.max(1, sentences);
  };
  return { grade, others: { 'Flesch-Kincaid': fleschKincaid, 'words a sentence': length } };
}

/** Three versions of each article put in order by the level; nothing was fitted on these texts. */
function orderRow(versions: readonly Version[], lexicon: Lexicon): Row {
  const { grade, others } = gradersOf(lexicon);
  const articles = [...new Set(versions.map(({ article }) => article))].map((article) =>
    order.map((level) => versions.find((one) => one.article === article && one.level === level)?.text ?? ''),
  );
  const risen = (of: Grader): number => articles.filter((texts) => rises(texts.map(of))).length;
  return share(
    risen(grade),
    articles.length,
    'level',
    'three versions of an article in order',
    Object.entries(others).map(([name, of]) => ({ name, value: risen(of) / articles.length })),
  );
}

/** Words of a stretch, and stretches taken of one text. */
const stretch = { words: 170, most: 3 };

/** Stretches of whole sentences from the start of a text. */
function stretchesOf(text: string): readonly string[] {
  const found: string[] = [];
  let words = 0;
  let sentences: string[] = [];
  for (const sentence of text.split(/(?<=[.!?])\s+/u)) {
    sentences.push(sentence);
    words += sentence.split(/\s+/u).length;
    if (words < stretch.words) continue;
    found.push(sentences.join(' '));
    words = 0;
    sentences = [];
  }
  return found.slice(0, stretch.most);
}

/** How the grade of a single stretch goes with the level of the article that it was cut from, over all articles. */
function stretchRow(versions: readonly Version[], lexicon: Lexicon): Row {
  const { grade, others } = gradersOf(lexicon);
  const texts = versions.flatMap(({ level, text }) =>
    stretchesOf(text).map((one) => ({ text: one, level: order.indexOf(level) })),
  );
  const r = (of: Grader): number =>
    correlation(
      texts.map(({ text }) => of(text) ?? 0),
      texts.map(({ level }) => level),
    );
  return {
    judge: 'level',
    figure: 'r of a stretch of 170 words with its article’s level',
    value: r(grade),
    interval: null,
    baselines: Object.entries(others).map(([name, of]) => ({ name, value: r(of) })),
    ceiling: null,
    n: texts.length,
    more: true,
  };
}

/** Level and hard words, as readers found them. */
export const reading: Evaluation = {
  name: 'reading',
  run(dir, progress) {
    const lexicon = readLexicon();
    const versions = readVersions(dir);
    const inOrder = orderRow(versions, lexicon);
    progress(0.3);
    const stretches = stretchRow(versions, lexicon);
    progress(0.6);
    const words = readHardWords(dir, lexicon);
    const r = crossCheckHardWords(words);
    return [
      inOrder,
      stretches,
      {
        judge: 'hard word',
        figure: 'r with readers, five folds by word',
        value: r,
        interval: null,
        baselines: [],
        ceiling: null,
        n: words.length,
        more: true,
      },
    ];
  },
};
