/** Shares 0..1 that add up to 1 where the word is known. */
export interface PartShares {
  readonly noun: number;
  readonly verb: number;
  readonly adj: number;
  readonly adv: number;
}

/** One sense of a word in WordNet; words in lower case, base forms, the word itself among them. */
export interface WordSense {
  readonly part: 'noun' | 'verb' | 'adj' | 'adv';
  /** 0 for the most used sense of this part of speech. */
  readonly rank: number;
  readonly words: readonly string[];
  readonly broader: readonly string[];
  readonly gloss: readonly string[];
}

/** The word knowledge that text, judging and safety need, read from disk once; every look-up is synchronous and pure. Words are given in lower case. */
export interface Lexicon {
  /** Zipf frequency (log10 per thousand million words), 0 where unknown. */
  zipf(word: string): number;
  /** Whether the word, or its base form, stands in any of the word lists at hand. */
  knows(word: string): boolean;
  /** Dale-Chall's list of words that most fourth graders know. */
  familiar(word: string): boolean;
  /** Spache's list for grades 1 to 3. */
  familiarEarly(word: string): boolean;
  syllables(word: string): number;
  /** Base forms by WordNet's rules and exceptions, the word itself where none is found. */
  bases(word: string): readonly string[];
  /** Share of each part of speech among the word's uses, by WordNet's tag counts; all 0 where the word isn't in it. */
  partShares(word: string): PartShares;
  /** Number of senses in WordNet, 0 where the word isn't in it. */
  senses(word: string): number;
  /** The senses of the word's base forms one by one, the more used ones of each part of speech. */
  senseSets(word: string): readonly WordSense[];
  synonyms(word: string): readonly string[];
  antonyms(word: string): readonly string[];
  /** Broader words up to a depth. */
  hypernyms(word: string): readonly string[];
  /** Words of the glosses. */
  glossWords(word: string): readonly string[];
  /** Known words nearest in spelling and sound to a misspelt one, best first; `prefer` are the passage's own words. */
  spellings(word: string, prefer?: ReadonlySet<string>): readonly string[];
}
