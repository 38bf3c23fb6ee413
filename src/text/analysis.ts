import type { Range } from '../../shared/text.js';

/** A word of a text with what the judges need of it; offsets in UTF-16 units of the text, end exclusive. */
export interface Token extends Range {
  /** As written, curly quotes and all. */
  readonly text: string;
  /** Lower case, apostrophes straightened. */
  readonly lower: string;
  readonly stem: string;
  /** Carries meaning: no stop word, no number alone. */
  readonly content: boolean;
  readonly sentence: number;
  /** Capital inside a sentence, or never seen without one. */
  readonly name: boolean;
}

/** A text cut into sentences and words, once; `stems` holds each content stem with the tokens it stands at. */
export interface Analysis {
  readonly text: string;
  readonly sentences: readonly Range[];
  readonly tokens: readonly Token[];
  readonly stems: ReadonlyMap<string, readonly number[]>;
}
