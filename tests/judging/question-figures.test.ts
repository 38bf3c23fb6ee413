import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { readOwnQuestions } from '../../src/app/train/own-questions.js';
import { confusion, kappa } from '../../src/app/evaluate/measures.js';
import { judgeAnswer } from '../../src/judging/judge-answer.js';
import { judgeQuestion } from '../../src/judging/judge-question.js';
import { makeTools } from '../../src/judging/tools.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';

/*
 * Figures on the open halves of our own sets, pinned so that a change of a rule shows its cost. The weights have seen
 * these questions, so the figures say nothing of how good the judge is: `evaluate` does, on the sealed halves and the folds.
 */
const tools = makeTools(readLexicon());
const inHead = (relationship: string | null): number =>
  relationship === 'author and me' || relationship === 'on my own' ? 1 : 0;

describe('pinned on the open half of our questions', () => {
  const asked = readOwnQuestions('open');
  const judged = asked.map(({ text, segment }) => judgeQuestion({ kind: 'question', text, segment }, tools));
  const real = asked.map((_, i) => i).filter((i) => asked[i]!.isQuestion);

  it('what asks and what does not', () => {
    const right = asked.filter((each, i) => each.isQuestion === judged[i]!.measures.isQuestion).length;
    expect(right / asked.length).toBeGreaterThan(0.99);
  });
  it('literal or inferential', () => {
    const labels = real.map((i) => inHead(asked[i]!.relationship));
    const said = real.map((i) => inHead(judged[i]!.measures.relationship));
    expect(kappa(confusion(labels, said, 2))).toBeCloseTo(0.687, 2);
  });
  it('the four relationships', () => {
    const right = real.filter((i) => judged[i]!.measures.relationship === asked[i]!.relationship).length;
    expect(right / real.length).toBeCloseTo(0.783, 2);
  });
  it('literal goes with what is in the text, inferential with what is in the head', () => {
    for (const { value, measures } of judged) {
      if (value === 'unsure') continue;
      expect(inHead(measures.relationship)).toBe(value === 'inferential' ? 1 : 0);
    }
  });
});

describe('pinned on the open half of our answers', () => {
  const path = createRequire(import.meta.url).resolve('#fixtures/sets/answers/open.jsonl');
  const lines = readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { segment: string; question: string; text: string; label: string });
  const judge = (label: string) =>
    lines
      .filter((line) => line.label === label)
      .map((line) => judgeAnswer({ kind: 'answer', ...line }, tools));

  it('no right answer turned round by a "not" is called right', () => {
    expect(judge('negated').filter(({ value }) => value === 'fits')).toEqual([]);
  });
  it('at most one right answer in twenty is taken for turned round', () => {
    expect(judge('right').filter(({ measures }) => measures.negated).length).toBeLessThanOrEqual(1);
  });
  it('two thirds of the right answers are called right, and the rest mostly unsure', () => {
    expect(judge('right').filter(({ value }) => value === 'fits').length).toBeGreaterThanOrEqual(13);
    expect(judge('right').filter(({ value }) => value === 'not yet').length).toBeLessThanOrEqual(2);
  });
});
