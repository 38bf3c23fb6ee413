import type { Analysis } from '../text/analysis.js';
import { sided } from './meaning-polarity.js';
import { stemOf } from '../text/stem.js';

/** From this share of the shared words on that stand under a "not" in one text only, one denies what the other says (ours). */
const flippedFrom = 1 / 3;

/** Whether a text denies what another says, or the other way round: too many of their shared words stand under a "not" in one of them only. */
export function deniesOtherwise(text: Analysis, gist: Analysis): boolean {
  const said = new Map(sided(gist.tokens).map(({ word, negated }) => [stemOf(word), negated]));
  const shared = sided(text.tokens).filter(({ word }) => said.has(stemOf(word)));
  const flipped = shared.filter(({ word, negated }) => said.get(stemOf(word)) !== negated);
  return shared.length > 0 && flipped.length >= flippedFrom * shared.length;
}
