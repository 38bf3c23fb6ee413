import type { JudgingTools } from '../../judging/tools.js';
import type { Features } from '../../judging/question-features.js';
import { evidenceFor } from '../../judging/answer-evidence.js';
import { referenceFeatures } from '../../judging/answer-reference.js';
import { viewStems } from '../../judging/answer-view.js';
import type { Locator } from '../../judging/question-locator.js';
import { viewQuestion } from '../../judging/question-view.js';
import type { LabelledQuestion } from './question-data.js';
import { readLines } from './read-lines.js';

/** Features of an answer with its label; answers to one question, or of one story, make a group. */
export interface AnswerCase {
  readonly features: Features;
  readonly fits: 0 | 1;
  readonly group: string;
}

interface AnswerLine {
  readonly question: string;
  readonly reference: readonly string[];
  readonly answer: string;
  readonly label: string;
}

/** Pupils' answers beside reference answers (SciEntsBank, SemEval-2013 task 7, CC BY-SA). */
export function referenceCases(dir: string, tools: JudgingTools): readonly AnswerCase[] {
  return readLines<AnswerLine>(dir, 'answers.train.jsonl').map((line) => {
    const reference = viewStems(line.reference[0] ?? '', null, tools);
    const answer = viewStems(line.answer, reference.analysis, tools);
    const question = viewStems(line.question, null, tools);
    const fits = line.label === 'correct' ? 1 : 0;
    return { features: referenceFeatures(answer, reference, question, tools), fits, group: line.question };
  });
}

/** Answers to story questions: each question's own, and one that answers another question on the same section. */
export function evidenceCases(
  questions: readonly LabelledQuestion[],
  locator: Locator,
  tools: JudgingTools,
): readonly AnswerCase[] {
  const bySection = new Map<string, LabelledQuestion[]>();
  for (const question of questions) {
    const known = bySection.get(question.section);
    if (known) known.push(question);
    else bySection.set(question.section, [question]);
  }
  return [...bySection.values()].flatMap((siblings) =>
    siblings.flatMap((question, i): readonly AnswerCase[] => {
      const view = viewQuestion(question.text, question.section, tools);
      const other = siblings[(i + 1) % siblings.length]!;
      const pairs = [
        [question.answer, 1],
        ...(other.answer === question.answer ? [] : [[other.answer, 0]]),
      ] as const;
      return pairs.map(([text, fits]) => ({
        features: evidenceFor(view, viewStems(String(text), view.segment.analysis, tools), locator).features,
        fits: fits === 1 ? 1 : 0,
        group: question.story,
      }));
    }),
  );
}
