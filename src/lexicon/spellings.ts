import { edits } from '../text/edits.js';
import { soundKeys } from '../text/sounds.js';

/** What finding a spelling needs to know of the word list. */
export interface WordList {
  readonly words: readonly string[];
  zipf(word: string): number;
}

/** At most this many come back. */
const mostGiven = 8;
const mostWeighed = 60;
/** Costs beside one edit, tuned on the open half of fixtures/sets/spellings. */
const soundsOtherwise = 1.1;
const otherFirstLetter = 0.5;
const perZipf = 0.35;
const preferred = 1.5;

/** The letters of a word as bits, so that words with too many other letters are passed over fast. */
function letterBits(word: string): number {
  let bits = 0;
  for (let n = 0; n < word.length; n++) {
    const code = word.charCodeAt(n) - 97;
    if (code >= 0 && code < 26) bits |= 1 << code;
  }
  return bits;
}

function bitCount(bits: number): number {
  let rest = bits - ((bits >>> 1) & 0x55555555);
  rest = (rest & 0x33333333) + ((rest >>> 2) & 0x33333333);
  return Math.imul((rest + (rest >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** How a child hears a word, roughly: consonants that sound alike are one, vowels fall away. "enough" and "enuf": "nf". */
export function roughSound(word: string): string {
  return word
    .replace(/^[kgp]n/, 'n')
    .replace(/^wr/, 'r')
    .replace(/^wh/, 'w')
    .replace(/mb$/, 'm')
    .replace(/tch|ch|ture|tu(?=a)/g, 'j')
    .replace(/t[is](?=o)|sh|c[ei](?=[ao])|ss?i(?=o)/g, 'x')
    .replace(/(?<=[aou])gh$|(?<=u)gh(?=[st])|ph/g, 'f')
    .replace(/gh|(?<=l)k$/g, '')
    .replace(/c(?=[eiy])|z/g, 's')
    .replace(/dge?|g(?=[eiy])/g, 'j')
    .replace(/ck|qu?|c|x/g, 'k')
    .replace(/[aeiouyhw]/g, '')
    .replace(/d/g, 't')
    .replace(/v/g, 'f')
    .replace(/(.)\1+/g, '$1');
}

interface Shelf {
  readonly bits: Int32Array;
  readonly bySound: ReadonlyMap<string, readonly string[]>;
}

function shelve(words: readonly string[]): Shelf {
  const bits = new Int32Array(words.length);
  const bySound = new Map<string, string[]>();
  for (const [n, word] of words.entries()) {
    bits[n] = letterBits(word);
    const sound = roughSound(word);
    const same = bySound.get(sound);
    if (same) same.push(word);
    else bySound.set(sound, [word]);
  }
  return { bits, bySound };
}

function* nearby(wrong: string, words: readonly string[], shelf: Shelf): Generator<string> {
  const most = wrong.length <= 4 ? 1 : 2;
  const own = letterBits(wrong);
  for (let n = 0; n < words.length; n++) {
    if (bitCount(own ^ (shelf.bits[n] ?? 0)) > 2 * most) continue;
    const word = words[n] ?? '';
    if (Math.abs(word.length - wrong.length) <= most && edits(wrong, word) <= most) yield word;
  }
  for (const word of shelf.bySound.get(roughSound(wrong)) ?? []) {
    if (Math.abs(word.length - wrong.length) <= 4 && edits(wrong, word) <= 5) yield word;
  }
}

/** Makes the look-up of known words nearest to a misspelt one; the word list is shelved at the first look. */
export function spellingsOf(
  list: () => WordList,
): (wrong: string, prefer?: ReadonlySet<string>) => readonly string[] {
  let held: { readonly list: WordList; readonly shelf: Shelf } | null = null;
  return (wrong, prefer = new Set()) => {
    if (!/^[a-z'-]{2,40}$/.test(wrong)) return [];
    if (held === null) {
      const words = list();
      held = { list: words, shelf: shelve(words.words) };
    }
    const candidates = new Set(nearby(wrong, held.list.words, held.shelf));
    for (const word of prefer) if (edits(wrong, word) <= Math.max(1, wrong.length / 3)) candidates.add(word);
    candidates.delete(wrong);
    return rank(wrong, [...candidates], held.list, prefer);
  };
}

function rank(wrong: string, candidates: readonly string[], list: WordList, prefer: ReadonlySet<string>) {
  const rough = candidates
    .map((word) => ({
      word,
      cost:
        edits(wrong, word) -
        perZipf * list.zipf(word) -
        (prefer.has(word) ? preferred : 0) +
        (word[0] === wrong[0] ? 0 : otherFirstLetter),
    }))
    .sort((a, b) => a.cost - b.cost)
    .slice(0, mostWeighed);
  const keys = soundKeys(wrong);
  const alike = (word: string) => soundKeys(word).some((key) => keys.includes(key));
  return rough
    .map(({ word, cost }) => ({ word, cost: cost + (alike(word) ? 0 : soundsOtherwise) }))
    .sort((a, b) => a.cost - b.cost || (a.word < b.word ? -1 : 1))
    .slice(0, mostGiven)
    .map(({ word }) => word);
}
