import type { EventOf } from '../../shared/events.js';
import type { AlarmId } from '../../shared/ids.js';
import type { PersonId } from '../../shared/ids.js';
import type { Alarm, ClassState } from './state.js';

/** The class after something about an alarm; the words themselves never enter the state. */
export function evolveAlarms(
  state: ClassState,
  event: EventOf<'alarm-raised' | 'alarm-acknowledged' | 'alarm-escalated'>,
): ClassState {
  switch (event.type) {
    case 'alarm-raised': {
      const { alarm: id, person, at, escalatesAt } = event;
      const alarm = { id, person, at, escalatesAt, acknowledgedBy: null, escalated: false };
      return { ...state, alarms: { ...state.alarms, [id]: alarm } };
    }
    case 'alarm-acknowledged':
      return withAlarm(state, event.alarm, (alarm) => ({
        ...alarm,
        acknowledgedBy: alarm.acknowledgedBy ?? (event.by as PersonId),
      }));
    case 'alarm-escalated':
      return withAlarm(state, event.alarm, (alarm) => ({ ...alarm, escalated: true }));
    default:
      return event satisfies never;
  }
}

function withAlarm(state: ClassState, id: AlarmId, change: (alarm: Alarm) => Alarm): ClassState {
  const alarm = state.alarms[id];
  return alarm ? { ...state, alarms: { ...state.alarms, [id]: change(alarm) } } : state;
}
