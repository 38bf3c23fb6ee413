/*
 * Where would the answer stand (the locator)? Then literal or inferential twice, as a reading expert says it of stories and
 * by the trade's rule for texts of all kinds; how much each counts hangs on what the question and its segment are like.
 * Then the relationship on the side that won; a last model takes the answer in where there is one.
 *
 * Each of these but the last is the mean of a logistic model and of boosted trees. What was tried on story questions, five
 * folds by story (AUC alone): logistic .839, trees .842, mean .844; three seeds of trees, deeper or shallower ones, fewer
 * features a tree: no gain; labels softened by what the answer tells .0004, left out; a model of question n-grams stacked on
 * top, no gain. One model for both kinds of text instead of two: kappa beyond stories .53 and stories .837, or .47 and .843,
 * by how much our own questions count.
 */
import {
  laidLogOdds,
  laidOdds,
  laidValues,
  layBlend,
  layLogistic,
  namesIn,
  type LaidBlend,
  type LaidLogistic,
} from './laid-blend.js';
import { chanceOf, logOdds } from './logistic.js';
import { answeredFeatures } from './question-answered.js';
import { putLocated, settledFeatures, type Features } from './question-features.js';
import { locate } from './question-locator.js';
import type { Cuts, QuestionModel } from './question-model.js';
import type { QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';

/** All chances that the model gives for a question, 0..1 each, with what they came from. */
export interface QuestionChances {
  /** Inferential, from question and segment, and from the answer too where there is one. */
  readonly inferential: number;
  /** Where the lines lie for `inferential`. */
  readonly cuts: Cuts;
  /** On my own if it is inferential, think and search if it is literal. */
  readonly own: number;
  readonly search: number;
  readonly mainIdea: number;
  readonly answerable: number;
  /** How much the story model counts. */
  readonly tale: number;
  /** Chance of each clause to hold the answer. */
  readonly located: readonly number[];
  readonly features: Features;
  /** The same in the order of the laid model's names. */
  readonly values: Float64Array;
  readonly answered: Features | null;
}

const blends = ['story', 'beyond', 'own', 'search', 'mainIdea', 'answerable'] as const;

/** The models over one order of names. */
export interface LaidModel extends Readonly<Record<(typeof blends)[number], LaidBlend>> {
  readonly names: readonly string[];
  readonly tale: LaidLogistic;
}

const laidOut = new WeakMap<QuestionModel, LaidModel>();

/** A model laid out as arrays, once. */
export function laidModel(model: QuestionModel): LaidModel {
  const known = laidOut.get(model);
  if (known) return known;
  const names = namesIn(
    blends.map((name) => model[name]),
    model.tale,
  );
  const laid = Object.fromEntries(blends.map((name) => [name, layBlend(model[name], names)]));
  const all = {
    ...(laid as Record<(typeof blends)[number], LaidBlend>),
    names,
    tale: layLogistic(model.tale, names),
  };
  laidOut.set(model, all);
  return all;
}

/** Runs the model over a question; pure. `settled` are the features that don't hang on the model, where they are at hand. */
export function questionChances(
  view: QuestionView,
  answer: string | undefined,
  model: QuestionModel,
  tools: JudgingTools,
  settled?: Features,
): QuestionChances {
  const laid = laidModel(model);
  const located = locate(view, model.locator);
  const features = settled ? { ...settled } : settledFeatures(view, tools);
  putLocated(view, located, features);
  const values = laidValues(features, laid.names);
  const tale = chanceOf(laidLogOdds(laid.tale, values));
  const storyOdds = laidOdds(laid.story, values);
  values[laid.names.indexOf(storyFeature)] = storyOdds;
  const of = (name: (typeof blends)[number]): number => chanceOf(laidOdds(laid[name], values));
  const alone = mixed(tale, chanceOf(storyOdds), of('beyond'));
  const answered =
    answer === undefined || answer.trim() === ''
      ? null
      : answeredFeatures(view, answer, oddsOf(alone), tools);
  return {
    inferential: answered ? chanceOf(logOdds(model.answered, answered)) : alone,
    cuts: answered ? model.answeredCuts : mixedCuts(tale, model.storyCuts, model.beyondCuts),
    own: of('own'),
    search: of('search'),
    mainIdea: of('mainIdea'),
    answerable: of('answerable'),
    tale,
    located,
    features,
    values,
    answered,
  };
}

/** Name of the feature by which all but the story model know what that one says, in log odds. */
export const storyFeature = 'story odds';

/** What two models say, the first counting `share`. */
export function mixed(share: number, one: number, other: number): number {
  return share * one + (1 - share) * other;
}

/** Log odds of a chance, kept finite. */
export function oddsOf(chance: number): number {
  const within = Math.min(1 - 1e-6, Math.max(1e-6, chance));
  return Math.log(within / (1 - within));
}

function mixedCuts(share: number, one: Cuts, other: Cuts): Cuts {
  const of = (name: keyof Cuts): number => mixed(share, one[name], other[name]);
  return { low: of('low'), cut: of('cut'), high: of('high') };
}
