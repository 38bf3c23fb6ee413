import type { KeyTerm, SeedQuestion } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from './analysis.js';

/** Questions that the bot could seed on a segment, marked as its own: literal ones first, then inferential ones. */
export function seedQuestions(
  segment: Analysis,
  terms: readonly KeyTerm[],
  _lexicon: Lexicon,
): readonly SeedQuestion[] {
  const term = terms[0]?.term;
  if (term === undefined || segment.sentences.length === 0) return [];
  return [
    { text: `What does this part tell you about “${term}”?`, relationship: 'think and search' },
    { text: `Why do you think “${term}” matters in this part?`, relationship: 'author and me' },
  ];
}
