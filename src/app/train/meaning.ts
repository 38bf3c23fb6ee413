import {
  hardWord,
  meaningFeatureNames,
  meaningFeatures,
  type MeaningFeatures,
} from '../../judging/meaning-features.js';
import { meaningOdds, meaningStanding, type MeaningModel } from '../../judging/meaning-fit.js';
import type { JudgingTools } from '../../judging/tools.js';
import { fitLogistic } from './fit-logistic.js';
import { readLines } from './read-lines.js';
import { packRows } from './rows.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';
import { rounded } from './rounded.js';

interface WordRow {
  readonly context: string;
  readonly target: string;
  readonly pos: string;
  readonly meanings: readonly { readonly text: string; readonly score: number }[];
}

/** A proposed meaning with its features and the share of people who accept it; `random` ones come from another word of the same kind. */
export interface LabelledMeaning {
  readonly word: number;
  readonly text: string;
  readonly score: number;
  readonly random: boolean;
  readonly features: MeaningFeatures;
}

const randomEach = 20;
const ridge = 0.01;

/** The words of a meaning as it is proposed, in lower case. */
export function wordsOfMeaning(text: string): readonly string[] {
  return (
    text
      .toLowerCase()
      .replace(/[’]/g, "'")
      .match(/[a-z']+/g) ?? []
  );
}

/** Meanings that belong to other words of the same part of speech, the same in each run. */
function randomMeanings(at: number, rows: readonly WordRow[]): readonly string[] {
  const others = rows.filter((row, n) => n !== at && row.pos === rows[at]?.pos);
  return Array.from({ length: randomEach }, (_, k) => {
    const { meanings = [] } = others[(at * 7919 + k * 104_729) % others.length] ?? {};
    return meanings[(at * 31 + k * 17) % meanings.length]?.text ?? '';
  });
}

/** Reads the meanings of a data folder with their features. */
export function readMeanings(
  dir: string,
  tools: JudgingTools,
  progress: (share: number) => void = () => undefined,
): readonly LabelledMeaning[] {
  const rows = readLines<WordRow>(dir, 'meanings.dev.jsonl');
  return rows.flatMap((row, at) => {
    progress(at / rows.length);
    const context = tools
      .analyse(row.context)
      .tokens.filter(({ content }) => content)
      .map(({ lower }) => lower);
    const word = hardWord(row.target.toLowerCase(), context, tools.lexicon);
    const label = (text: string, score: number, random: boolean): LabelledMeaning => ({
      word: at,
      text,
      score,
      random,
      features: meaningFeatures(word, wordsOfMeaning(text), tools.lexicon),
    });
    return [
      ...row.meanings.map(({ text, score }) => label(text, score, false)),
      ...randomMeanings(at, rows).map((text) => label(text, 0, true)),
    ];
  });
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
}

/** Learns how well a meaning fits; one half is set midway between the meanings that most accept and the others. */
export function learnMeaning(meanings: readonly LabelledMeaning[]): MeaningModel {
  const standings = meaningFeatureNames.map((name) => {
    const values = meanings.map(({ features }) => features[name]);
    const mean = rounded(average(values));
    const deviation = Math.max(1e-5, rounded(Math.sqrt(average(values.map((value) => (value - mean) ** 2)))));
    return { name, mean, deviation };
  });
  const width = standings.length + 1;
  const rows = meanings.map(({ features }) => [
    ...standings.map(
      ({ name, mean, deviation }, n) => [n, meaningStanding(features[name], mean, deviation)] as const,
    ),
    [width - 1, 1] as const,
  ]);
  const solution = fitLogistic({
    rows: packRows(rows, width),
    labels: meanings.map(({ score }) => score),
    ridge: ridge * meanings.length,
    free: new Set([width - 1]),
  });
  const features = Object.fromEntries(
    standings.map(({ name, mean, deviation }, n) => [
      name,
      { mean, deviation, weight: rounded(solution[n]!) },
    ]),
  );
  const odds = (accepted: boolean) =>
    average(
      meanings
        .filter(({ score }) => score >= 0.5 === accepted)
        .map((one) => meaningOdds(one.features, { bias: 0, features })),
    );
  return { bias: rounded(-(odds(true) + odds(false)) / 2), features };
}

/** Learns the clarifying judge's weights from all meanings of a data folder and writes them. */
export function trainMeaning(dir: string, tools: JudgingTools): readonly string[] {
  const meanings = readMeanings(dir, tools);
  const path = weightsPath('meaning');
  const header = {
    version: 1,
    data: 'SWORDS, words in context with meanings and the share of people who accept each (Lee et al. 2021, NAACL)',
    licence: 'CC BY 3.0 US (data)',
    date: '2021',
    figures: { cases: meanings.length },
  };
  writeWeights(path, header, learnMeaning(meanings));
  return [path];
}
