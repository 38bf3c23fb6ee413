import { daleChall } from 'dale-chall';
import { spache } from 'spache';
import { baseForms } from './base-forms.js';
import { readFrequencies, type Frequencies } from './frequencies.js';
import type { Lexicon } from './lexicon.js';
import { partSharesOf } from './part-shares.js';
import { relationsOf } from './relations.js';
import { remember } from './remember.js';
import { spellingsOf } from './spellings.js';
import { countSyllables } from './syllables.js';
import { openWordNet, parts } from './word-net.js';

/** Words rarer than this are no likely meaning of a misspelling (about four in the whole of the subtitles). */
const leastZipf = 1.9;
/** Endings of contractions, which the lists write apart: "don't" is "don" and "t" there. */
const contraction = /^([a-z]+)(n't|'(?:s|re|ve|ll|d|m|t))?$/;

function once<A>(make: () => A): () => A {
  let held: { readonly made: A } | null = null;
  return () => (held ??= { made: make() }).made;
}

function spellable(frequencies: Frequencies, familiar: ReadonlySet<string>): readonly string[] {
  const words: string[] = [];
  for (const word of frequencies.words()) {
    const short = word.length < 3 && !familiar.has(word);
    if (/^[a-z]{2,}$/.test(word) && !short && frequencies.zipf(word) >= leastZipf) words.push(word);
  }
  return words;
}

/** Reads the word knowledge from the packages on disk; each part is read when it is first asked for and kept. */
export function readLexicon(): Lexicon {
  const net = openWordNet();
  const frequencies = once(readFrequencies);
  const zipf = (word: string) => frequencies().zipf(word);
  const familiarWords = new Set(daleChall);
  const earlyWords = new Set(spache);
  const bases = remember((word) => baseForms(word, net, zipf));
  const relations = relationsOf(net, bases);
  const inNet = remember((word) => parts.some((part) => net.has(word, part)));
  const listed = (word: string) => zipf(word) > 0 || familiarWords.has(word) || inNet(word);
  const knows = remember((word) => {
    const [, stem = word] = contraction.exec(word) ?? [];
    if (listed(word) || listed(stem)) return true;
    if (word.includes('-')) return word.split('-').every((piece) => piece === '' || listed(piece));
    return bases(word).some(listed);
  });
  const inList = (list: ReadonlySet<string>) => (word: string) =>
    list.has(word) || bases(word).some((base) => list.has(base));
  const spellings = spellingsOf(() => ({ words: spellable(frequencies(), familiarWords), zipf }));
  const plainSpellings = remember((word) => spellings(word), 2_000);
  return {
    zipf,
    knows,
    familiar: remember(inList(familiarWords)),
    familiarEarly: remember(inList(earlyWords)),
    syllables: countSyllables,
    bases,
    partShares: remember((word) => partSharesOf(bases(word)[0] ?? word, net), 5_000),
    senses: remember((word) =>
      parts.reduce((sum, part) => sum + net.senses(bases(word)[0] ?? word, part).length, 0),
    ),
    senseSets: remember(relations.senseSets, 2_000),
    synonyms: remember(relations.synonyms, 2_000),
    antonyms: remember(relations.antonyms, 2_000),
    hypernyms: remember(relations.hypernyms, 2_000),
    glossWords: remember(relations.glossWords, 2_000),
    spellings: (word, prefer) =>
      prefer === undefined || prefer.size === 0 ? plainSpellings(word) : spellings(word, prefer),
  };
}
