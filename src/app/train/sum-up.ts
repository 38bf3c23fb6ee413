import { copiedFrom } from '../../judging/copied.js';
import { sumUpFeatures, type SumUpFeature } from '../../judging/sum-up-features.js';
import { expectedScore, type RidgeModel } from '../../judging/sum-up-score.js';
import { keysAgainst, sourceOf } from '../../judging/sum-up-source.js';
import type { JudgingTools } from '../../judging/tools.js';
import { pairsOf, shareInOrder } from '../evaluate/sum-up-pairs.js';
import { readLines } from './read-lines.js';
import { fitRidge } from './sum-up-ridge.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';

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
    'words outside copied runs',
    'copied',
    'source words',
    'source words outside copied runs',
    'own coverage',
    'spread',
    'long words',
    'rarer own words',
    'own pairs',
    'order words',
    'speaks to a reader',
    'threes',
  ],
  wording: [
    'length',
    'sentence length',
    'words outside copied runs',
    'copied',
    'copied runs',
    'long words',
    'own pairs',
    'order words',
    'threes',
    'best sentence',
    'in order',
  ],
} as const satisfies Record<string, readonly SumUpFeature[]>;
export type SumUpScore = keyof typeof sumUpModels;

const penalty = 0.02;

/** Reads the sum-ups of a data folder with their features. */
export function readSumUps(dir: string, tools: JudgingTools): readonly LabelledSumUp[] {
  const passages = new Map(
    readLines<{ passage: string; text: string }>(dir, 'sumup-passages.jsonl').map(({ passage, text }) => [
      passage,
      tools.analyse(text),
    ]),
  );
  return readLines<Omit<LabelledSumUp, 'features' | 'words'>>(dir, 'sumups.jsonl').map((row) => {
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

/** Learns the sum-up judge's weights from all sum-ups of a data folder and writes them. */
export function trainSumUp(dir: string, tools: JudgingTools): readonly string[] {
  const sumUps = readSumUps(dir, tools);
  const path = weightsPath('sum-up');
  const header = {
    version: 1,
    data: 'CLASSE corpus of pupils’ sum-ups with human scores (Crossley et al.)',
    licence: 'MIT (data)',
    date: '2023',
    figures: { cases: sumUps.length, ...worseFigures(sumUps) },
  };
  writeWeights(path, header, {
    content: learnSumUp(sumUps, 'content'),
    wording: learnSumUp(sumUps, 'wording'),
  });
  return [path];
}

/** What either score reaches on the passage not learned from, the worse of the two: see `pairsOf`. */
function worseFigures(sumUps: readonly LabelledSumUp[]): Readonly<Record<SumUpScore, number>> {
  const worse = (score: SumUpScore) =>
    Math.min(
      ...unseenScores(sumUps, score).map(
        ({ cases, expected }) => shareInOrder(pairsOf(cases, score), expected) ?? 0,
      ),
    );
  return { content: worse('content'), wording: worse('wording') };
}

/** Scores of each passage's sum-ups by a model that learned from the other passages only. */
export function unseenScores(
  sumUps: readonly LabelledSumUp[],
  score: SumUpScore,
  learn: (seen: readonly LabelledSumUp[]) => RidgeModel = (seen) => learnSumUp(seen, score),
): readonly {
  readonly passage: string;
  readonly cases: readonly LabelledSumUp[];
  readonly expected: readonly number[];
}[] {
  const passages = [...new Set(sumUps.map(({ passage }) => passage))].sort();
  return passages.map((passage) => {
    const model = learn(sumUps.filter((one) => one.passage !== passage));
    const cases = sumUps.filter((one) => one.passage === passage);
    return { passage, cases, expected: cases.map(({ features }) => expectedScore(features, model)) };
  });
}
