import type { Lexicon } from '../lexicon/lexicon.js';
import { stemOf } from '../text/stem.js';
import { isStopWord } from '../text/stop-words.js';
import { cosine, meanVector, vectorOf, type Vector } from './meaning-vectors.js';
import { among, knownOf, overlap, type Known } from './meaning-words.js';

/** Features of a proposed meaning of a word in its place. */
export const meaningFeatureNames = [
  'synonym',
  'synonym back',
  'early synonym',
  'some word a synonym',
  'broader',
  'narrower',
  'same kind',
  'shared synonyms',
  'in the gloss',
  'in its gloss',
  'shared gloss',
  'opposite',
  'frequency',
  'rarer',
  'vectors',
  'best vector',
  'vector of context',
  'closer to context',
  'vectors of synonyms',
  'centre',
  'both centres',
  'same part of speech',
  'words',
  'letters',
  'same stem',
  'senses',
] as const;
export type MeaningFeature = (typeof meaningFeatureNames)[number];
export type MeaningFeatures = Readonly<Record<MeaningFeature, number>>;

/** The word to be clarified with its surroundings, made ready once for several meanings. */
export interface HardWord {
  readonly known: Known;
  readonly vector: Vector | null;
  readonly context: Vector | null;
  readonly synonymVectors: readonly Vector[];
  readonly centre: Vector | null;
  readonly parts: readonly number[];
}

/** Cosines that stand in where a word has no vector: what unrelated words reach. */
const none = { plain: 0.15, synonyms: 0.2 };
const synonymsLooked = 30;
/** How sharply synonyms are told apart by how near they are to the context. */
const sharpness = 4;
const commonest = 7.5;

/** Rare words say more. */
function weigh(word: string, lexicon: Lexicon): number {
  return Math.max(0.5, commonest - lexicon.zipf(word));
}

function vectorsOf(words: readonly string[], lexicon: Lexicon): readonly Vector[] {
  return words.flatMap((word) => vectorOf(word, lexicon) ?? []);
}

function partsOf(word: string, lexicon: Lexicon): readonly number[] {
  const { noun, verb, adj, adv } = lexicon.partShares(lexicon.bases(word)[0] ?? word);
  return [noun, verb, adj, adv];
}

/** The direction of a word with its synonyms, those that suit the context in front. */
function centreOf(vector: Vector | null, synonyms: readonly Vector[], context: Vector | null): Vector | null {
  const weighed = synonyms.map((one) => ({
    vector: one,
    weight: Math.exp(sharpness * cosine(one, context)),
  }));
  const all = weighed.reduce((sum, { weight }) => sum + weight, 0) || 1;
  return meanVector([...weighed, { vector, weight: all }]);
}

/** Makes a word ready; `context` are the content words around it, in lower case. */
export function hardWord(word: string, context: readonly string[], lexicon: Lexicon): HardWord {
  const known = knownOf(word, lexicon);
  const vector = vectorOf(word, lexicon);
  const around = meanVector(
    context
      .filter((other) => other !== word)
      .map((other) => ({ vector: vectorOf(other, lexicon), weight: weigh(other, lexicon) })),
  );
  const single = known.synonyms.filter((one) => !one.includes(' ')).slice(0, synonymsLooked);
  const synonymVectors = vectorsOf(single, lexicon);
  return {
    known,
    vector,
    context: around,
    synonymVectors,
    centre: centreOf(vector, synonymVectors, around),
    parts: partsOf(word, lexicon),
  };
}

