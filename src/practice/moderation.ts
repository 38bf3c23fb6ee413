import type { HoldReason } from '../../shared/events.js';
import type { Finding, Judgement } from '../../shared/judgements.js';
import type { Settings } from './state.js';

/** Findings that are held even where everything else is published. */
function isHeldAlways({ kind }: Finding): boolean {
  return kind === 'hurtful' || kind === 'personal';
}

/** Whether a screened draft waits for an adult before it is even judged. */
export function isDoubtful(settings: Settings, hold: boolean, findings: readonly Finding[]): boolean {
  switch (settings.moderation) {
    case 'hold everything':
    case 'hold what is doubtful':
      return hold || findings.some(isHeldAlways);
    case 'publish':
      return findings.some(isHeldAlways);
    default:
      return settings.moderation satisfies never;
  }
}

/** Why a judged draft waits for an adult when it is sent, null where it goes through; `byItself` when nothing was pressed. */
export function holdReason(
  settings: Settings,
  latest: Judgement | null,
  byItself: boolean,
): HoldReason | null {
  const nothingYet = latest?.level === 0;
  switch (settings.moderation) {
    case 'hold everything':
      return nothingYet ? 'nothing yet' : 'everything';
    case 'hold what is doubtful':
    case 'publish':
      return nothingYet && byItself ? 'nothing yet' : null;
    default:
      return settings.moderation satisfies never;
  }
}
