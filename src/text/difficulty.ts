import type { Lexicon } from '../lexicon/lexicon.js';
import { difficultyFeatures } from './difficulty-features.js';
import { treeOdds, type Trees } from './trees.js';
import learned from './weights/hard-words.json' with { type: 'json' };

/** The model's answer for features, 0..1: trees, since a plain linear model on the same features is two points behind. */
export function applyDifficulty(features: Readonly<Record<string, number>>, trees: Trees): number {
  return 1 / (1 + Math.exp(-treeOdds(trees, features)));
}

/** The piece of the segment between the stops around an offset. */
function sentenceAround(segment: string, at: number): string {
  const before = segment.slice(0, at);
  const start = Math.max(...['. ', '! ', '? ', '\n'].map((stop) => before.lastIndexOf(stop))) + 1;
  const end = segment.slice(at).search(/[.!?](?:\s|$)|\n/);
  return segment.slice(start, end < 0 ? segment.length : at + end);
}

/** How hard a word is for a reader, 0..1; a compound with a hyphen is as hard as its hardest part. */
export function difficultyOf(
  word: string,
  segment: string,
  offset: number | undefined,
  lexicon: Lexicon,
): number {
  const at = offset ?? Math.max(0, segment.toLowerCase().indexOf(word.toLowerCase()));
  const sentence = sentenceAround(segment, at);
  // A capital at the start of a sentence tells nothing; one inside tells of a name.
  const opens = /^["“‘'(\s]*$/u.test(sentence.slice(0, Math.max(0, sentence.indexOf(word))));
  const written = opens && /^\p{Lu}\p{Ll}/u.test(word) ? word.toLowerCase() : word;
  const whole = lexicon.zipf(written.toLowerCase()) > 0;
  const parts = whole ? [written] : written.split(/[-–]/).filter((part) => part.length > 1);
  return Math.max(
    0,
    ...(parts.length > 0 ? parts : [written]).map((part) =>
      applyDifficulty(difficultyFeatures({ word: part, sentence }, lexicon), learned.trees),
    ),
  );
}