function mean(values: readonly number[], otherwise = 0): number {
  return values.length === 0 ? otherwise : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function most(values: readonly number[], otherwise = 0): number {
  return values.length === 0 ? otherwise : Math.max(...values);
}

function dot(a: readonly number[], b: readonly number[]): number {
  const length = Math.sqrt(a.reduce((sum, x) => sum + x * x, 0) * b.reduce((sum, x) => sum + x * x, 0));
  return length === 0 ? 0.5 : a.reduce((sum, x, n) => sum + x * (b[n] ?? 0), 0) / length;
}

/** The words of a meaning that carry it; all where none does. */
export function carrying(words: readonly string[]): readonly string[] {
  const content = words.filter((word) => !isStopWord(word));
  return content.length > 0 ? content : words;
}

function byWordNet(
  { known }: HardWord,
  phrase: string,
  words: readonly string[],
  main: readonly string[],
  lexicon: Lexicon,
) {
  const own = knownOf(phrase, lexicon);
  const rank = known.synonyms.indexOf(phrase);
  const test = (one: boolean) => (one ? 1 : 0);
  const wordBases = new Set(known.bases);
  return {
    synonym: test(among(phrase, known.synonymSet, lexicon)),
    'synonym back': test(known.bases.some((base) => own.synonymSet.has(base))),
    'early synonym': rank >= 0 ? 1 / (1 + rank) : 0,
    'some word a synonym': test(main.some((word) => among(word, known.synonymSet, lexicon))),
    broader: test(among(phrase, known.broader, lexicon)),
    narrower: test(known.bases.some((base) => own.broader.has(base))),
    'same kind': overlap(known.broader, own.broader),
    'shared synonyms': overlap(
      new Set([...known.synonymSet, ...known.bases]),
      new Set([...own.synonymSet, ...own.bases]),
    ),
    'in the gloss': mean(main.map((word) => test(known.glossStems.has(stemOf(word))))),
    'in its gloss': test(own.glossStems.has(stemOf(known.word))),
    'shared gloss': overlap(known.glossStems, own.glossStems),
    opposite: test(
      main.some((word) => among(word, known.antonyms, lexicon)) ||
        [...wordBases].some((base) => own.antonyms.has(base)),
    ),
    'same stem': test(words.some((word) => stemOf(word) === stemOf(known.word))),
    senses: Math.log(1 + own.synonymSet.size),
  };
}

function byVectors(word: HardWord, main: readonly string[], lexicon: Lexicon) {
  const meant = meanVector(
    main.map((one) => ({ vector: vectorOf(one, lexicon), weight: weigh(one, lexicon) })),
  );
  const single = main.length === 1 ? lexicon.synonyms(main[0] ?? '') : [];
  const around = vectorsOf(single.filter((one) => !one.includes(' ')).slice(0, synonymsLooked), lexicon);
  const ranked = word.synonymVectors.map((one) => cosine(one, meant, none.plain)).sort((a, b) => b - a);
  const near = cosine(word.context, meant);
  return {
    vectors: cosine(word.vector, meant, none.plain),
    'best vector': most(
      vectorsOf(main, lexicon).map((one) => cosine(word.vector, one, none.plain)),
      none.plain,
    ),
    'vector of context': near,
    'closer to context': near - cosine(word.context, word.vector),
    'vectors of synonyms': mean(ranked.slice(0, 3), none.synonyms),
    centre: cosine(word.centre, meant, none.plain),
    'both centres': cosine(word.centre, centreOf(meant, around, word.context), none.plain),
  };
}

/** The features of a meaning, given as words in lower case. */
export function meaningFeatures(word: HardWord, words: readonly string[], lexicon: Lexicon): MeaningFeatures {
  const main = carrying(words);
  const phrase = words.join(' ');
  const zipf = main.length === 0 ? 0 : Math.min(...main.map((one) => lexicon.zipf(one)));
  return {
    ...byWordNet(word, phrase, words, main, lexicon),
    ...byVectors(word, main, lexicon),
    frequency: zipf,
    rarer: Math.max(0, lexicon.zipf(word.known.word) - zipf),
    'same part of speech': mean(main.map((one) => dot(word.parts, partsOf(one, lexicon)))),
    words: Math.min(4, words.length),
    letters: Math.min(20, phrase.length),
  };
}
