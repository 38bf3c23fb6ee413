import type { Lexicon } from '../lexicon/lexicon.js';
import { stemOf } from '../text/stem.js';
import { isStopWord } from '../text/stop-words.js';

/** What WordNet tells of a word, gathered once. */
export interface Known {
  readonly word: string;
  readonly bases: readonly string[];
  readonly synonyms: readonly string[];
  readonly synonymSet: ReadonlySet<string>;
  readonly broader: ReadonlySet<string>;
  readonly glossStems: ReadonlySet<string>;
  readonly antonyms: ReadonlySet<string>;
}

/** Gathers what WordNet tells of a word in lower case. */
export function knownOf(word: string, lexicon: Lexicon): Known {
  const synonyms = lexicon.synonyms(word);
  return {
    word,
    bases: lexicon.bases(word),
    synonyms,
    synonymSet: new Set(synonyms),
    broader: new Set(lexicon.hypernyms(word)),
    glossStems: new Set(
      lexicon
        .glossWords(word)
        .filter((one) => !isStopWord(one))
        .map(stemOf),
    ),
    antonyms: new Set(lexicon.antonyms(word)),
  };
}

/** Whether a word or its base form is in a set of words. */
export function among(word: string, set: ReadonlySet<string>, lexicon: Lexicon): boolean {
  return set.has(word) || lexicon.bases(word).some((base) => set.has(base));
}

/** Overlap of two sets: shared members by the geometric mean of the sizes, 0..1. */
export function overlap(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size === 0 || b.size === 0) return 0;
  let shared = 0;
  for (const one of a) if (b.has(one)) shared++;
  return shared / Math.sqrt(a.size * b.size);
}
