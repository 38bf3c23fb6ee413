/*
 * Which sense of a word is meant where it stands: a sense is the likelier the nearer the direction of its synonyms, broader
 * words and gloss lies to the words around, the more used it is, and the better its part of speech suits the place. The
 * numbers are ours, set once and not tuned; what a meaning's standing towards the senses is worth is learned.
 */
import type { Lexicon, PartShares } from '../lexicon/lexicon.js';
import { stemOf } from '../text/stem.js';
import { isStopWord } from '../text/stop-words.js';
import { cosine, meanVector, vectorOf, type Vector } from './meaning-vectors.js';

/** A sense made ready to hold meanings against. */
export interface ReadySense {
  readonly part: keyof PartShares;
  readonly rank: number;
  readonly words: ReadonlySet<string>;
  readonly broader: ReadonlySet<string>;
  readonly glossStems: ReadonlySet<string>;
  readonly vector: Vector | null;
}

/** A sense with its chance to be the one meant, 0..1; those of a word add up to 1. */
export interface LikelySense extends ReadySense {
  readonly chance: number;
}

const weights = { synonym: 2, other: 1 };
const glossWords = 8;
const likely = { nearness: 5, rank: 0.35, otherPart: 0.03, noVector: 0.1 };
const mostKept = 4_000;
const kept = new WeakMap<Lexicon, Map<string, readonly ReadySense[]>>();

/** The senses of a word, kept once made. */
export function readySenses(word: string, lexicon: Lexicon): readonly ReadySense[] {
  const known = kept.get(lexicon) ?? new Map<string, readonly ReadySense[]>();
  kept.set(lexicon, known);
  const before = known.get(word);
  if (before) return before;
  if (known.size >= mostKept) known.clear();
  const bases = new Set(lexicon.bases(word));
  const made = lexicon.senseSets(word).map(({ part, rank, words, broader, gloss }): ReadySense => {
    const telling = gloss.filter((one) => !isStopWord(one));
    const vectors = (some: readonly string[], weight: number) =>
      some.map((one) => ({ vector: vectorOf(one, lexicon), weight }));
    return {
      part,
      rank,
      words: new Set(words),
      broader: new Set(broader),
      glossStems: new Set(telling.map(stemOf)),
      vector: meanVector([
        ...vectors(
          words.filter((one) => !bases.has(one)),
          weights.synonym,
        ),
        ...vectors(telling.slice(0, glossWords), weights.other),
        ...vectors(broader, weights.other),
      ]),
    };
  });
  known.set(word, made);
  return made;
}

/** The senses of a word with their chances in a place. */
export function likelySenses(
  word: string,
  around: Vector | null,
  part: PartShares,
  lexicon: Lexicon,
): readonly LikelySense[] {
  const senses = readySenses(word, lexicon);
  const odds = senses.map(
    (sense) =>
      Math.exp(likely.nearness * cosine(sense.vector, around, likely.noVector) - likely.rank * sense.rank) *
      (part[sense.part] + likely.otherPart),
  );
  const all = odds.reduce((sum, one) => sum + one, 0) || 1;
  return senses.map((sense, n) => ({ ...sense, chance: (odds[n] ?? 0) / all }));
}
