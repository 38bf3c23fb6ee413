import type { AlarmId } from '../../shared/ids.js';
import { add, mint, refuse, type Deciding } from './deciding.js';
import { peopleOfRole } from './lookup.js';

/** Takes a call, be it an alarm or a rehearsal of one; whoever comes second changes nothing. */
export function acknowledge(d: Deciding, id: AlarmId): void {
  const { [id]: alarm } = d.state.alarms;
  const { [id]: trial } = d.state.trials;
  const call = alarm ?? trial;
  if (!call)
    return refuse('not found', 'Cannot take that, expected an alarm of this class', 'Look at the list.');
  if (call.acknowledgedBy === null)
    add(d, { type: alarm ? 'alarm-acknowledged' : 'trial-acknowledged', alarm: id });
}

/** Begins a rehearsal: the named adults are called as by an alarm, and told that it is none. */
export function tryAlarm(d: Deciding): void {
  if (peopleOfRole(d.state, 'safeguarding lead').length === 0) {
    refuse(
      'wrong time',
      'Cannot try the alarm, expected a safeguarding lead on the roster, got none',
      'Add one with /roster add nickname:… role:safeguarding lead, and a deputy.',
    );
  }
  const open = Object.values(d.state.trials).some(({ acknowledgedBy }) => acknowledgedBy === null);
  if (open) {
    refuse(
      'in use',
      'Cannot try the alarm, expected no rehearsal to run, got one that nobody has taken yet',
      'Take it under Alarms first.',
    );
  }
  add(d, {
    type: 'alarm-tried',
    alarm: mint<AlarmId>(d, 'a'),
    escalatesAt: d.act.at + d.state.settings.alarmMinutes * 60_000,
  });
}

/** Calls that nobody took in time go on to the deputy, at any hour. */
export function passAlarms(d: Deciding): void {
  const isDue = (call: { acknowledgedBy: unknown; escalated: boolean; escalatesAt: number }): boolean =>
    call.acknowledgedBy === null && !call.escalated && call.escalatesAt <= d.act.at;
  for (const alarm of Object.values(d.state.alarms))
    if (isDue(alarm)) add(d, { type: 'alarm-escalated', alarm: alarm.id });
  for (const trial of Object.values(d.state.trials))
    if (isDue(trial)) add(d, { type: 'trial-escalated', alarm: trial.id });
}
