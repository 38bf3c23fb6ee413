import { blendOdds } from '../../judging/blend.js';
import { chanceOf, logOdds, type Logistic } from '../../judging/logistic.js';
import { answeredFeatures } from '../../judging/question-answered.js';
import { putLocated, settledFeatures, type Features } from '../../judging/question-features.js';
import { mixed, oddsOf, storyFeature } from '../../judging/question-odds.js';
import { locate, type Locator } from '../../judging/question-locator.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { viewQuestion, type QuestionView } from '../../judging/question-view.js';
import type { JudgingTools } from '../../judging/tools.js';
import { bandFor, bestCut } from './choose-cuts.js';
import { fitBeyond, ownLabel } from './fit-beyond.js';
import { fitBlend } from './fit-blend.js';
import { clauseTable, fitLocator, meanLocator, type ClauseTable } from './fit-locator.js';
import { fitTable, type TableOptions } from './fit-table.js';
import type { OwnQuestion } from './own-questions.js';
import type { LabelledQuestion } from './question-data.js';

/** Ridges: among 33, 100 and 330 for stories, and 1 and 33 with an answer, the folds by story hardly differ; nor do more, deeper or slower trees. */
const storyOptions = {
  ridge: 100,
  trees: { trees: 250, depth: 4, rate: 0.05, rows: 0.7, columns: 0.3, ridge: 10, least: 4, seed: 1 },
  parts: 3,
};
const taleRidge = 100;
const answeredRidge = 3;
/** One of our own questions counts as so many story questions where what kind a question is of is learned. */
const ownCounts = 3;
/** As many of our own are literal as inferential; a cut chosen on so few wavers between .36 and .58. */
const beyondCut = 0.5;
const halves = 2;

/** Labelled questions laid beside their sections, once for all fits. */
export interface QuestionTable {
  readonly questions: readonly LabelledQuestion[];
  readonly views: readonly QuestionView[];
  readonly clauses: ClauseTable;
  /** Number of each question's story, by first coming. */
  readonly story: readonly number[];
  readonly own: readonly OwnQuestion[];
  readonly ownViews: readonly QuestionView[];
  /** Features that no learned model changes, of both. */
  readonly settled: readonly Features[];
  readonly ownSettled: readonly Features[];
  readonly tools: JudgingTools;
}

/** Reads all questions closely, those on stories and our own. */
export function questionTable(
  questions: readonly LabelledQuestion[],
  asked: readonly OwnQuestion[],
  tools: JudgingTools,
): QuestionTable {
  const views = questions.map(({ text, section }) => viewQuestion(text, section, tools));
  const answers = questions.map(({ answer, inferential }) => (inferential ? null : answer));
  const order = new Map<string, number>();
  for (const { story } of questions) if (!order.has(story)) order.set(story, order.size);
  const story = questions.map((question) => order.get(question.story)!);
  const own = asked.filter(({ isQuestion }) => isQuestion);
  const ownViews = own.map(({ text, segment }) => viewQuestion(text, segment, tools));
  return {
    questions,
    views,
    clauses: clauseTable(views, answers, tools),
    story,
    own,
    ownViews,
    settled: views.map((view) => settledFeatures(view, tools)),
    ownSettled: ownViews.map((view) => settledFeatures(view, tools)),
    tools,
  };
}

/**
 * Fits all of the question's model on the story questions for which `use` holds, and on our own. What one stage says of a
 * training question to the next comes from a fit that has not seen its story, so that the next learns how far to trust it:
 * the locator is learned on each half of the stories, and where neither half is at stake the mean of both speaks.
 */
export function fitQuestion(table: QuestionTable, use: (i: number) => boolean, forCuts = use): QuestionModel {
  const { questions, story, views, own, ownViews, tools } = table;
  const labels = questions.map(({ inferential }) => inferential);
  const half = (i: number): number => story[i]! % halves;
  const others = Array.from({ length: halves }, (_, h) =>
    fitLocator(table.clauses, (i) => use(i) && half(i) !== h),
  );
  const locator = meanLocator(others);
  const features = questions.map((_, i) =>
    use(i) ? locatedBy(others[half(i)]!, views[i]!, table.settled[i]!) : {},
  );
  const part = (i: number): number => Math.floor(story[i]! / halves) % storyOptions.parts;
  const { blend, unseen } = fitBlend(features, labels, { ...storyOptions, use, part });
  const asked = ownViews.map((view, i) => locatedBy(locator, view, table.ownSettled[i]!));
  const tale = fitTale(features, asked, use);
  for (const row of asked) row[storyFeature] = blendOdds(blend, row);
  features.forEach((row, i) => use(i) && (row[storyFeature] = unseen[i]!));
  const fitted = fitBeyond(asked, own);
  const alone = features.map((row, i) =>
    use(i)
      ? oddsOf(
          mixed(
            chanceOf(logOdds(tale, row)),
            chanceOf(unseen[i]!),
            chanceOf(blendOdds(fitted.blends.beyond, row)),
          ),
        )
      : 0,
  );
  const answered = questions.map(({ answer }, i) =>
    use(i) ? answeredFeatures(views[i]!, answer, alone[i]!, tools) : {},
  );
  const answeredOdds = oddsUnseen(answered, labels, { ridge: answeredRidge }, part, use);
  return {
    locator,
    story: blend,
    storyCuts: cutsOf(alone, labels, forCuts),
    ...fitted.blends,
    beyondCuts: { ...cutsOf(fitted.unseen, own.map(ownLabel), () => true), cut: beyondCut },
    tale,
    answered: fitTable(answered, labels, { ridge: answeredRidge, use: (i) => (use(i) ? 1 : 0) }),
    answeredCuts: cutsOf(answeredOdds, labels, forCuts),
  };
}

function locatedBy(locator: Locator, view: QuestionView, settled: Features): Record<string, number> {
  const features = { ...settled };
  putLocated(view, locate(view, locator), features);
  return features;
}

/** Learns which questions and segments are like those of the stories, and which like our own. */
function fitTale(
  stories: readonly Features[],
  own: readonly Features[],
  use: (i: number) => boolean,
): Logistic {
  const count = stories.length;
  return fitTable([...stories, ...own], [...stories.map(() => 1), ...own.map(() => 0)], {
    ridge: taleRidge,
    use: (i) => (i < count ? (use(i) ? 1 : 0) : ownCounts),
  });
}

/** Log odds of each used question by a model that has not seen its part of the stories. */
function oddsUnseen(
  features: readonly Features[],
  labels: readonly number[],
  options: TableOptions,
  part: (i: number) => number,
  use: (i: number) => boolean,
): readonly number[] {
  const models = Array.from({ length: storyOptions.parts }, (_, p) =>
    fitTable(features, labels, { ...options, use: (i) => (use(i) && part(i) !== p ? 1 : 0) }),
  );
  return features.map((row, i) => (use(i) ? logOdds(models[part(i)]!, row) : 0));
}

function cutsOf(odds: readonly number[], labels: readonly number[], use: (i: number) => boolean) {
  const used = odds.map((_, i) => i).filter(use);
  const chances = used.map((i) => chanceOf(odds[i]!));
  const actual = used.map((i) => labels[i]!);
  return { ...bandFor(chances, actual), cut: bestCut(chances, actual) };
}
