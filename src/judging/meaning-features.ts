import type { Lexicon, PartShares } from '../lexicon/lexicon.js';
import { stemOf } from '../text/stem.js';
import { isStopWord } from '../text/stop-words.js';
import { cosine, meanVector, vectorOf, type Vector } from './meaning-vectors.js';
import { likelySenses, readySenses, type LikelySense } from './meaning-senses.js';
import { among, knownOf, overlap, type Known } from './meaning-words.js';
import { partInPlace } from './part-in-place.js';

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
  'sense holds',
  'sense broader',
  'sense gloss',
  'sense nearness',
  'best sense',
  'best sense chance',
  'senses together',
  'near words',
  'closer to near words',
  'sense of the meaning',
  'sense of the meaning near',
  'pair of senses',
  'part in place',
  'noun here',
  'verb here',
  'adjective here',
  'hard word frequency',
  'hard word senses',
  'no vector',
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
  /** Direction of the words around, those that stand nearer counting more. */
  readonly near: Vector | null;
  readonly here: PartShares;
  readonly senses: readonly LikelySense[];
  /** Direction of the senses by their chances, with the word's own. */
  readonly meant: Vector | null;
}

/** Where a hard word stands. */
export interface WordPlace {
  /** The text before the word and behind it. */
  readonly before: string;
  readonly after: string;
  /** Content words around it in lower case, with how many characters away each is. */
  readonly around: readonly { readonly word: string; readonly away: number }[];
}

/** Cosines that stand in where a word has no vector: what unrelated words reach. */
const none = { plain: 0.15, synonyms: 0.2, sense: 0.1 };
const synonymsLooked = 30;
/** How sharply synonyms are told apart by how near they are to the context. */
const sharpness = 4;
const commonest = 7.5;
/** Characters at which a word around counts half. */
const halfway = 25;
/** What the word's own direction counts beside that of its senses. */
const ownWeight = 0.7;

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

/** Makes a word in lower case ready where it stands. */
export function hardWord(word: string, place: WordPlace, lexicon: Lexicon): HardWord {
  const known = knownOf(word, lexicon);
  const vector = vectorOf(word, lexicon);
  const others = place.around.filter((other) => other.word !== word);
  const direction = (fade: (away: number) => number): Vector | null =>
    meanVector(
      others.map((other) => ({
        vector: vectorOf(other.word, lexicon),
        weight: weigh(other.word, lexicon) * fade(other.away),
      })),
    );
  const around = direction(() => 1);
  const near = direction((away) => 1 / (1 + away / halfway));
  const here = partInPlace(word, place.before, place.after, lexicon);
  const senses = likelySenses(word, near, here, lexicon);
  const single = known.synonyms.filter((one) => !one.includes(' ')).slice(0, synonymsLooked);
  const synonymVectors = vectorsOf(single, lexicon);
  return {
    known,
    vector,
    context: around,
    synonymVectors,
    centre: centreOf(vector, synonymVectors, around),
    parts: partsOf(word, lexicon),
    near,
    here,
    senses,
    meant: meanVector([
      ...senses.map((sense) => ({ vector: sense.vector, weight: sense.chance })),
      { vector, weight: ownWeight },
    ]),
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

function byVectors(word: HardWord, main: readonly string[], meant: Vector | null, lexicon: Lexicon) {
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

/** How a meaning stands towards the senses of the word, those likelier in its place counting more. */
function bySenses(
  word: HardWord,
  phrase: string,
  main: readonly string[],
  meant: Vector | null,
  lexicon: Lexicon,
) {
  const forms = new Set([phrase, ...main].flatMap((one) => [one, ...lexicon.bases(one)]));
  const held = (words: ReadonlySet<string>) => [...forms].some((form) => words.has(form));
  const stems = main.map(stemOf);
  const share = (of: (sense: LikelySense) => boolean) =>
    word.senses.reduce((sum, sense) => sum + (of(sense) ? sense.chance : 0), 0);
  const nearness = word.senses.map((sense) => cosine(sense.vector, meant, none.plain));
  const best = most(nearness, -1);
  const whole = readySenses(phrase, lexicon);
  const own = whole.length > 0 ? whole : readySenses(main.at(-1) ?? '', lexicon);
  const pairs = own.flatMap((mine) =>
    word.senses.map((sense) => sense.chance * cosine(mine.vector, sense.vector, none.sense)),
  );
  return {
    'sense holds': share((sense) => held(sense.words)),
    'sense broader': share((sense) => held(sense.broader)),
    'sense gloss': share((sense) => stems.some((one) => sense.glossStems.has(one))),
    'sense nearness': word.senses.reduce((sum, { chance }, n) => sum + chance * (nearness[n] ?? 0), 0),
    'best sense': best,
    'best sense chance': word.senses[nearness.indexOf(best)]?.chance ?? 0,
    'senses together': cosine(word.meant, meant, none.plain),
    'sense of the meaning': most(own.map(({ vector }) => cosine(vector, word.meant, none.sense))),
    'sense of the meaning near': most(
      own.map(({ vector }) => cosine(vector, word.near, none.sense)),
      -1,
    ),
    'pair of senses': most(pairs),
  };
}

function byPlace(word: HardWord, main: readonly string[], meant: Vector | null, lexicon: Lexicon) {
  const { noun, verb, adj, adv } = word.here;
  const near = cosine(word.near, meant);
  return {
    'near words': near,
    'closer to near words': near - cosine(word.near, word.vector),
    'part in place': mean(
      main.map((one) => dot([noun, verb, adj, adv], partsOf(one, lexicon))),
      0.5,
    ),
    'noun here': noun,
    'verb here': verb,
    'adjective here': adj,
    'hard word frequency': lexicon.zipf(word.known.word),
    'hard word senses': word.senses.length,
    'no vector': main.some((one) => vectorOf(one, lexicon) === null) ? 1 : 0,
  };
}

/** The features of a meaning, given as words in lower case. */
export function meaningFeatures(word: HardWord, words: readonly string[], lexicon: Lexicon): MeaningFeatures {
  const main = carrying(words);
  const phrase = words.join(' ');
  const meant = meanVector(
    main.map((one) => ({ vector: vectorOf(one, lexicon), weight: weigh(one, lexicon) })),
  );
  const zipf = main.length === 0 ? 0 : Math.min(...main.map((one) => lexicon.zipf(one)));
  return {
    ...byWordNet(word, phrase, words, main, lexicon),
    ...byVectors(word, main, meant, lexicon),
    ...bySenses(word, phrase, main, meant, lexicon),
    ...byPlace(word, main, meant, lexicon),
    frequency: zipf,
    rarer: Math.max(0, lexicon.zipf(word.known.word) - zipf),
    'same part of speech': mean(main.map((one) => dot(word.parts, partsOf(one, lexicon)))),
    words: Math.min(4, words.length),
    letters: Math.min(20, phrase.length),
  };
}
