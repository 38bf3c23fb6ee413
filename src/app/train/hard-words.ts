import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lexicon } from '../../lexicon/lexicon.js';
import { difficultyFeatures } from '../../text/difficulty-features.js';
import { applyDifficulty } from '../../text/difficulty.js';
import type { Trees } from '../../text/trees.js';
import { binTable, type BinTable } from './bin-table.js';
import { fitTrees } from './fit-trees.js';
import { rounded } from './rounded.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

/** A word of the data in its sentence, with its features and how hard people found it, 0..1. */
export interface LabelledWord {
  readonly word: string;
  readonly features: Readonly<Record<string, number>>;
  readonly difficulty: number;
}

/** Chosen by five folds by word over train and trial; deeper, slower or more trees move the figure by .002. */
const growth = { trees: 300, depth: 4, rate: 0.05, rows: 0.7, columns: 0.5, ridge: 3, least: 5, seed: 7 };
const folds = 5;

/** Reads the words of a data folder with their features. */
export function readHardWords(dir: string, lexicon: Lexicon): readonly LabelledWord[] {
  return ['hard-words.train.tsv', 'hard-words.trial.tsv'].flatMap((file) =>
    readFileSync(join(dir, file), 'utf8')
      .split('\n')
      .slice(1)
      .filter((line) => line !== '')
      .map((line) => {
        const [, , sentence = '', word = '', difficulty = ''] = line.trimEnd().split('\t');
        return {
          word,
          features: difficultyFeatures({ word, sentence }, lexicon),
          difficulty: Number(difficulty),
        };
      }),
  );
}

/** The features of words in bins, made once for several fits. */
function difficultyTable(words: readonly LabelledWord[]): BinTable {
  return binTable(words.map(({ features }) => features));
}

/** Fits the trees to the words for which `use` holds. */
function fitHardWords(
  words: readonly LabelledWord[],
  table: BinTable,
  use: (word: string) => boolean = () => true,
): Trees {
  const difficulties = words.map(({ difficulty }) => difficulty);
  return fitTrees(table, difficulties, { ...growth, use: (n) => (use(words[n]?.word ?? '') ? 1 : 0) });
}

/** Pearson's r of two lists of like length. */
export function correlation(a: readonly number[], b: readonly number[]): number {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [meanA, meanB] = [mean(a), mean(b)];
  let [both, onlyA, onlyB] = [0, 0, 0];
  for (const [n, value] of a.entries()) {
    const [strayA, strayB] = [value - meanA, (b[n] ?? 0) - meanB];
    both += strayA * strayB;
    onlyA += strayA ** 2;
    onlyB += strayB ** 2;
  }
  return both / Math.sqrt(onlyA * onlyB);
}

function foldOf(word: string): number {
  let hash = 2_166_136_261;
  for (const letter of word.toLowerCase()) hash = Math.imul(hash ^ letter.charCodeAt(0), 16_777_619);
  return (hash >>> 0) % folds;
}

/** Pearson's r over five folds by word, so that no word is in both parts. */
export function crossCheckHardWords(words: readonly LabelledWord[]): number {
  const said: number[] = [];
  const truth: number[] = [];
  const table = difficultyTable(words);
  for (let fold = 0; fold < folds; fold++) {
    const model = fitHardWords(words, table, (word) => foldOf(word) !== fold);
    for (const { word, features, difficulty } of words) {
      if (foldOf(word) !== fold) continue;
      said.push(applyDifficulty(features, model));
      truth.push(difficulty);
    }
  }
  return correlation(said, truth);
}

/** Learns how hard words are from all words of a data folder and writes the weights. */
export function trainHardWords(dir: string, lexicon: Lexicon): readonly string[] {
  const words = readHardWords(dir, lexicon);
  const path = weightsPath('hard-words', 'text');
  const header = {
    version: 2,
    data: 'CompLex 2.0, single words with difficulty by readers (Shardlow, Cooper & Zampieri 2020), train and trial; the corpus is no feature',
    licence: 'CC BY 4.0',
    date: '2020',
    figures: { cases: words.length, 'r over five folds by word': rounded(crossCheckHardWords(words)) },
  };
  writeWeights(path, header, { trees: fitHardWords(words, difficultyTable(words)) });
  return [path];
}
