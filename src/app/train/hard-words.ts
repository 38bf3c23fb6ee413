import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lexicon } from '../../lexicon/lexicon.js';
import { difficultyFeatures } from '../../text/difficulty-features.js';
import { applyDifficulty, strayOf, type DifficultyModel } from '../../text/difficulty.js';
import { minimise } from './minimise.js';
import { rounded } from './rounded.js';

/** A word of the data in its sentence, with its features and how hard people found it, 0..1. */
export interface LabelledWord {
  readonly word: string;
  readonly features: Readonly<Record<string, number>>;
  readonly difficulty: number;
}

/** Chosen by five folds by word over train and trial; the figure moves by .002 between a tenth and ten times of it. */
const penalty = 0.01;
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

/** Fits the linear model with a ridge penalty per word; features that never vary are left out. */
export function fitHardWords(words: readonly LabelledWord[]): DifficultyModel {
  const learned = Object.keys(words[0]?.features ?? {}).flatMap((name) => {
    const values = words.map(({ features }) => features[name] ?? 0);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const deviation = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    return deviation < 1e-5 ? [] : [{ name, mean: rounded(mean), deviation: rounded(deviation) }];
  });
  const rows = words.map(({ features }) => learned.map((one) => strayOf(features[one.name] ?? 0, one)));
  const weights = minimise(
    (at, slope) => {
      let loss = 0;
      slope.fill(0);
      for (const [n, row] of rows.entries()) {
        let miss = (at[row.length] ?? 0) - (words[n]?.difficulty ?? 0);
        for (const [i, value] of row.entries()) miss += (at[i] ?? 0) * value;
        loss += miss ** 2 / 2;
        for (const [i, value] of row.entries()) slope[i]! += miss * value;
        slope[row.length]! += miss;
      }
      for (let i = 0; i < learned.length; i++) {
        loss += (penalty * words.length * at[i]! ** 2) / 2;
        slope[i]! += penalty * words.length * at[i]!;
      }
      return loss;
    },
    new Float64Array(learned.length + 1),
    { rounds: 300 },
  );
  return {
    bias: rounded(weights[learned.length]!),
    features: Object.fromEntries(
      learned.map(({ name, ...rest }, i) => [name, { ...rest, weight: rounded(weights[i]!) }]),
    ),
  };
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
  for (let fold = 0; fold < folds; fold++) {
    const model = fitHardWords(words.filter(({ word }) => foldOf(word) !== fold));
    for (const { word, features, difficulty } of words) {
      if (foldOf(word) !== fold) continue;
      said.push(applyDifficulty(features, model));
      truth.push(difficulty);
    }
  }
  return correlation(said, truth);
}

/** The weights file of hard words, learned from all words of a data folder. */
export function trainHardWords(dir: string, lexicon: Lexicon, date: string): object {
  const words = readHardWords(dir, lexicon);
  return {
    header: {
      version: 1,
      date,
      data: 'CompLex 2.0, single words with difficulty by readers (Shardlow, Cooper & Zampieri 2020), train and trial',
      licence: 'CC BY 4.0',
      cases: words.length,
      method: `least squares with ridge penalty ${penalty} a word; the corpus is no feature`,
      figures: { 'r over five folds by word': rounded(crossCheckHardWords(words)) },
    },
    model: fitHardWords(words),
  };
}
