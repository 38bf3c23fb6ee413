import type { Judges } from '../../shared/judgements.js';
import { makeJudge } from '../judging/judge.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { readLexicon } from '../lexicon/read-lexicon.js';
import { makeScreen } from '../safety/screen.js';
import { readPassage } from '../text/read-passage.js';

/** Builds the judges once from the lexicon. */
export function makeJudges(lexicon: Lexicon = readLexicon()): Judges {
  return {
    screen: makeScreen((word) => lexicon.knows(word)),
    judge: makeJudge(lexicon),
    read: (text, options) => readPassage(text, options, lexicon),
  };
}
