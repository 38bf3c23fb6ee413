import { onTopic } from '../../judging/sum-up-measures.js';
import { keysAgainst, sourceOf } from '../../judging/sum-up-source.js';
import { makeTools, type JudgingTools } from '../../judging/tools.js';
import { copiedFrom } from '../../judging/copied.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { readLines } from '../train/read-lines.js';
import { fitRidge } from '../train/sum-up-ridge.js';
import { readSumUps, unseenScores, type LabelledSumUp, type SumUpScore } from '../train/sum-up.js';
import { interval95 } from './bootstrap.js';
import { auc } from './measures.js';
import type { Evaluation, Row } from './row.js';
import { pairsOf, shareInOrder } from './sum-up-pairs.js';

const draws = 60;

function rowsOf(sumUps: readonly LabelledSumUp[], score: SumUpScore): readonly Row[] {
  const simple = unseenScores(sumUps, score, (seen) =>
    fitRidge(
      seen.map((one) => ({ features: one.features, score: one[score] })),
      ['length', 'own coverage', 'copied'],
      0.02,
    ),
  );
  return unseenScores(sumUps, score).map(({ passage, cases, expected }, at): Row => {
    const pairs = pairsOf(cases, score);
    const by = (values: readonly number[]) => shareInOrder(pairs, values);
    return {
      judge: 'sum-up',
      figure: `${score}, pairs of like length, ${passage}`,
      value: by(expected),
      interval: interval95((weights) => shareInOrder(pairs, expected, weights), {
        groups: cases.map((_, n) => n),
        times: draws,
      }),
      baselines: [
        { name: 'length alone', value: by(cases.map(({ words }) => words)) },
        { name: 'key terms alone', value: by(cases.map(({ features }) => features['own coverage'])) },
        { name: 'length, key terms, copying', value: by(simple[at]?.expected ?? []) },
      ],
      ceiling: null,
      n: cases.length,
      more: true,
    };
  });
}

interface StoryQuestion {
  readonly section: string;
  readonly question: string;
  readonly answer: string;
}

/** A reader's question with its answer speaks of one part of a story, as a sum-up does: held against that part and against another part of the same story. */
function topicRow(dir: string, tools: JudgingTools): Row {
  const { lexicon } = tools;
  const cases = storyCases(dir);
  const scores: number[] = [];
  const shares: number[] = [];
  const labels: number[] = [];
  const groups: string[] = [];
  for (const { story, text, own, other } of cases) {
    for (const [segment, label] of [
      [own, 1],
      [other, 0],
    ] as const) {
      const [about, post] = [tools.analyse(segment), tools.analyse(text)];
      const source = sourceOf(about, lexicon);
      const keys = keysAgainst(post, source, lexicon);
      const copied = copiedFrom(post, keys, about, about);
      scores.push(onTopic({ text: post, keys, source, copied }, lexicon));
      const content = post.tokens.filter((token) => token.content);
      shares.push(content.filter(({ stem }) => about.stems.has(stem)).length / Math.max(1, content.length));
      labels.push(label);
      groups.push(story);
    }
  }
  return {
    judge: 'sum-up',
    figure: 'on topic, against another part of the same story, AUC',
    value: auc(scores, labels),
    interval: interval95((weights) => auc(scores, labels, weights), { groups, times: draws }),
    baselines: [{ name: 'plain word share', value: auc(shares, labels) }],
    ceiling: null,
    n: scores.length,
    more: true,
  };
}

/** The story of a section "story#number". */
function storyOf(section: string): string {
  return section.replace(/#.*$/, '');
}

function storyCases(dir: string) {
  const sections = readLines<{ section: string; text: string }>(dir, 'sections.val.jsonl');
  const byName = new Map(sections.map(({ section, text }) => [section, text]));
  return readLines<StoryQuestion>(dir, 'questions.val.jsonl').flatMap(({ section, question, answer }, at) => {
    const story = storyOf(section);
    const others = sections.filter((one) => one.section !== section && storyOf(one.section) === story);
    const own = byName.get(section);
    const other = others[(at * 7919) % Math.max(1, others.length)];
    return own !== undefined && other
      ? [{ story, text: `${question} ${answer}`, own, other: other.text }]
      : [];
  });
}

/** Sum-ups by pupils, weights learned on the other passage; topic on stories. */
export const sumUps: Evaluation = {
  name: 'sum-up',
  run(dir, progress) {
    const tools = makeTools(readLexicon());
    const read = readSumUps(dir, tools);
    progress(0.4);
    const rows = [...rowsOf(read, 'content'), ...rowsOf(read, 'wording')];
    progress(0.8);
    return [...rows, topicRow(dir, tools)];
  },
};
