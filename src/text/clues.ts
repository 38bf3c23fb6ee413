import type { Clue } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';

/** Finds the help that a text gives with a word; the place is in the segment, UTF-16. Null where there is none. */
export function findClue(
  word: string,
  segmentText: string,
  offset: number | undefined,
  _lexicon: Lexicon,
): Clue | null {
  const start = offset ?? segmentText.indexOf(word);
  if (start < 0) return null;
  const behind = /^\s*(?:,\s*(?:or|which (?:is|are|means))|\()\s+?([^,.;)]+)/.exec(
    segmentText.slice(start + word.length),
  );
  if (!behind?.[1]) return null;
  const at = start + word.length + behind[0].length - behind[1].length;
  return { kind: 'definition', place: { in: 'segment', start: at, end: at + behind[1].length } };
}
