/*
 * Three plain logistic models on each other: where would the answer stand (the locator), literal or inferential from
 * question and segment, and the relationship by the trade's rule; a fourth takes the answer in where there is one.
 *
 * What was tried on story questions, five folds by story (AUC alone): these features without the locator .832; with it
 * .838; features weighed apart for each kind of question .836 (more weights, no gain, left out); a model of question
 * n-grams stacked on top, no gain; word vectors for words that the text lacks, .001; irregular forms read as their base,
 * little alone and two points with an answer; boosted trees on the same features .841, mean of trees and this .843 and
 * kappa where decided .02 better. The plain model is within a point of the best, so it is the one used.
 *
 * What holds it back: more than four fifths of the AUC comes from the kind of question; within "why" and "how ... feel" it
 * is .68, where two experts themselves often differ. Beyond stories the sealed half of our own questions came out at kappa
 * .29 in its first run (weights of that day), .28 in the next, though passages left out of the open half had given .45:
 * its rules were written with the open half in sight. Counting our questions more raises it and costs on stories.
 * "Sure" answers are the better half: kappa .50 to .56 there.
 */
import { chanceOf, logOdds } from './logistic.js';
import { answeredFeatures } from './question-answered.js';
import { questionFeatures, type Features } from './question-features.js';
import { generalFeatures } from './question-general.js';
import { locate } from './question-locator.js';
import type { QuestionModel } from './question-model.js';
import type { QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';

/** All chances that the model gives for a question, 0..1 each, with what they came from. */
export interface QuestionChances {
  /** Inferential, from question and segment, and from the answer too where there is one. */
  readonly inferential: number;
  readonly own: number;
  readonly author: number;
  readonly search: number;
  readonly mainIdea: number;
  readonly answerable: number;
  /** Chance of each clause to hold the answer. */
  readonly located: readonly number[];
  readonly story: Features;
  readonly general: Features;
  readonly answered: Features | null;
}

/** Runs the model over a question; pure. */
export function questionChances(
  view: QuestionView,
  answer: string | undefined,
  model: QuestionModel,
  tools: JudgingTools,
): QuestionChances {
  const located = locate(view, model.locator);
  const story = questionFeatures(view, located, tools);
  const storyOdds = logOdds(model.alone, story);
  const general = generalFeatures(view, storyOdds, tools);
  const of = (name: 'own' | 'author' | 'search' | 'mainIdea' | 'answerable'): number =>
    chanceOf(logOdds(model.general[name], general));
  const own = of('own');
  const author = of('author');
  const alone = eitherOf(own, author);
  const answered =
    answer === undefined || answer.trim() === ''
      ? null
      : answeredFeatures(view, answer, Math.log(alone / (1 - alone)), tools);
  return {
    inferential: answered ? chanceOf(logOdds(model.answered, answered)) : alone,
    own,
    author,
    search: of('search'),
    mainIdea: of('mainIdea'),
    answerable: of('answerable'),
    located,
    story,
    general,
    answered,
  };
}

/** A question is inferential where it is on one's own, or else where it is for author and me. */
export function eitherOf(own: number, author: number): number {
  return Math.min(1 - 1e-6, Math.max(1e-6, 1 - (1 - own) * (1 - author)));
}
