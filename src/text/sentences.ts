import type { Sentence, Word } from 'nlcst';
import { ParseEnglish } from 'parse-english';
import type { Range } from '../../shared/text.js';
import { mendSentences } from './mend-sentences.js';

interface Cut {
  readonly sentences: readonly Range[];
  /** Words in the order of the text, none parting from another by a space alone. */
  readonly words: readonly Range[];
}

const parser = new ParseEnglish();

function rangeOf(node: Sentence | Word): Range {
  return { start: node.position?.start.offset ?? 0, end: node.position?.end.offset ?? 0 };
}

/** Cuts a text into sentences and words, by parse-english with fix-ups for dialogue and for children's typing. */
export function cutSentences(text: string): Cut {
  const sentences: Range[] = [];
  const words: Range[] = [];
  for (const paragraph of parser.parse(text).children) {
    if (paragraph.type !== 'ParagraphNode') continue;
    for (const sentence of paragraph.children) {
      if (sentence.type !== 'SentenceNode') continue;
      sentences.push(rangeOf(sentence));
      for (const word of sentence.children) if (word.type === 'WordNode') words.push(rangeOf(word));
    }
  }
  return { sentences: mendSentences(text, sentences), words: words.flatMap((word) => partWord(text, word)) };
}

/** Parts what has no space but isn't one word: "dam—and", "sat.it", "and/or". */
function partWord(text: string, { start, end }: Range): readonly Range[] {
  const parts: Range[] = [];
  const whole = text.slice(start, end);
  const breaks = /[—–/…]+|--+|\.{2,}|(?<=\p{L}{2})[.,!?;:]+(?=\p{L}{2})/gu;
  let from = 0;
  for (const { index, 0: gap } of whole.matchAll(breaks)) {
    if (index > from) parts.push({ start: start + from, end: start + index });
    from = index + gap.length;
  }
  if (whole.length > from) parts.push({ start: start + from, end });
  return parts
    .map((part) => withoutStop(text, part))
    .filter((part) => /[\p{L}\p{N}]/u.test(text.slice(part.start, part.end)));
}

/** The parser leaves the stop on words before a small letter, which a child may well put after a full stop. */
function withoutStop(text: string, { start, end }: Range): Range {
  const word = text.slice(start, end);
  const kept = /\..*\.$|^(?:mr|mrs|ms|dr|st|prof)\.$/i.test(word)
    ? word
    : word.replace(/[^\p{L}\p{N}]+$/u, '');
  return { start, end: start + kept.length };
}
