import { eachMatch } from './each-match.js';
import type { Folded } from './folding.js';
import { clipped, joinedPairs, spellings } from './spellings.js';

/** One word as the rules read it, and the range of the text that it stands for. */
export interface Heard {
  readonly word: string;
  readonly start: number;
  readonly end: number;
}

/** A stretch of the folded text without white space, with the range of the original. */
export interface Chunk {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly styled: boolean;
}

const leet: Readonly<Record<string, string>> = {
  '0': 'o',
  '1': 'i',
  '3': 'e',
  '4': 'a',
  '5': 's',
  '7': 't',
  '@': 'a',
  $: 's',
  '!': 'i',
};

/** Cuts the folded text at white space. */
export function chunksOf(folded: Folded): readonly Chunk[] {
  return Array.from(eachMatch(/\S+/gu, folded.text), (found) => {
    const to = found.index + found[0].length - 1;
    return {
      text: found[0],
      start: folded.starts[found.index] ?? 0,
      end: folded.ends[to] ?? 0,
      styled: folded.styled.slice(found.index, to + 1).includes(true),
    };
  });
}

/** Words, and "/" where a sentence ends; single letters set apart ("s a d") are one word. */
function rawWords(folded: Folded): Heard[] {
  const pattern = /[\p{L}\p{N}@$]+(?:(?:'|-|!(?=\p{L}))[\p{L}\p{N}@$]+)*|(?<=\s)=(?=\s)|[.!?;:\n]+/gu;
  const heard: Heard[] = [];
  for (const found of eachMatch(pattern, folded.text)) {
    const first = found[0][0] ?? '';
    const isWord = /[\p{L}\p{N}@$]/u.test(first);
    heard.push({
      word: isWord ? found[0] : first === '=' ? 'is' : '/',
      start: folded.starts[found.index] ?? 0,
      end: folded.ends[found.index + found[0].length - 1] ?? 0,
    });
  }
  return joinLetters(heard);
}

function joinLetters(heard: readonly Heard[]): Heard[] {
  const out: Heard[] = [];
  let at = 0;
  while (at < heard.length) {
    let to = at;
    while (to < heard.length && /^\p{L}$/u.test(heard[to]?.word ?? '')) to += 1;
    if (to - at >= 4) {
      const run = heard.slice(at, to);
      out.push({
        word: run.map(({ word }) => word).join(''),
        start: run[0]?.start ?? 0,
        end: run.at(-1)?.end ?? 0,
      });
      at = to;
    } else {
      const one = heard[at];
      if (one) out.push(one);
      at += 1;
    }
  }
  return out;
}

/** Digits that stand for letters inside a word ("k1ll"), but not measures, times, ordinals or words with digits of their own. */
function unleet(word: string): string {
  if (!/\p{L}/u.test(word) || !/[0-9@$!]/u.test(word)) return word;
  if (
    /^\d+(?:km|m|cm|mm|kg|g|am|pm|st|nd|rd|th|d|x|s|mins?|hrs?|h|yrs?|yo|ft|in|ml|l|p|k|th?s)$/u.test(word) ||
    /\d{2,}$/u.test(word)
  )
    return word;
  return [...word].map((char) => leet[char] ?? char).join('');
}

/** Puts a word into the form that the rules are written in: apostrophes gone, common misspellings and chat forms mended, letters drawn out cut to two. */
function mend(raw: string): string {
  const word = raw.replace(/'/gu, '').replace(/(\p{L})\1{2,}/gu, '$1$1');
  const known = spellings.get(word) ?? spellings.get(word.replace(/(\p{L})\1$/u, '$1'));
  if (known !== undefined) return known;
  const plain = unleet(word);
  return spellings.get(plain) ?? plain;
}

/** What the rules read: words mended and joined by single spaces, "/" between sentences, each with its range. */
export interface Spoken {
  /** With a space at both ends. */
  readonly text: string;
  readonly heard: readonly Heard[];
  /** Where each heard word begins in `text`. */
  readonly at: readonly number[];
}

/** Reads a folded text aloud, as it were; `isName` marks nicknames, which are heard as "§". */
export function speak(
  folded: Folded,
  isName: (word: string, index: number, all: readonly Heard[]) => boolean,
): Spoken {
  const raw = rawWords(folded);
  const named = raw.map((one, index) => {
    const bare = one.word.replace(/'s$/u, '').replace(/^@/u, '');
    if (isName(bare, index, raw)) return { ...one, word: /'s$/u.test(one.word) ? '§s' : '§' };
    return { ...one, word: one.word === '/' ? '/' : mend(one.word) };
  });
  return lay(join(named));
}

/** Joins pairs that are one word to the rules ("do not", "no one"), and tells "i will" from being ill. */
function join(words: readonly Heard[]): Heard[] {
  const out: Heard[] = [];
  for (const one of words) {
    const last = out.at(-1);
    const joined = last === undefined ? undefined : joinedPairs.get(`${last.word} ${one.word}`);
    if (last !== undefined && joined !== undefined) {
      out[out.length - 1] = { word: joined, start: last.start, end: one.end };
    } else if (one.word === 'ill' && !clipped.has(last?.word ?? '')) {
      out.push({ ...one, word: 'i will' });
    } else out.push(one);
  }
  return out;
}

function lay(heard: readonly Heard[]): Spoken {
  const at: number[] = [];
  let text = ' ';
  for (const { word } of heard) {
    at.push(text.length);
    text += `${word} `;
  }
  return { text, heard, at };
}

/** The range of the original text that a range of `spoken.text` stands for. */
export function rangeOf(spoken: Spoken, from: number, to: number): { start: number; end: number } {
  const first = spoken.at.findLastIndex((start) => start <= from + 1);
  const last = spoken.at.findLastIndex((start) => start < to);
  const start = spoken.heard[Math.max(first, 0)]?.start ?? 0;
  return { start, end: Math.max(spoken.heard[Math.max(last, 0)]?.end ?? start, start) };
}
