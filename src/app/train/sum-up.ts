import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { copiedFrom } from '../../judging/copied.js';
import { sumUpFeatures, type SumUpFeature } from '../../judging/sum-up-features.js';
import type { RidgeModel } from '../../judging/sum-up-score.js';
import { keysAgainst, sourceOf } from '../../judging/sum-up-source.js';
import type { JudgingTools } from '../../judging/tools.js';
import { fitRidge } from './sum-up-ridge.js';

/** A pupil's sum-up of the data with its features and the two human scores. */
export interface LabelledSumUp {
  readonly passage: string;
  readonly text: string;
  readonly words: number;
  readonly features: Readonly<Record<SumUpFeature, number>>;
  readonly content: number;
  readonly wording: number;
}

/** Which features each model uses: the fewest within a point of the best, chosen on both passages (weights never are). */
export const sumUpModels = {
  content: [
    'length',
    'sentences',
    'source words outside copied runs',
    'own coverage',
    'source words',
    'rarer own words',
    'own pairs',
    'best sentence',
    'long words',
    'order words',
  ],
  wording: [
    'in order',
    'threes',
    'length',
    'sentence length',
    'best sentence',
    'long words',
    'own pairs',
    'variety',
  ],
} as const satisfies Record<string, readonly SumUpFeature[]>;
export type SumUpScore = keyof typeof sumUpModels;

const penalty = 0.02;

function linesOf<T>(dir: string, file: string): readonly T[] {
  return readFileSync(join(dir, file), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as T);
}

/** Reads the sum-ups of a data folder with their features. */
export function readSumUps(dir: string, tools: JudgingTools): readonly LabelledSumUp[] {
  const passages = new Map(
    linesOf<{ passage: string; text: string }>(dir, 'sumup-passages.jsonl').map(({ passage, text }) => [
      passage,
      tools.analyse(text),
    ]),
  );
  return linesOf<Omit<LabelledSumUp, 'features' | 'words'>>(dir, 'sumups.jsonl').map((row) => {
    const about = passages.get(row.passage) ?? tools.analyse('');
    const text = tools.analyse(row.text);
    const source = sourceOf(about, tools.lexicon);
    const keys = keysAgainst(text, source, tools.lexicon);
    const copied = copiedFrom(text, keys, about, about);
    const features = sumUpFeatures({ text, keys, source, copied }, tools.lexicon);
    const words = row.text.split(/\s+/).filter((word) => word !== '').length;
    return { ...row, words, features };
  });
}

/** Learns one of the two scores from sum-ups. */
export function learnSumUp(sumUps: readonly LabelledSumUp[], score: SumUpScore): RidgeModel {
  return fitRidge(
    sumUps.map((one) => ({ features: one.features, score: one[score] })),
    sumUpModels[score],
    penalty,
  );
}

/** The weights file of the sum-up judge, learned from all sum-ups of a data folder. */
export function trainSumUp(dir: string, tools: JudgingTools): object {
  const sumUps = readSumUps(dir, tools);
  return {
    header: {
      version: 1,
      data: 'CLASSE corpus of pupils’ sum-ups with human scores (Crossley et al.)',
      licence: 'MIT',
      cases: sumUps.length,
      method: `ridge regression, penalty ${penalty} a case, features cut at three deviations`,
    },
    content: learnSumUp(sumUps, 'content'),
    wording: learnSumUp(sumUps, 'wording'),
  };
}
