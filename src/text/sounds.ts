import DoubleMetaphone from 'natural/lib/natural/phonetics/double_metaphone.js';

const metaphone = new DoubleMetaphone();

/** How a word sounds: one or two keys by Double Metaphone; words that share a key sound alike. */
export function soundKeys(word: string): readonly string[] {
  return [...new Set(metaphone.process(word))].filter((key) => key !== '');
}
