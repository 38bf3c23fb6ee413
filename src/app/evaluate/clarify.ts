import { judgeClarify } from '../../judging/judge-clarify.js';
import { meaningOdds } from '../../judging/meaning-fit.js';
import { makeTools, type JudgingTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { learnMeaning, meaningTable, readMeanings, type LabelledMeaning } from '../train/meaning.js';
import { setFolder } from '../train/own-questions.js';
import { readLines } from '../train/read-lines.js';
import { interval95, shareInterval } from './bootstrap.js';
import { auc } from './measures.js';
import type { Evaluation, Row } from './row.js';

const folds = 5;
const draws = 200;
/** What people of another group reach on the same task (data's own description). */
const people = 0.9;

/** Odds of each meaning by a model that has not seen its word. */
function unseenOdds(meanings: readonly LabelledMeaning[]): readonly number[] {
  const odds = new Array<number>(meanings.length).fill(0);
  const table = meaningTable(meanings);
  for (let fold = 0; fold < folds; fold++) {
    const model = learnMeaning(meanings, table, (word) => word % folds !== fold);
    meanings.forEach((one, n) => {
      if (one.word % folds === fold) odds[n] = meaningOdds(one.features, model);
    });
  }
  return odds;
}

/** AUC within each word, averaged: what most accept above the rest, or above meanings of other words. */
function withinWords(
  meanings: readonly LabelledMeaning[],
  scores: readonly number[],
  against: 'others proposed' | 'random',
): readonly number[] {
  const byWord = new Map<number, number[]>();
  meanings.forEach(({ word }, n) => byWord.set(word, [...(byWord.get(word) ?? []), n]));
  return [...byWord.values()].flatMap((all) => {
    const used = all.filter((n) => {
      const { random, score } = meanings[n]!;
      return against === 'random' ? random || score >= 0.5 : !random;
    });
    const area = auc(
      used.map((n) => scores[n]!),
      used.map((n) => (meanings[n]!.score >= 0.5 ? 1 : 0)),
    );
    return area === null ? [] : [area];
  });
}

function average(values: readonly number[], weights?: ArrayLike<number>): number | null {
  let all = 0;
  let sum = 0;
  values.forEach((value, n) => {
    all += weights?.[n] ?? 1;
    sum += value * (weights?.[n] ?? 1);
  });
  return all === 0 ? null : sum / all;
}

function meaningRow(
  meanings: readonly LabelledMeaning[],
  odds: readonly number[],
  against: 'others proposed' | 'random',
): Row {
  const areas = withinWords(meanings, odds, against);
  const by = (of: (one: LabelledMeaning) => number) =>
    average(withinWords(meanings, meanings.map(of), against));
  return {
    judge: 'clarify',
    figure:
      against === 'random'
        ? 'meaning against another word’s, AUC within a word'
        : 'meaning in context, AUC within a word',
    value: average(areas),
    interval: interval95((weights) => average(areas, weights), {
      groups: areas.map((_, n) => n),
      times: draws,
    }),
    baselines: [
      { name: 'synonym in WordNet', value: by(({ features }) => features.synonym) },
      { name: 'word vectors', value: by(({ features }) => features.vectors) },
    ],
    ceiling: against === 'random' ? null : people,
    n: areas.length,
    more: true,
  };
}

interface OwnMeaning {
  readonly segment: string;
  readonly word: string;
  readonly text: string;
  readonly fits: boolean;
  readonly trap: string | null;
}

function ownRows(part: 'open' | 'sealed', tools: JudgingTools): readonly Row[] {
  const judged = readLines<OwnMeaning>(setFolder('meanings'), `${part}.jsonl`).map((row) => ({
    row,
    judgement: judgeClarify({ kind: 'clarify', segment: row.segment, word: row.word, text: row.text }, tools),
  }));
  const traps = judged.filter(({ row }) => row.trap === 'opposite' || row.trap === 'negation');
  const praised = traps.filter(({ judgement }) => judgement.value === 'fits').length;
  const scores = judged.map(({ judgement }) => judgement.measures.fit ?? 0);
  const labels = judged.map(({ row }) => (row.fits ? 1 : 0));
  const base = { judge: `clarify, ${part} set`, ceiling: null } as const;
  return [
    {
      ...base,
      figure: 'opposites and negations told "fits", share',
      value: traps.length === 0 ? null : praised / traps.length,
      interval: shareInterval(praised, traps.length),
      baselines: [],
      n: traps.length,
      more: false,
    },
    {
      ...base,
      figure: 'fit, children’s meanings, AUC',
      value: auc(scores, labels),
      interval: interval95((weights) => auc(scores, labels, weights), {
        groups: judged.map(({ row }) => row.word),
        times: draws,
      }),
      baselines: [],
      n: judged.length,
      more: true,
    },
  ];
}

/** Meanings in context, learned on other words; and our own set of children's meanings. */
export const clarifying: Evaluation = {
  name: 'clarify',
  run(dir, progress) {
    const tools = makeTools(readLexicon());
    const meanings = readMeanings(dir, tools, (share) => progress(share * 0.7));
    const odds = unseenOdds(meanings);
    progress(0.9);
    return [
      meaningRow(meanings, odds, 'others proposed'),
      meaningRow(meanings, odds, 'random'),
      ...ownRows('open', tools),
      ...ownRows('sealed', tools),
    ];
  },
};
