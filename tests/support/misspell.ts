/** A source of chance that gives the same numbers for the same seed, 0..1 (mulberry32). */
export function seededFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

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

/** Misspells a share of the words of four letters and more, as children do. */
export function misspell(text: string, share: number, random: () => number): string {
  return text.replace(/\p{L}{4,}/gu, (word) => {
    if (random() >= share) return word;
    const way = ways[Math.floor(random() * ways.length)] ?? ((same: string) => same);
    return way(word, 1 + Math.floor(random() * (word.length - 2)));
  });
}
