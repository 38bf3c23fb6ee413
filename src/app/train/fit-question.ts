import { chanceOf, logOdds } from '../../judging/logistic.js';
import { answeredFeatures } from '../../judging/question-answered.js';
import { questionFeatures, type Features } from '../../judging/question-features.js';
import { locate, type Locator } from '../../judging/question-locator.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { viewQuestion, type QuestionView } from '../../judging/question-view.js';
import type { JudgingTools } from '../../judging/tools.js';
import { bandFor, bestCut } from './choose-cuts.js';
import { clauseTable, fitLocator, type ClauseTable } from './fit-locator.js';
import { fitTable } from './fit-table.js';
import type { LabelledQuestion } from './question-data.js';

/** Ridges, chosen on folds of the training stories. */
const aloneRidge = 500;
const answeredRidge = 30;
const parts = 2;

/** Labelled questions laid beside their sections, once for all fits. */
export interface QuestionTable {
  readonly questions: readonly LabelledQuestion[];
  readonly views: readonly QuestionView[];
  readonly clauses: ClauseTable;
  /** Number of each question's story, by first coming. */
  readonly story: readonly number[];
  readonly tools: JudgingTools;
}

/** Reads all questions closely. */
export function questionTable(questions: readonly LabelledQuestion[], tools: JudgingTools): QuestionTable {
  const views = questions.map(({ text, section }) => viewQuestion(text, section, tools));
  const answers = questions.map(({ answer, inferential }) => (inferential ? null : answer));
  const order = new Map<string, number>();
  for (const { story } of questions) if (!order.has(story)) order.set(story, order.size);
  const story = questions.map((question) => order.get(question.story)!);
  return { questions, views, clauses: clauseTable(views, answers, tools), story, tools };
}

/**
 * Fits all of the question's model on the questions for which `use` holds. What the locator says of a training question
 * comes from one that has not seen its story, so that the models above it learn how far to trust it.
 */
export function fitQuestion(table: QuestionTable, use: (i: number) => boolean): QuestionModel {
  const { questions, story } = table;
  const labels = questions.map(({ inferential }) => inferential);
  const part = (i: number): number => story[i]! % parts;
  const others = Array.from({ length: parts }, (_, p) => fitLocator(table.clauses, (i) => use(i) && part(i) !== p));
  const locator = fitLocator(table.clauses, use);
  const features = questions.map((_, i) => (use(i) ? featuresOf(table, i, others[part(i)]!) : {}));
  const counts = (i: number): number => (use(i) ? 1 : 0);
  const alone = fitTable(features, labels, { ridge: aloneRidge, use: counts });
  const unseen = oddsUnseen(features, labels, aloneRidge, table, use);
  const answered = questions.map(({ answer }, i) =>
    use(i) ? answeredFeatures(table.views[i]!, answer, unseen[i]!, table.tools) : {},
  );
  const withAnswer = fitTable(answered, labels, { ridge: answeredRidge, use: counts });
  const unseenAnswered = oddsUnseen(answered, labels, answeredRidge, table, use);
  return {
    locator,
    alone,
    aloneCuts: cutsOf(unseen, labels, use),
    answered: withAnswer,
    answeredCuts: cutsOf(unseenAnswered, labels, use),
  };
}

/** Features of question `i` as a locator sees it. */
export function featuresOf({ views }: QuestionTable, i: number, locator: Locator): Features {
  return questionFeatures(views[i]!, locate(views[i]!, locator));
}

/** Log odds of each used question by a model that has not seen its story. */
function oddsUnseen(
  features: readonly Features[],
  labels: readonly number[],
  ridge: number,
  { story }: QuestionTable,
  use: (i: number) => boolean,
): readonly number[] {
  const folds = 4;
  const fold = (i: number): number => Math.floor(story[i]! / parts) % folds;
  const models = Array.from({ length: folds }, (_, f) =>
    fitTable(features, labels, { ridge, use: (i) => (use(i) && fold(i) !== f ? 1 : 0) }),
  );
  return features.map((row, i) => (use(i) ? logOdds(models[fold(i)]!, row) : 0));
}

function cutsOf(odds: readonly number[], labels: readonly number[], use: (i: number) => boolean) {
  const used = odds.map((_, i) => i).filter(use);
  const chances = used.map((i) => chanceOf(odds[i]!));
  const actual = used.map((i) => labels[i]!);
  return { ...bandFor(chances, actual), cut: bestCut(chances, actual) };
}
