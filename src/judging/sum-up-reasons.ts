import type { Reason, SumUpJudgement } from '../../shared/judgements.js';
import type { Place } from '../../shared/text.js';
import type { SumUpReading } from './sum-up-features.js';
import { copiedLines } from './sum-up-level.js';

/** At most so many copied places are pointed at. */
const placesShown = 2;

/** Runs of words taken from the segment: where they stand in it, and how many words they have. */
function copiedReasons({ copied, text }: SumUpReading): readonly Reason[] {
  const shown: Place[] = [];
  const reasons: Reason[] = [];
  for (const { first, end, source } of copied.runs) {
    const start = text.tokens[first]?.start ?? 0;
    const stop = text.tokens[end - 1]?.end ?? 0;
    if (shown.some((place) => start < place.end && stop > place.start)) continue;
    shown.push({ in: 'text', start, end: stop });
    reasons.push({
      rule: 'words in a row from the segment',
      place: { in: 'segment', ...source },
      figures: { words: end - first },
    });
    if (reasons.length === placesShown) break;
  }
  return reasons;
}

/** Why a sum-up came out as it did: the rule of its level first, then copying, coverage and length. */
export function sumUpReasons(
  rule: string,
  measures: SumUpJudgement['measures'],
  reading: SumUpReading,
): readonly Reason[] {
  const { coverage, copied, gist, words, sentences, copiedFromPeers, onTopic } = measures;
  return [
    { rule, place: null, figures: rule === 'about something else' ? { onTopic } : { words, sentences } },
    ...copiedReasons(reading),
    ...(copied >= copiedLines.some ? [{ rule: 'share copied', place: null, figures: { copied } }] : []),
    { rule: 'key terms held', place: null, figures: { coverage } },
    ...(gist === null ? [] : [{ rule: 'overlap with the gist', place: null, figures: { gist } }]),
    ...(copiedFromPeers >= copiedLines.some
      ? [{ rule: 'like another pupil’s post', place: null, figures: { copiedFromPeers } }]
      : []),
  ];
}
