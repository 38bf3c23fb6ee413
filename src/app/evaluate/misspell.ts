import { isStopWord } from '../../text/stop-words.js';

/** Ways in which children misspell: by ear, a letter doubled or missing, two swapped, a silent one left out. */
const ways: readonly ((word: string, at: number) => string)[] = [
  (word, at) => word.slice(0, at) + word.slice(at + 1),
  (word, at) => word.slice(0, at) + (word[at] ?? '') + word.slice(at),
  (word, at) => word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2),
  (word) => word.replace(/ph/, 'f').replace(/ck/, 'k').replace(/ight/, 'ite').replace(/tion/, 'shun'),
  (word) => word.replace(/([aeiou])([aeiou])/, '$2$1'),
  (word) => word.replace(/(.)\1/, '$1'),
  (word) =>
    word
      .replace(/c(?=[aou])/, 'k')
      .replace(/ea/, 'ee')
      .replace(/e$/, ''),
];

/** Misspells a share of the content words of four letters and more, as children do. */
export function misspell(text: string, share: number, random: () => number): string {
  return text.replace(/\p{L}{4,}/gu, (word) => {
    if (isStopWord(word.toLowerCase()) || random() >= share) return word;
    const way = ways[Math.floor(random() * ways.length)] ?? ((same: string) => same);
    return way(word, 1 + Math.floor(random() * (word.length - 2)));
  });
}
