import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from '../text/analysis.js';
import { analyse } from '../text/analyse.js';

/** What every judge is handed beside the post: word knowledge, and close readings that are made once a text. */
export interface JudgingTools {
  readonly lexicon: Lexicon;
  analyse(text: string): Analysis;
}

/** Texts whose reading is kept; a class of thirty on two passages uses some two hundred. */
const kept = 512;

/** The judges' tools over a lexicon; a reading is remembered until `kept` newer texts have been read. */
export function makeTools(lexicon: Lexicon): JudgingTools {
  const readings = new Map<string, Analysis>();
  return {
    lexicon,
    analyse(text) {
      const known = readings.get(text);
      if (known) return known;
      const reading = analyse(text, lexicon);
      const oldest = readings.size >= kept ? readings.keys().next() : undefined;
      if (oldest && !oldest.done) readings.delete(oldest.value);
      readings.set(text, reading);
      return reading;
    },
  };
}
