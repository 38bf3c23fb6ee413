import { edits } from '../text/edits.js';
import { soundKeys } from '../text/sounds.js';
import { keyTerms } from '../text/key-terms.js';
import { stemOf } from '../text/stem.js';
import type { Analysis, Token } from '../text/analysis.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { keyOf } from './copied.js';

/** A source made ready to compare sum-ups with, once; all by keys (stems of content words, small words as they are). */
export interface SumUpSource {
  readonly analysis: Analysis;
  readonly keys: readonly string[];
  /** Keys of each sentence, in order. */
  readonly sentences: readonly (readonly string[])[];
  /** Content stems with the sentences that hold them. */
  readonly holders: ReadonlyMap<string, ReadonlySet<number>>;
  /** Rarity of a content stem among the sentences: log of sentences by sentences that hold it. */
  readonly rarity: ReadonlyMap<string, number>;
  /** Stems of all but joining words, with the tokens they stand at. */
  readonly bearing: ReadonlyMap<string, readonly number[]>;
  /** Where each content stem stands among the content words alone. */
  readonly contentPlaces: ReadonlyMap<string, readonly number[]>;
  /** Stems of the key terms, with weights. */
  readonly keyTerms: ReadonlyMap<string, number>;
  /** The sixty heaviest of `bearing`, with weights: how often a stem is said times how rare it is in the language. */
  readonly heaviest: ReadonlyMap<string, number>;
  /** Three words in a row, as written, in lower case. */
  readonly threes: ReadonlySet<string>;
  /** Stems of words that mean nearly the same as one of the source's words. */
  readonly synonyms: ReadonlySet<string>;
  /** Different content words, for reading a misspelt word as one of them. */
  readonly words: readonly Token[];
}

/** Words that only join others. The stop words of the other judges also hold "good", "use" and the like, in which sum-ups differ. */
export const joiningWords: ReadonlySet<string> = new Set(
  (
    'a an the and or but of in on at to for with as by from is are was were be been being it its they them their he she ' +
    'his her him this that these those i you we my your our not no so if then than there here will would can could ' +
    'should may might must do does did have has had who which what when where how why very just also about into out up ' +
    'down over all any each some such only own same too s t'
  ).split(' '),
);
const heaviestKept = 60;

function bearingOf({ tokens }: Analysis): ReadonlyMap<string, readonly number[]> {
  const bearing = new Map<string, number[]>();
  tokens.forEach(({ lower, stem }, at) => {
    if (joiningWords.has(lower)) return;
    const known = bearing.get(stem);
    if (known) known.push(at);
    else bearing.set(stem, [at]);
  });
  return bearing;
}

function heaviestOf(
  { tokens }: Analysis,
  bearing: ReadonlyMap<string, readonly number[]>,
  lexicon: Lexicon,
): ReadonlyMap<string, number> {
  const weighed = [...bearing].map(([stem, places]): readonly [string, number] => {
    const zipf = lexicon.zipf(tokens[places[0] ?? 0]?.lower ?? '');
    return [stem, Math.log2(1 + places.length) * Math.max(0.5, 7 - zipf)];
  });
  return new Map(weighed.sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).slice(0, heaviestKept));
}

function contentPlaces({ tokens }: Analysis): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  let at = 0;
  for (const { content, stem } of tokens) {
    if (!content) continue;
    const known = places.get(stem);
    if (known) known.push(at);
    else places.set(stem, [at]);
    at++;
  }
  return places;
}

function threesOf(tokens: readonly Token[]): ReadonlySet<string> {
  const threes = new Set<string>();
  for (let n = 0; n + 2 < tokens.length; n++) threes.add(threeAt(tokens, n));
  return threes;
}

/** Three words in a row from a token on, as one key. */
export function threeAt(tokens: readonly Token[], n: number): string {
  return `${tokens[n]?.lower} ${tokens[n + 1]?.lower} ${tokens[n + 2]?.lower}`;
}

function build(analysis: Analysis, lexicon: Lexicon): SumUpSource {
  const keys = analysis.tokens.map(keyOf);
  const sentences: string[][] = analysis.sentences.map(() => []);
  analysis.tokens.forEach(({ sentence }, at) => sentences[sentence]?.push(keys[at] ?? ''));
  const holders = new Map<string, Set<number>>();
  const rarity = new Map<string, number>();
  const words: Token[] = [];
  for (const [stem, places] of analysis.stems) {
    const tokens = places.flatMap((at) => analysis.tokens[at] ?? []);
    holders.set(stem, new Set(tokens.map(({ sentence }) => sentence)));
    const held = holders.get(stem)?.size ?? 1;
    rarity.set(stem, Math.log((1 + sentences.length) / (1 + held)));
    const seen = new Set<string>();
    for (const token of tokens) {
      if (!seen.has(token.lower)) words.push(token);
      seen.add(token.lower);
    }
  }
  const bearing = bearingOf(analysis);
  return {
    analysis,
    keys,
    sentences,
    holders,
    rarity,
    bearing,
    contentPlaces: contentPlaces(analysis),
    heaviest: heaviestOf(analysis, bearing, lexicon),
    keyTerms: new Map(
      keyTerms(analysis, lexicon).map(({ term, weight: one }) => [
        stemOf(term.toLowerCase().replace(/’/g, "'")),
        one,
      ]),
    ),
    threes: threesOf(analysis.tokens),
    synonyms: synonymsOf(words, lexicon),
    words,
  };
}

function synonymsOf(words: readonly Token[], lexicon: Lexicon): ReadonlySet<string> {
  return new Set(
    words
      .filter(({ name }) => !name)
      .flatMap(({ lower }) => lexicon.synonyms(lower))
      .filter((word) => !word.includes(' '))
      .map(stemOf),
  );
}

const built = new WeakMap<Analysis, SumUpSource>();

/** The source of an analysis; made once and kept as long as the analysis is. */
export function sourceOf(analysis: Analysis, lexicon: Lexicon): SumUpSource {
  const known = built.get(analysis);
  if (known) return known;
  const source = build(analysis, lexicon);
  built.set(analysis, source);
  return source;
}

/** Letters that may differ between a word and its misspelling, by length; where both sound alike one more. */
function mostEdits(length: number): number {
  return length < 4 ? 0 : length < 6 ? 1 : length < 9 ? 2 : 3;
}

/** The source's word that a word which no list knows most likely means, or null. */
function meant(word: string, { words }: SumUpSource): Token | null {
  let best: Token | null = null;
  let bestCost = Infinity;
  for (const token of words) {
    const most = mostEdits(Math.max(word.length, token.lower.length)) + 1;
    if (Math.abs(token.lower.length - word.length) > most) continue;
    const count = edits(word, token.lower);
    if (count > most || count >= bestCost) continue;
    if (count === most && !soundKeys(token.lower).some((key) => soundKeys(word).includes(key))) continue;
    best = token;
    bestCost = count;
  }
  return best;
}

/** What each word of a text is compared by: its stem, the stem of the source's word that it misspells, a small word as it is. */
export function keysAgainst(text: Analysis, source: SumUpSource, lexicon: Lexicon): readonly string[] {
  return text.tokens.map((token) => {
    const key = keyOf(token);
    if (!token.content || source.holders.has(key) || token.lower.length < 4 || lexicon.knows(token.lower)) {
      return key;
    }
    return meant(token.lower, source)?.stem ?? key;
  });
}
