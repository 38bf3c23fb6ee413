import {
  hardWord,
  meaningFeatures,
  type MeaningFeatures,
  type WordPlace,
} from '../../judging/meaning-features.js';
import { meaningOdds, type MeaningModel } from '../../judging/meaning-fit.js';
import type { JudgingTools } from '../../judging/tools.js';
import { binTable, type BinTable } from './bin-table.js';
import { fitTrees } from './fit-trees.js';
import { readLines } from './read-lines.js';
import { weightsPath } from './weights-path.js';
import { writeWeights } from './write-weights.js';
import { rounded } from './rounded.js';

interface WordRow {
  readonly context: string;
  readonly target: string;
  readonly offset: number;
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
/** Chosen over folds by word: deeper or slower trees move the figures by .002. */
const growth = { trees: 300, depth: 5, rate: 0.05, rows: 0.7, columns: 0.5, ridge: 5, least: 10, seed: 7 };

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
    const around = tools
      .analyse(row.context)
      .tokens.filter(({ content }) => content)
      .map(({ lower, start }) => ({ word: lower, away: Math.abs(start - row.offset) }));
    const place: WordPlace = {
      before: row.context.slice(0, row.offset),
      after: row.context.slice(row.offset + row.target.length),
      around,
    };
    const word = hardWord(row.target.toLowerCase(), place, tools.lexicon);
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

/** The features of meanings in bins, made once for several fits. */
export function meaningTable(meanings: readonly LabelledMeaning[]): BinTable {
  return binTable(meanings.map(({ features }) => features));
}

/** Learns how well a meaning fits from the words for which `use` holds; one half is set midway between the meanings that most accept and the others. */
export function learnMeaning(
  meanings: readonly LabelledMeaning[],
  table: BinTable = meaningTable(meanings),
  use: (word: number) => boolean = () => true,
): MeaningModel {
  const used = meanings.map(({ word }) => (use(word) ? 1 : 0));
  const trees = fitTrees(
    table,
    meanings.map(({ score }) => score),
    { ...growth, use: (n) => used[n] ?? 0 },
  );
  const odds = (accepted: boolean) =>
    average(
      meanings
        .filter(({ word, score }) => use(word) && score >= 0.5 === accepted)
        .map((one) => meaningOdds(one.features, { shift: 0, trees })),
    );
  return { shift: rounded(-(odds(true) + odds(false)) / 2), trees };
}

/** Learns the clarifying judge's weights from all meanings of a data folder and writes them. */
export function trainMeaning(dir: string, tools: JudgingTools): readonly string[] {
  const meanings = readMeanings(dir, tools);
  const path = weightsPath('meaning');
  const header = {
    version: 2,
    data: 'SWORDS, words in context with meanings and the share of people who accept each (Lee et al. 2021, NAACL)',
    licence: 'CC BY 3.0 US (data)',
    date: '2021',
    figures: { cases: meanings.length },
  };
  writeWeights(path, header, learnMeaning(meanings));
  return [path];
}
