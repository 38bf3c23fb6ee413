import type { Blend } from './blend.js';
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

/** All that is learned for judging questions. */
export interface QuestionModel {
  readonly locator: Locator;
  /** Inferential or literal, learned from questions of reading experts on stories. */
  readonly story: Blend;
  readonly storyCuts: Cuts;
  /** The same, learned from questions as children write them on texts of all kinds; it knows what `story` says. */
  readonly beyond: Blend;
  readonly beyondCuts: Cuts;
  /** How much a question on its segment is of the kind that `story` was learned from. */
  readonly tale: Logistic;
  /** On my own, against author and me. */
  readonly own: Blend;
  /** Think and search, against right there. */
  readonly search: Blend;
  /** Aims at the main idea. */
  readonly mainIdea: Blend;
  /** The text answers it. */
  readonly answerable: Blend;
  /** Inferential or literal with an answer; it takes the log odds without one as a feature. */
  readonly answered: Logistic;
  readonly answeredCuts: Cuts;
}
