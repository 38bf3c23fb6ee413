import type { QuestionView } from './question-view.js';

/** Longest run of a question's words that stands in the segment in the same order, by stems; with a content word in it. */
export function longestRun({ wording, segment }: QuestionView): {
  readonly words: number;
  readonly content: number;
} {
  const { words } = wording;
  const { roots } = segment;
  let best = { words: 0, content: 0 };
  words.forEach((word, i) => {
    for (const at of segment.stems.get(word.stem) ?? []) {
      let length = 0;
      let content = 0;
      while (i + length < words.length && roots[at + length] === words[i + length]!.stem) {
        if (words[i + length]!.content) content += 1;
        length += 1;
      }
      if (content > 0 && length > best.words) best = { words: length, content };
    }
  });
  return best;
}

/** Share of a question's pairs of neighbouring words that are neighbours in the segment too, 0..1. */
export function pairShare({ wording, segment }: QuestionView): number {
  const { words } = wording;
  if (words.length < 2) return 0;
  const pairs = words.slice(1).filter((word, i) => {
    const before = segment.stems.get(words[i]!.stem) ?? [];
    return before.some((at) => segment.roots[at + 1] === word.stem);
  });
  return pairs.length / (words.length - 1);
}
