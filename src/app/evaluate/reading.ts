import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { analyse } from '../../text/analyse.js';
import { readLevel } from '../../text/level.js';
import { crossCheckHardWords, readHardWords } from '../train/hard-words.js';
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

/** Three versions of each article put in order by the level; nothing was fitted on these texts, whose licence forbids it. */
function levelRow(dir: string): Row {
  const lexicon = readLexicon();
  const versions = readFileSync(join(dir, 'levels.jsonl'), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Version);
  const articles = [...new Set(versions.map(({ article }) => article))];
  let byGrade = 0;
  let byLength = 0;
  for (const article of articles) {
    const texts = order.map(
      (level) => versions.find((one) => one.article === article && one.level === level)?.text ?? '',
    );
    if (rises(texts.map((text) => readLevel(text, lexicon).grade))) byGrade += 1;
    const perSentence = texts.map((text) => {
      const { tokens, sentences } = analyse(text, lexicon);
      return tokens.length / Math.max(1, sentences.length);
    });
    if (rises(perSentence)) byLength += 1;
  }
  return share(byGrade, articles.length, 'level', 'three versions of an article in order', [
    { name: 'words a sentence', value: byLength / articles.length },
  ]);
}

/** Level and hard words, as readers found them. */
export const reading: Evaluation = {
  name: 'reading',
  run(dir, progress) {
    const level = levelRow(dir);
    progress(0.5);
    const words = readHardWords(dir, readLexicon());
    const r = crossCheckHardWords(words);
    return [
      level,
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
