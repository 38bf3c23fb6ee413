import type { Range } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { stemOf } from './stem.js';
import { isStopWord } from './stop-words.js';
import { namesThing } from './word-sense.js';

/** What a stretch must reach by its place and by words of the meaning in it. Ours, tuned on the open half of fixtures/sets/clues. */
const leastScore = 0.7;
/** In a text longer than this, neighbours are less often about the word, so words of its meaning must be there. */
const fewSentences = 4;
const leastTieInLong = 0.6;
const perTie = 0.3;
const leastContent = 2;

/** Stems of what a word means, with how much each tells: rare ones more. */
function meaningOf(word: string, lexicon: Lexicon): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const add = (words: readonly string[], weight: number) => {
    for (const each of words.flatMap((phrase) => phrase.split(' '))) {
      if (isStopWord(each) || each === word) continue;
      const stem = stemOf(each);
      const rarity = Math.min(1.5, Math.max(0, 6.2 - lexicon.zipf(each)) / 2);
      weights.set(stem, Math.max(weights.get(stem) ?? 0, weight * rarity));
    }
  };
  add(lexicon.glossWords(word), 1);
  add(lexicon.synonyms(word), 1.2);
  add(
    lexicon
      .synonyms(word)
      .slice(0, 8)
      .flatMap((synonym) => lexicon.glossWords(synonym)),
    0.5,
  );
  add(lexicon.antonyms(word), 1);
  return weights;
}

interface Clause extends Range {
  /** How likely help stands there by its place alone, 0..1. */
  readonly likely: number;
}

/** Sentences longer than this hold their own help or none. */
const shortSentence = 14;
const refersBack =
  /^["“]?(?:he|she|it|they|his|her|its|their|this|the next|by \p{L}+|then|at last|finally)\b/iu;

/** Where help with a word without a signal stands, by place: behind it in its sentence, in the next sentence, in the one before. Ours, tuned on the open half of fixtures/sets/clues. */
function placesAround(analysis: Analysis, at: Range, sentence: number): readonly Clause[] {
  const { text, sentences, tokens } = analysis;
  const own = sentences[sentence];
  if (!own) return [];
  const places: Clause[] = [];
  const behind = /[,;:—–] (?!(?:too|please|of course|then)\b)| and (?=\p{L}+(?:ed|ly)?\b)/u.exec(
    text.slice(at.end, own.end),
  );
  if (behind) {
    places.push({
      start: at.end + behind.index + behind[0].length,
      end: own.end,
      likely: behind[0].startsWith(' ') ? 0.75 : 0.9,
    });
  }
  const words = tokens.filter((token) => token.sentence === sentence).length;
  const next = sentences[sentence + 1];
  const near = (from: Range, to: Range) => !text.slice(from.end, to.start).includes('\n');
  if (next && near(own, next)) places.push({ ...next, likely: words <= shortSentence ? 0.8 : 0.4 });
  const last = sentences[sentence - 1];
  if (last && near(last, own)) {
    const refers = refersBack.test(text.slice(own.start, own.end));
    places.push({ ...last, likely: refers ? 0.85 : 0.3 });
  }
  return places;
}

/** How much of a meaning a stretch holds. */
function tie(content: readonly Token[], meaning: ReadonlyMap<string, number>): number {
  return [...new Set(content.map(({ stem }) => stem))].reduce(
    (sum, stem) => sum + (meaning.get(stem) ?? 0),
    0,
  );
}

/** The stretch near a word from which its meaning can be worked out though no signal points to it; null where none is likely. */
export function inferredClue(
  word: string,
  analysis: Analysis,
  at: Range,
  sentence: number,
  lexicon: Lexicon,
): Range | null {
  if (namesThing(word, lexicon)) return null;
  const meaning = meaningOf(lexicon.bases(word)[0] ?? word, lexicon);
  let best: { readonly place: Range; readonly score: number } | null = null;
  for (const { start, end, likely } of placesAround(analysis, at, sentence)) {
    const content = analysis.tokens.filter(
      (token) => token.content && token.start >= start && token.end <= end,
    );
    if (content.length < leastContent) continue;
    const tied = tie(content, meaning);
    if (analysis.sentences.length > fewSentences && tied < leastTieInLong) continue;
    const score = likely + perTie * tied;
    if (score >= leastScore && (!best || score > best.score)) best = { place: { start, end }, score };
  }
  return best?.place ?? null;
}
