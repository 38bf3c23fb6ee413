import type { GroupId } from '../../shared/ids.js';
import { beginLeg, openSegment } from './advance.js';
import { add, groupAt, timeOf, type Deciding } from './deciding.js';
import { localAt, nextOpen } from './hours.js';
import { timesAfterGap } from './times.js';

/** Resumes a paused practice: what was left of open time is left again, and what should have opened opens. */
export function resume(d: Deciding, id: GroupId): void {
  const { practice } = groupAt(d, id);
  if (practice.phase !== 'paused') return;
  const time = timeOf(d);
  const { was, since } = practice;
  if (was.phase === 'open') {
    const times = timesAfterGap(time, was.segment, since, d.act.at, was.leg.endsAt);
    add(d, { type: 'practice-resumed', group: id, times, opensAt: null, opensOn: null });
    return;
  }
  const opensAt = was.opensAt > d.act.at ? was.opensAt : nextOpen(time, d.act.at);
  add(d, { type: 'practice-resumed', group: id, times: null, opensAt, opensOn: localAt(time, opensAt) });
  openWhatIsDue(d, id);
}

/** Opens what a waiting practice has due now. */
export function openWhatIsDue(d: Deciding, id: GroupId): void {
  const { practice } = groupAt(d, id);
  if (practice.phase !== 'waiting' || practice.opensAt > d.act.at) return;
  if (practice.leg === null) beginLeg(d, id);
  else if (practice.leg.done < practice.leg.segments) openSegment(d, id);
}

/** The first pupil who comes back wakes a practice that paused itself; what staff paused stays paused. */
export function wakeUp(d: Deciding, id: GroupId): void {
  const { practice } = groupAt(d, id);
  if (practice.phase === 'paused' && practice.why === 'nobody active') resume(d, id);
}
