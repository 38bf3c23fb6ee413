import type { WordSense } from './lexicon.js';
import { parts, type Part, type Sense, type SenseKey, type WordNet } from './word-net.js';

/** More senses than these are rare ones, which no eight-year-old means. */
const sensesLooked = 6;
/** Of these a meaning in its place may be one. */
const sensesSet = 8;
const broaderLooked = 3;

/** Relations between words over all parts of speech; words come back in lower case, without the word itself. */
export interface Relations {
  readonly senseSets: (word: string) => readonly WordSense[];
  readonly synonyms: (word: string) => readonly string[];
  readonly antonyms: (word: string) => readonly string[];
  readonly hypernyms: (word: string) => readonly string[];
  readonly glossWords: (word: string) => readonly string[];
}

type Bases = (word: string) => readonly string[];

function* sensesOf(net: WordNet, bases: Bases, word: string): Generator<[Sense, Part, string]> {
  for (const base of bases(word)) {
    for (const part of parts) {
      for (const key of net.senses(base, part).slice(0, sensesLooked)) yield [net.sense(key), part, base];
    }
  }
}

function withoutWord(found: Iterable<string>, word: string): readonly string[] {
  const words = new Set<string>();
  for (const each of found) words.add(each.toLowerCase());
  words.delete(word);
  return [...words];
}

function* synonymsOf(net: WordNet, bases: Bases, word: string): Generator<string> {
  for (const [sense, part] of sensesOf(net, bases, word)) {
    yield* sense.words;
    if (part !== 'adj') continue;
    for (const { symbol, to } of sense.pointers) if (symbol === '&') yield* net.sense(to).words;
  }
}

/** Antonyms of the word, and for an adjective those of the one that it is similar to (arid: like dry, so not wet). */
function* antonymsOf(net: WordNet, bases: Bases, word: string): Generator<string> {
  for (const [sense, , base] of sensesOf(net, bases, word)) {
    const own = sense.words.findIndex((each) => each.toLowerCase() === base) + 1;
    for (const { symbol, to, from, toWord } of sense.pointers) {
      if (symbol === '!' && (from === own || from === 0)) yield* wordOf(net.sense(to), toWord);
      if (symbol !== '&') continue;
      for (const further of net.sense(to).pointers) {
        if (further.symbol === '!') yield* wordOf(net.sense(further.to), further.toWord);
      }
    }
  }
}

function wordOf(sense: Sense, number: number): readonly string[] {
  return number === 0 ? sense.words : [sense.words[number - 1] ?? ''].filter((word) => word !== '');
}

function* broaderOf(net: WordNet, sense: Sense, depth: number): Generator<string> {
  if (depth === 0) return;
  const up: readonly SenseKey[] = sense.pointers
    .filter(({ symbol }) => symbol === '@' || symbol === '@i')
    .map(({ to }) => to);
  for (const key of up) {
    const broader = net.sense(key);
    yield* broader.words;
    yield* broaderOf(net, broader, depth - 1);
  }
}

function* hypernymsOf(net: WordNet, bases: Bases, word: string): Generator<string> {
  for (const [sense] of sensesOf(net, bases, word)) yield* broaderOf(net, sense, broaderLooked);
}

function glossOf({ gloss }: Sense): readonly string[] {
  const meaning = gloss.replace(/"[^"]*"?/g, ' ').toLowerCase();
  return meaning.match(/[a-z][a-z'-]+/g) ?? [];
}

function* glossWordsOf(net: WordNet, bases: Bases, word: string): Generator<string> {
  for (const [sense] of sensesOf(net, bases, word)) yield* glossOf(sense);
}

function pointed(net: WordNet, { pointers }: Sense, symbols: readonly string[]): readonly string[] {
  return pointers
    .filter(({ symbol }) => symbols.includes(symbol))
    .flatMap(({ to }) => net.sense(to).words.map((word) => word.toLowerCase()));
}

function senseSetsOf(net: WordNet, bases: Bases, word: string): readonly WordSense[] {
  return bases(word).flatMap((base) =>
    parts.flatMap((part) =>
      net
        .senses(base, part)
        .slice(0, sensesSet)
        .map((key, rank): WordSense => {
          const sense = net.sense(key);
          const words = sense.words.map((one) => one.toLowerCase());
          return {
            part,
            rank,
            words: [...words, ...pointed(net, sense, ['&'])],
            broader: pointed(net, sense, ['@', '@i']),
            gloss: glossOf(sense),
          };
        }),
    ),
  );
}

/** Reads relations from WordNet, each word's once asked for. */
export function relationsOf(net: WordNet, bases: Bases): Relations {
  return {
    senseSets: (word) => senseSetsOf(net, bases, word),
    synonyms: (word) => withoutWord(synonymsOf(net, bases, word), word),
    antonyms: (word) => withoutWord(antonymsOf(net, bases, word), word),
    hypernyms: (word) => withoutWord(hypernymsOf(net, bases, word), word),
    glossWords: (word) => withoutWord(glossWordsOf(net, bases, word), word),
  };
}
