/*
 * With reference answers: how much of what a reference adds to the question is said (learned on pupils' science answers).
 * Without: evidence in the segment only, for overlap can't know what is true. An answer whose "not" stands against the
 * text is never said to fit, whatever it shares with it. A shared model of share-alike data may be left out (null): then
 * the plain rule holds, the share of the reference's own words that are said.
 */
import type { AnswerJudgement, JudgeInput, Reason } from '../../shared/judgements.js';
import type { Level } from '../../shared/strategies.js';
import type { Range } from '../../shared/text.js';
import { contradiction, negates, polarityOf } from './answer-negation.js';
import { evidenceFor, type Evidence } from './answer-evidence.js';
import type { AnswerCuts, EvidenceModel, ReferenceModel } from './answer-model.js';
import { referenceFeatures } from './answer-reference.js';
import { viewStems, type StemView } from './answer-view.js';
import { questionModel } from './judge-question.js';
import { chanceOf, logOdds } from './logistic.js';
import { viewQuestion, type QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';
import { versions } from './version.js';
import evidenceWeights from './weights/answer.json' with { type: 'json' };
import sharedWeights from './weights/answer.share-alike.json' with { type: 'json' };

type Input = Extract<JudgeInput, { kind: 'answer' }>;

/** JSON widens pairs to arrays of numbers, hence the casts; the training command writes the files in these shapes. */
export const evidenceModel = evidenceWeights as unknown as EvidenceModel;
/** Null where the file of share-alike weights has been emptied to `null`. */
export const referenceModel = sharedWeights as unknown as ReferenceModel | null;

/** Cuts of the plain rule, on the share of the reference's words that are said; ours. */
const plainCuts: AnswerCuts = { low: 0.2, high: 0.6 };
/** What a contradicted answer's chance is held under. */
const contradicted = 0.2;

/** Judges an answer to a question on a segment. `fits` is null where nothing can be said of it. */
export function judgeAnswer(input: Input, tools: JudgingTools, shared = referenceModel): AnswerJudgement {
  const question = viewQuestion(input.question, input.segment, tools);
  const { analysis } = question.segment;
  const answer = viewStems(input.text, analysis, tools);
  const evidence = evidenceFor(question, answer, questionModel.locator);
  const turned =
    contradiction(answer.polarity, polarityOf(analysis, question.segment.roots)) ??
    turnedQuestion(question, answer, tools);
  const references = (input.reference ?? []).filter((reference) => reference.trim() !== '');
  const { fits: raw, cuts } =
    references.length > 0
      ? besideReferences(input, references, tools, shared)
      : { fits: chanceOf(logOdds(evidenceModel.evidence, evidence.features)), cuts: evidenceModel.cuts };
  const says = answer.keys.length > 0;
  const fits = says ? (turned === null ? raw : Math.min(raw, contradicted)) : null;
  const doubt = negates(answer.analysis) && turned === null && references.length === 0;
  const value = valueFor(fits, cuts, doubt);
  return {
    kind: 'answer',
    level: answerLevel(value, fits, evidence, turned !== null),
    value,
    probability: fits === null ? null : Math.max(fits, 1 - fits),
    measures: {
      fits,
      evidence: evidence.share,
      negated: turned !== null,
      speaksToQuestion: says ? evidence.speaks : 0,
    },
    reasons: reasonsFor(question, answer, evidence, turned),
    version: versions.answer,
  };
}

/** The best over all references: an answer needs to say what one of them says. */
function besideReferences(
  input: Input,
  references: readonly string[],
  tools: JudgingTools,
  shared: ReferenceModel | null,
): { readonly fits: number; readonly cuts: AnswerCuts } {
  const chances = references.map((text) => {
    const reference = viewStems(text, null, tools);
    const answer = viewStems(input.text, reference.analysis, tools);
    const features = referenceFeatures(answer, reference, viewStems(input.question, null, tools), tools);
    if (shared) return chanceOf(logOdds(shared.reference, features));
    return features.contradicted || features.opposed ? 0 : (features['fresh meant'] ?? 0);
  });
  return { fits: Math.max(...chances), cuts: shared?.cuts ?? plainCuts };
}

/** "he did not hide because he was scared" turns round what the question takes for given. */
function turnedQuestion(question: QuestionView, answer: StemView, tools: JudgingTools): number | null {
  if (question.wording.marks.has('negation') || question.wording.opening === 'yes or no') return null;
  const asked = viewStems(question.question.text, question.segment.analysis, tools);
  const plain = new Map([...asked.polarity].filter(([, { negated }]) => negated === 0));
  const negated = new Map([...answer.polarity].filter(([, { negated: n }]) => n > 0));
  return contradiction(negated, plain);
}

function valueFor(fits: number | null, { low, high }: AnswerCuts, doubt: boolean): AnswerJudgement['value'] {
  if (fits === null || fits < low) return 'not yet';
  return fits > high && !doubt ? 'fits' : 'unsure';
}

/** Level of an answer (ours, after the table for questions): 0 nothing said, 1 not borne out, 2 fits, 3 fits and more than one word of it stands in the text; null where unsure. */
function answerLevel(
  value: AnswerJudgement['value'],
  fits: number | null,
  { share, clause }: Evidence,
  turned: boolean,
): Level | null {
  if (fits === null) return 0;
  if (turned || value === 'unsure') return null;
  if (value === 'not yet') return 1;
  return share >= 0.5 && clause >= 0 ? 3 : 2;
}

function reasonsFor(
  { segment }: QuestionView,
  answer: StemView,
  evidence: Evidence,
  turned: number | null,
): readonly Reason[] {
  const token = turned === null ? undefined : answer.analysis.tokens[turned];
  const against: readonly Reason[] = token
    ? [{ rule: 'its "not" stands against the text', place: { in: 'text', ...rangeOf(token) } }]
    : [];
  const clause = segment.clauses[evidence.clause];
  const first = clause && segment.analysis.tokens[clause.first];
  const last = clause && segment.analysis.tokens[clause.end - 1];
  const borneOut: Reason =
    first && last
      ? {
          rule: 'the text has words of it here',
          place: { in: 'segment', start: first.start, end: last.end },
          figures: { share: evidence.share },
        }
      : { rule: 'the text has none of its own words', place: null };
  return [...against, borneOut];
}

const rangeOf = ({ start, end }: Range): Range => ({ start, end });
