import type { PredictJudgement } from '../../shared/judgements.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from '../text/analysis.js';
import type { PredictionReading } from './predict-features.js';
import { heldAgainst, shareThere, type HeldWord } from './predict-words.js';

/** Above the upper line most of what is predicted stands in the next part (lines at the open half's shares of outcomes). */
const lines = { true: 0.76, partly: 0.625 };

/** What of a prediction the next part holds. */
export interface Outcome {
  readonly outcome: PredictJudgement['measures']['outcome'];
  /** Share of the claim that the next part holds, 0..1, null where nothing can be said. */
  readonly share: number | null;
  /** Words of the claim that stand there. */
  readonly met: readonly HeldWord[];
}

/** Compares the claim with the next part; nothing is said of a claim with a "not", a vague one or a retelling, since words can't tell truth. */
export function outcomeOf(
  text: Analysis,
  reading: PredictionReading,
  next: Analysis | null,
  lexicon: Lexicon,
): Outcome {
  const nothing: Outcome = { outcome: null, share: null, met: [] };
  if (!next || reading.negated || reading.retelling || reading.vague || !reading.forward) return nothing;
  const claimed = new Set(
    (reading.claim.length > 0 ? reading.claim : reading.words).map(({ token }) => token),
  );
  const held = heldAgainst(text, next, lexicon).filter(({ token }) => claimed.has(token));
  if (held.length === 0) return nothing;
  const share = shareThere(held);
  const outcome = share >= lines.true ? 'came true' : share >= lines.partly ? 'partly' : 'off track';
  return { outcome, share, met: held.filter(({ there }) => there === 1) };
}
