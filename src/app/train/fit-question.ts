import { chanceOf, logOdds, type Logistic } from '../../judging/logistic.js';
import { answeredFeatures } from '../../judging/question-answered.js';
import { questionFeatures, type Features } from '../../judging/question-features.js';
import { generalFeatures } from '../../judging/question-general.js';
import { eitherOf } from '../../judging/question-odds.js';
import { locate, type Locator } from '../../judging/question-locator.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { viewQuestion, type QuestionView } from '../../judging/question-view.js';
import type { JudgingTools } from '../../judging/tools.js';
import { bandFor, bestCut } from './choose-cuts.js';
import { clauseTable, fitLocator, type ClauseTable } from './fit-locator.js';
import { fitGeneral, type GeneralCase } from './fit-general.js';
import { fitTable, type TableOptions } from './fit-table.js';
import type { OwnQuestion } from './own-questions.js';
import type { LabelledQuestion } from './question-data.js';

/** Ridges: among 33, 100 and 330 alone, and 1 and 33 with an answer, the folds by story hardly differ. */
const aloneRidge = 100;
const answeredRidge = 3;
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
 * Fits all of the question's model on the story questions for which `use` holds, and on our own. What one stage says of a
 * training question to the next comes from a fit that has not seen its story, so that the next learns how far to trust it.
 */
export function fitQuestion(
  table: QuestionTable,
  own: readonly OwnQuestion[],
  use: (i: number) => boolean,
  forCuts = use,
): QuestionModel {
  const { questions, story, views, tools } = table;
  const labels = questions.map(({ inferential }) => inferential);
  const part = (i: number): number => story[i]! % parts;
  const others = Array.from({ length: parts }, (_, p) =>
    fitLocator(table.clauses, (i) => use(i) && part(i) !== p),
  );
  const locator = fitLocator(table.clauses, use);
  const features = questions.map((_, i) => (use(i) ? featuresOf(table, i, others[part(i)]!) : {}));
  const counts = (i: number): number => (use(i) ? 1 : 0);
  const alone = fitTable(features, labels, { ridge: aloneRidge, use: counts });
  const storyOdds = oddsUnseen(features, labels, { ridge: aloneRidge }, table, use);
  const stories = questions.flatMap(({ inferential }, i): GeneralCase[] =>
    use(i) ? [{ features: generalFeatures(views[i]!, storyOdds[i]!, tools), inferential, own: null }] : [],
  );
  const general = fitGeneral([...stories, ...ownCases(own, locator, alone, tools)]);
  const used = questions.map((_, i) => i).filter(use);
  const chances = stories.map(({ features: row }) =>
    eitherOf(chanceOf(logOdds(general.own, row)), chanceOf(logOdds(general.author, row))),
  );
  const unseen = new Array<number>(questions.length).fill(0);
  used.forEach((i, k) => (unseen[i] = Math.log(chances[k]! / (1 - chances[k]!))));
  const answered = questions.map(({ answer }, i) =>
    use(i) ? answeredFeatures(views[i]!, answer, unseen[i]!, tools) : {},
  );
  const answeredOdds = oddsUnseen(answered, labels, { ridge: answeredRidge }, table, use);
  return {
    locator,
    alone,
    general: { ...general, cuts: cutsOf(unseen, labels, forCuts) },
    answered: fitTable(answered, labels, { ridge: answeredRidge, use: counts }),
    answeredCuts: cutsOf(answeredOdds, labels, forCuts),
  };
}

function ownCases(
  own: readonly OwnQuestion[],
  locator: Locator,
  alone: Logistic,
  tools: JudgingTools,
): readonly GeneralCase[] {
  return own.map((question) => {
    const view = viewQuestion(question.text, question.segment, tools);
    const odds = logOdds(alone, questionFeatures(view, locate(view, locator), tools));
    const inferential =
      question.relationship === 'on my own' || question.relationship === 'author and me' ? 1 : 0;
    return { features: generalFeatures(view, odds, tools), inferential, own: question };
  });
}

/** Features of question `i` as a locator sees it. */
export function featuresOf({ views, tools }: QuestionTable, i: number, locator: Locator): Features {
  const view = views[i]!;
  return questionFeatures(view, locate(view, locator), tools);
}

/** Log odds of each used question by a model that has not seen its story. */
function oddsUnseen(
  features: readonly Features[],
  labels: readonly number[],
  options: TableOptions,
  { story }: QuestionTable,
  use: (i: number) => boolean,
): readonly number[] {
  const folds = 4;
  const fold = (i: number): number => Math.floor(story[i]! / parts) % folds;
  const models = Array.from({ length: folds }, (_, f) =>
    fitTable(features, labels, { ...options, use: (i) => (use(i) && fold(i) !== f ? 1 : 0) }),
  );
  return features.map((row, i) => (use(i) ? logOdds(models[fold(i)]!, row) : 0));
}

function cutsOf(odds: readonly number[], labels: readonly number[], use: (i: number) => boolean) {
  const used = odds.map((_, i) => i).filter(use);
  const chances = used.map((i) => chanceOf(odds[i]!));
  const actual = used.map((i) => labels[i]!);
  return { ...bandFor(chances, actual), cut: bestCut(chances, actual) };
}
