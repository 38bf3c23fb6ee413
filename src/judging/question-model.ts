import type { Locator } from './question-locator.js';
import type { Logistic } from './logistic.js';

/** Where weights come from: data and licence, the newest date that the data name, what was measured. */
export interface WeightsHeader {
  readonly version: number;
  readonly data: string;
  readonly licence: string;
  readonly date: string;
  readonly figures: Readonly<Record<string, number>>;
}

/** Below `low` a question is called literal, above `high` inferential, between them unsure; `cut` is where one must say. */
export interface Cuts {
  readonly low: number;
  readonly cut: number;
  readonly high: number;
}

/** What is learned on stories: literal or inferential. */
export interface StoryModel {
  readonly locator: Locator;
  /** From question and segment alone. */
  readonly alone: Logistic;
  /** With an answer; it takes the log odds of `alone` as a feature. */
  readonly answered: Logistic;
  readonly answeredCuts: Cuts;
}

/** What is learned on stories and on questions beyond stories, each from the general features. */
export interface GeneralModel {
  /** On my own, against the other three. */
  readonly own: Logistic;
  /** Author and me, against both literal ones. */
  readonly author: Logistic;
  /** Think and search, against right there. */
  readonly search: Logistic;
  /** Aims at the main idea. */
  readonly mainIdea: Logistic;
  /** The text answers it. */
  readonly answerable: Logistic;
  readonly cuts: Cuts;
}

/** All that is learned for judging questions. */
export interface QuestionModel extends StoryModel {
  readonly general: GeneralModel;
}
