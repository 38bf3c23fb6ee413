import type { EventOf } from '../../shared/events.js';
import type { AlarmId, GroupId } from '../../shared/ids.js';
import type { Audience, Block } from '../../shared/messages.js';
import type { Role } from '../../shared/roles.js';
import type { Telling } from '../../shared/tellings.js';
import { peopleOfRole } from './lookup.js';
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
  unbroken,
  type Speak,
} from './told.js';

/*
 * Who is called: at once the staff of the class and the safeguarding lead, each in every place they have; when nobody has
 * taken the call in the time that is set, all of them again and the deputy. Who takes it is told everywhere.
 */

interface Called {
  readonly key: string;
  readonly audience: Audience;
}

/** Where a call is said, under a key of its own each: the staff's places, and every named adult of some roles. */
function calledIn(
  state: ClassState,
  key: string,
  group: GroupId | null,
  roles: readonly Role[],
): readonly Called[] {
  const named = roles.flatMap((role) => peopleOfRole(state, role));
  return [
    { key, audience: toStaff(group) },
    ...named.map(({ id }) => ({ key: `${key}/${id}`, audience: toPerson(id) })),
  ];
}

const first: readonly Role[] = ['safeguarding lead'];
const then: readonly Role[] = ['safeguarding lead', 'safeguarding deputy'];

function sayAll(called: readonly Called[], blocks: readonly Block[]): readonly Telling[] {
  return called.map(({ key, audience }) => say(key, audience, blocks));
}

/** Everywhere the call was said it now says who has it. */
function takenIn(
  state: ClassState,
  key: string,
  group: GroupId | null,
  escalated: boolean,
  words: string,
  speak: Speak,
): readonly Telling[] {
  const called = [
    ...calledIn(state, key, group, first),
    ...(escalated ? calledIn(state, `${key}/again`, group, then) : []),
  ];
  const blocks = [prose(words), ...choices(choice(speak('calls'), look('alarms')))];
  return called.map(({ key: one, audience }) => replace(one, audience, blocks));
}

function takeIt(speak: Speak, alarm: AlarmId): readonly Block[] {
  return choices(
    choice(speak('take call'), move('acknowledge-alarm', { alarm }), true),
    choice(speak('calls'), look('alarms')),
  );
}

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
  const key = `alarm/${alarm.id}`;
  switch (event.type) {
    case 'alarm-raised': {
      const words = speak(event.from === 'post' ? 'call post' : 'call self', { name });
      const how = event.from === 'post' ? [prose(speak('call how'))] : [];
      const blocks = [prose(words), ...how, ...takeIt(speak, alarm.id)];
      return [...sayAll(calledIn(state, key, group, first), blocks), answer(state, event)];
    }
    case 'alarm-acknowledged': {
      const words = speak('call taken', { adult: nameOf(state, alarm.acknowledgedBy), name });
      return takenIn(state, key, group, alarm.escalated, words, speak);
    }
    case 'alarm-escalated':
      return sayAll(calledIn(state, `${key}/again`, group, then), [
        prose(speak('call again', { name })),
        ...takeIt(speak, alarm.id),
      ]);
    default:
      return event satisfies never;
  }
}

/** A rehearsal goes the same way; every sentence of it says what it is. */
export function tellTrial(
  state: ClassState,
  event: EventOf<'alarm-tried' | 'trial-acknowledged' | 'trial-escalated'>,
): readonly Telling[] {
  const speak = speakTo(state);
  const trial = state.trials[event.alarm];
  if (!trial) return [];
  const key = `trial/${trial.id}`;
  switch (event.type) {
    case 'alarm-tried': {
      const blocks = [
        prose(speak('trial call', { adult: nameOf(state, trial.by) })),
        ...takeIt(speak, trial.id),
      ];
      return [...sayAll(calledIn(state, key, null, first), blocks), begun(state, trial.id, speak)];
    }
    case 'trial-acknowledged': {
      const words = speak('trial taken', { adult: nameOf(state, trial.acknowledgedBy) });
      return takenIn(state, key, null, trial.escalated, words, speak);
    }
    case 'trial-escalated':
      return sayAll(calledIn(state, `${key}/again`, null, then), [
        prose(speak('trial again')),
        ...takeIt(speak, trial.id),
      ]);
    default:
      return event satisfies never;
  }
}

/** Tells who began a rehearsal whom it called, and what comes next. */
function begun(state: ClassState, id: AlarmId, speak: Speak): Telling {
  const names = (role: Role): string =>
    peopleOfRole(state, role)
      .map((person) => nameOf(state, person.id))
      .join(', ');
  const deputy = names('safeguarding deputy');
  const minutes = state.settings.alarmMinutes;
  return say(`trial/${id}/begun`, toPerson(state.trials[id]?.by ?? ('' as never)), [
    prose(speak('trial begun', { lead: names('safeguarding lead') })),
    prose(deputy === '' ? speak('trial no deputy') : speak('trial next', { minutes, deputy })),
    ...choices(choice(speak('calls'), look('alarms'))),
  ]);
}

/** Thanks, a grown-up, the school's text and number; out of hours that nobody reads now. No question, no promise. */
function answer(state: ClassState, event: EventOf<'alarm-raised'>): Telling {
  const speak = speakTo(state, event.person);
  const { alarmText, alarmNumber } = state.settings;
  const number = alarmNumber === null ? null : unbroken(alarmNumber);
  const text = alarmText === null ? [] : [prose(alarmText)];
  const inHours: readonly Block[] = [
    prose(speak('call heard')),
    prose(speak('call trusted')),
    ...text,
    ...(number === null ? [] : [prose(speak('call number', { number }))]),
  ];
  const outOfHours: readonly Block[] = [
    prose(speak('call sent')),
    prose(number === null ? speak('call closed') : speak('call closed number', { number })),
    ...text,
  ];
  return say(`called/${event.alarm}`, toPerson(event.person), event.inOpenHours ? inHours : outOfHours);
}
