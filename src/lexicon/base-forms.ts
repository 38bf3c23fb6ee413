import { irregularBases } from './irregular-forms.js';
import type { Part, WordNet } from './word-net.js';

/** Endings that WordNet's rules take off, by part of speech, and what they put in their place. */
const endings: readonly (readonly [Part, string, string])[] = [
  ['noun', 's', ''],
  ['noun', 'ses', 's'],
  ['noun', 'xes', 'x'],
  ['noun', 'zes', 'z'],
  ['noun', 'ches', 'ch'],
  ['noun', 'shes', 'sh'],
  ['noun', 'oes', 'o'],
  ['noun', 'ies', 'y'],
  ['noun', 'men', 'man'],
  ['verb', 's', ''],
  ['verb', 'ies', 'y'],
  ['verb', 'es', 'e'],
  ['verb', 'es', ''],
  ['verb', 'ied', 'y'],
  ['verb', 'ed', 'e'],
  ['verb', 'ed', ''],
  ['verb', 'ing', 'e'],
  ['verb', 'ing', ''],
  ['adj', 'ier', 'y'],
  ['adj', 'iest', 'y'],
  ['adj', 'er', ''],
  ['adj', 'est', ''],
  ['adj', 'er', 'e'],
  ['adj', 'est', 'e'],
];

/** A stem whose last consonant was doubled before the ending: "stopp" gives "stop". */
const doubled = /^(.*[aeiouy])([bdfgklmnprtvz])\2$/;

function cut(word: string, ending: string, instead: string): readonly string[] {
  if (!word.endsWith(ending) || word.length - ending.length < 2) return [];
  const stem = word.slice(0, -ending.length);
  const twice = instead === '' && ending.length > 1 ? doubled.exec(stem) : null;
  return twice ? [stem, `${twice[1]}${twice[2]}`] : [stem + instead];
}

/** Base forms of a word that WordNet holds, the likeliest first; the word itself where none is found. "glasses": glass, glasses. */
export function baseForms(word: string, net: WordNet, zipf: (word: string) => number): readonly string[] {
  const plain = word.replace(/'s?$/, '');
  const irregular = irregularBases.get(plain) ?? [];
  const found = new Set<string>();
  for (const [part, ending, instead] of endings) {
    if (ending === 's' && /(ss|us|is)$/.test(plain)) continue;
    for (const base of cut(plain, ending, instead)) if (net.has(base, part)) found.add(base);
  }
  const own =
    net.has(plain, 'noun') || net.has(plain, 'verb') || net.has(plain, 'adj') || net.has(plain, 'adv');
  // "number" is no "more numb": a form that is far more used than its base stands for itself.
  const floor = own ? zipf(plain) - 1 : irregular.length > 0 ? zipf(plain) - 2 : 0;
  const regular = [...found]
    .filter((base) => zipf(base) >= floor)
    .sort((a, b) => zipf(b) - zipf(a) || (a < b ? -1 : 1));
  const bases = [...irregular, ...regular, ...(own ? [plain] : [])];
  return bases.length > 0 ? [...new Set(bases)] : [plain];
}
