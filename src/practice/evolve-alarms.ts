import type { EventOf } from '../../shared/events.js';
import type { AlarmId, PersonId } from '../../shared/ids.js';
import type { ClassState } from './state.js';

type AlarmEvent = EventOf<
  | 'alarm-raised'
  | 'alarm-acknowledged'
  | 'alarm-escalated'
  | 'alarm-tried'
  | 'trial-acknowledged'
  | 'trial-escalated'
>;

/** The class after something about an alarm or a rehearsal of one; the words themselves never enter the state. */
export function evolveAlarms(state: ClassState, event: AlarmEvent): ClassState {
  switch (event.type) {
    case 'alarm-raised': {
      const { alarm: id, person, at, escalatesAt } = event;
      const alarm = { id, person, at, escalatesAt, acknowledgedBy: null, escalated: false };
      return { ...state, alarms: { ...state.alarms, [id]: alarm } };
    }
    case 'alarm-tried': {
      const { alarm: id, at, escalatesAt } = event;
      const by = event.by as PersonId;
      const trial = { id, by, at, escalatesAt, acknowledgedBy: null, escalated: false };
      return { ...state, trials: { ...state.trials, [id]: trial } };
    }
    case 'alarm-acknowledged':
      return { ...state, alarms: taken(state.alarms, event.alarm, event.by as PersonId) };
    case 'trial-acknowledged':
      return { ...state, trials: taken(state.trials, event.alarm, event.by as PersonId) };
    case 'alarm-escalated':
      return { ...state, alarms: changed(state.alarms, event.alarm, { escalated: true }) };
    case 'trial-escalated':
      return { ...state, trials: changed(state.trials, event.alarm, { escalated: true }) };
    default:
      return event satisfies never;
  }
}

interface Call {
  readonly acknowledgedBy: PersonId | null;
  readonly escalated: boolean;
}
type Calls<C extends Call> = Readonly<Record<AlarmId, C>>;

function changed<C extends Call>(calls: Calls<C>, id: AlarmId, change: Partial<Call>): Calls<C> {
  const call = calls[id];
  return call ? { ...calls, [id]: { ...call, ...change } } : calls;
}

/** Who takes it first has it. */
function taken<C extends Call>(calls: Calls<C>, id: AlarmId, by: PersonId): Calls<C> {
  return calls[id]?.acknowledgedBy === null ? changed(calls, id, { acknowledgedBy: by }) : calls;
}
