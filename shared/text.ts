/** What a close reading of a passage gives. All offsets are UTF-16 units, end exclusive, within the segment's text unless said otherwise. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** A range in one of the texts that a judgement looks at: the segment, the pupil's own text, the next segment, the answer. */
export interface Place extends Range {
  readonly in: 'segment' | 'text' | 'next' | 'answer';
}

/** A term that carries the segment, as it stands in the text most often; weight 0..1, the heaviest 1. */
export interface KeyTerm {
  readonly term: string;
  readonly weight: number;
}

/** Kinds of help that a text gives with a word (textbook lists). */
export const clueKinds = ['definition', 'synonym', 'contrast', 'example', 'cause', 'inference'] as const;
export type ClueKind = (typeof clueKinds)[number];

export interface Clue {
  readonly kind: ClueKind;
  readonly place: Place;
}

/** A word that a reader of the passage's grade may stumble on; difficulty 0..1. */
export interface HardWord {
  readonly word: string;
  readonly start: number;
  readonly difficulty: number;
  readonly clue: Clue | null;
}

import type { Relationship } from './strategies.js';

/** A question that the bot could seed, marked as its own. */
export interface SeedQuestion {
  readonly text: string;
  readonly relationship: Relationship;
}

/** How hard a text is: grade by Flesch-Kincaid with the range over the formulas; grade and range null under 100 words. */
export interface LevelReading {
  readonly grade: number | null;
  readonly range: readonly [number, number] | null;
  /** Flesch reading ease, 0..100 after clamping. */
  readonly ease: number | null;
  readonly formulas: Readonly<Record<string, number | null>>;
  readonly words: number;
  readonly sentences: number;
}

export interface SegmentReading {
  readonly text: string;
  readonly sentences: readonly Range[];
  readonly keyTerms: readonly KeyTerm[];
  readonly hardWords: readonly HardWord[];
  readonly topicSentence: Range | null;
  readonly questions: readonly SeedQuestion[];
}

export interface PassageReading {
  readonly title: string;
  readonly level: LevelReading;
  readonly segments: readonly SegmentReading[];
}
