import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { JudgeInput } from '../../../shared/judgements.js';
import { makeJudge } from '../../judging/judge.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { readOwnQuestions, setFolder } from '../train/own-questions.js';
import { readLines } from '../train/read-lines.js';
import { shareInterval } from './bootstrap.js';
import { misspell } from './misspell.js';
import type { Evaluation, Row } from './row.js';
import { seededRandom } from './seeded-random.js';

/** Share of the content words that are misspelt, and how often each post is. */
const share = 1 / 3;
const times = 3;
/** The level from which a post is a good one. */
const good = 2;

interface Placed {
  readonly passage: string;
  readonly segment: number;
}

function segmentOf({ passage, segment }: Placed): string {
  const file = join(setFolder('topics'), '..', 'passages', `${passage}.json`);
  const { segments } = JSON.parse(readFileSync(file, 'utf8')) as { readonly segments: readonly string[] };
  return segments[segment] ?? '';
}

/** Posts of the open sets by kind: our questions, predictions, answers and meanings, and the gists as sum-ups. */
function postsByKind(): Readonly<Record<JudgeInput['kind'], readonly JudgeInput[]>> {
  const lines = <Line>(set: string): readonly Line[] => readLines<Line>(setFolder(set), 'open.jsonl');
  return {
    question: readOwnQuestions('open').map(({ segment, text }) => ({ kind: 'question', segment, text })),
    'sum-up': lines<Placed & { readonly gist: string }>('topics').map((line) => ({
      kind: 'sum-up',
      segment: segmentOf(line),
      text: line.gist,
    })),
    clarify: lines<{ readonly segment: string; readonly word: string; readonly text: string }>(
      'meanings',
    ).map(({ segment, word, text }) => ({ kind: 'clarify', segment, word, text })),
    predict: lines<Placed & { readonly text: string }>('predictions').map((line) => ({
      kind: 'predict',
      segment: segmentOf(line),
      text: line.text,
    })),
    answer: lines<{ readonly segment: string; readonly question: string; readonly text: string }>(
      'answers',
    ).map(({ segment, question, text }) => ({ kind: 'answer', segment, question, text })),
  };
}

/** How often a good post keeps its level, give or take one, when a third of its content words are misspelt as children do. A post that becomes unsure counts as moved. */
export const spelling: Evaluation = {
  name: 'spelling',
  run(_dir, progress) {
    const judge = makeJudge(readLexicon());
    const posts = postsByKind();
    const kinds = Object.keys(posts) as (keyof typeof posts)[];
    return kinds.map((kind, n): Row => {
      const random = seededRandom(7);
      let kept = 0;
      let all = 0;
      for (const input of posts[kind]) {
        const { level } = judge(input);
        if (level === null || level < good) continue;
        for (let again = 0; again < times; again += 1) {
          const other = judge({ ...input, text: misspell(input.text, share, random) }).level;
          all += 1;
          if (other !== null && Math.abs(other - level) <= 1) kept += 1;
        }
      }
      progress((n + 1) / kinds.length);
      return {
        judge: 'spelling',
        figure: `level of a good post moved by one at most, ${kind}`,
        value: all === 0 ? null : kept / all,
        interval: shareInterval(kept, all),
        baselines: [],
        ceiling: null,
        n: all,
        more: true,
      };
    });
  },
};
