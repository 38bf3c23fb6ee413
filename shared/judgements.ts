import type { Level, Relationship } from './strategies.js';
import type { Clue, PassageReading, Place, Range } from './text.js';

/** Why a judgement came out as it did: a rule's name, where, and at most a few figures; never a quotation, which is made when shown. */
export interface Reason {
  readonly rule: string;
  readonly place: Place | null;
  readonly figures?: Readonly<Record<string, number>>;
}

interface Judged<Kind extends string, Value, Measures> {
  readonly kind: Kind;
  /** Level of the try, null where the computer can't know. */
  readonly level: Level | null;
  readonly value: Value;
  /** How sure the judge is of `value`, 0..1, null where it has no probability. */
  readonly probability: number | null;
  readonly measures: Measures;
  readonly reasons: readonly Reason[];
  /** Of rules and weights together, so that old judgements are never re-made. */
  readonly version: string;
}

export type QuestionJudgement = Judged<
  'question',
  'literal' | 'inferential' | 'unsure',
  {
    readonly isQuestion: boolean;
    /** Probability that the question is inferential, 0..1, also when unsure. */
    readonly inferential: number;
    readonly relationship: Relationship | null;
    readonly onTopic: number;
    readonly mainIdea: number;
    readonly answerable: number;
    readonly copied: number;
  }
>;

export type SumUpJudgement = Judged<
  'sum-up',
  'on topic' | 'off topic',
  {
    readonly content: number;
    readonly wording: number;
    readonly sentences: number;
    readonly words: number;
    readonly coverage: number;
    readonly copied: number;
    readonly onTopic: number;
    /** Share copied from other pupils' posts, told to the tutor only. */
    readonly copiedFromPeers: number;
    /** Overlap with the adult's gist, null without one. */
    readonly gist: number | null;
  }
>;

export type ClarifyJudgement = Judged<
  'clarify',
  'fits' | 'read it again' | 'names the trouble' | 'nothing yet',
  {
    readonly found: Range | null;
    readonly misspelt: boolean;
    readonly fit: number | null;
    readonly clue: Clue | null;
    readonly trouble: 'word' | 'phrase' | 'pronoun' | 'idea' | null;
    readonly fixUp: string | null;
  }
>;

export type PredictJudgement = Judged<
  'predict',
  'grounded' | 'not grounded',
  {
    readonly grounded: number;
    readonly outcome: 'came true' | 'partly' | 'off track' | null;
    readonly forward: boolean;
    readonly retelling: boolean;
    readonly negated: boolean;
  }
>;

export type AnswerJudgement = Judged<
  'answer',
  'fits' | 'not yet' | 'unsure',
  {
    readonly fits: number | null;
    readonly evidence: number;
    readonly negated: boolean;
    readonly speaksToQuestion: number;
  }
>;

/** A judgement by kind. Places in reasons say which text they point into. */
export type Judgement =
  QuestionJudgement | SumUpJudgement | ClarifyJudgement | PredictJudgement | AnswerJudgement;

/** What a judge is given; `peers` are other pupils' posts on the segment, `gist` and `meaning` the adult's. */
export type JudgeInput =
  | {
      readonly kind: 'question';
      readonly segment: string;
      readonly text: string;
      readonly answer?: string;
      readonly gist?: string;
      readonly peers?: readonly string[];
      /** How far a class has moved the line between literal and inferential, -0.15..0.15; positive calls more literal. */
      readonly line?: number;
    }
  | {
      readonly kind: 'sum-up';
      readonly segment: string;
      readonly text: string;
      readonly gist?: string;
      readonly peers?: readonly string[];
    }
  | {
      readonly kind: 'clarify';
      readonly segment: string;
      readonly word: string;
      readonly text: string;
      readonly offset?: number;
      readonly meaning?: string;
      readonly fixUp?: string;
    }
  | { readonly kind: 'predict'; readonly segment: string; readonly text: string; readonly next?: string }
  | {
      readonly kind: 'answer';
      readonly segment: string;
      readonly question: string;
      readonly text: string;
      readonly reference?: readonly string[];
    };

export type FindingKind = 'hurtful' | 'personal' | 'link' | 'flood' | 'off topic' | 'alarm';

/** What a screen found, and where in the text. */
export interface Finding {
  readonly kind: FindingKind;
  readonly rule: string;
  readonly place: Place;
}

export interface Screening {
  readonly hold: boolean;
  readonly alarm: boolean;
  readonly findings: readonly Finding[];
}

export interface ScreenInput {
  readonly text: string;
  /** The passage's text, whose own words are no offence. */
  readonly passage?: string;
  /** Nicknames of the class. */
  readonly names?: readonly string[];
}

/** The port through which the practice has texts screened, judged and read; synchronous and pure, built once from the lexicon. */
export interface Judges {
  readonly screen: (input: ScreenInput) => Screening;
  readonly judge: (input: JudgeInput) => Judgement;
  /** Reads and cuts a passage for a grade (3..8); throws `Fault` where it can't be used. */
  readonly read: (
    text: string,
    options: { readonly title?: string; readonly grade?: number },
  ) => PassageReading;
}
