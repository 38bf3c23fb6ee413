import type { EventOf } from '../../shared/events.js';
import type { Block } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import type { ClassState } from './state.js';
import {
  choice,
  choices,
  look,
  move,
  nameOf,
  prose,
  replace,
  say,
  speakTo,
  toPerson,
  toStaff,
} from './told.js';

/** Calls the named adults, without the words; and answers the child shortly, with the school's own text. */
export function tellAlarm(
  state: ClassState,
  event: EventOf<'alarm-raised' | 'alarm-acknowledged' | 'alarm-escalated'>,
): readonly Telling[] {
  const speak = speakTo(state);
  const alarm = state.alarms[event.alarm];
  if (!alarm) return [];
  const name = nameOf(state, alarm.person);
  const group = state.people[alarm.person]?.group ?? null;
  const staff = toStaff(group);
  const take = choices(
    choice(speak('take call'), move('acknowledge-alarm', { alarm: alarm.id }), true),
    choice(speak('calls'), look('alarms')),
  );
  const key = `alarm/${alarm.id}`;
  switch (event.type) {
    case 'alarm-raised': {
      const words = speak(event.from === 'post' ? 'call post' : 'call self', { name });
      const how = event.from === 'post' ? [prose(speak('call how'))] : [];
      return [say(key, staff, [prose(words), ...how, ...take]), answer(state, event)];
    }
    case 'alarm-acknowledged': {
      const adult = nameOf(state, alarm.acknowledgedBy);
      return [
        replace(key, staff, [
          prose(speak('call taken', { adult, name })),
          ...choices(choice(speak('calls'), look('alarms'))),
        ]),
      ];
    }
    case 'alarm-escalated':
      return [say(`${key}/again`, staff, [prose(speak('call again', { name })), ...take])];
    default:
      return event satisfies never;
  }
}

/** Thanks, a grown-up, the school's text and number; out of hours that nobody reads now. No question, no promise. */
function answer(state: ClassState, event: EventOf<'alarm-raised'>): Telling {
  const speak = speakTo(state, event.person);
  const { alarmText, alarmNumber } = state.settings;
  const blocks: readonly Block[] = [
    prose(speak('call heard')),
    prose(event.inOpenHours ? speak('call trusted') : speak('call closed')),
    ...(alarmText === null ? [] : [prose(alarmText)]),
    ...(alarmNumber === null ? [] : [prose(speak('call number', { number: alarmNumber }))]),
  ];
  return say(`called/${event.alarm}`, toPerson(event.person), blocks);
}
