import type { Block, Message } from '../../shared/messages.js';
import type { Alarm } from '../practice/state.js';
import { answer, nameOf, staff, type Asked } from './asked.js';
import { choice, choices, heading, look, move, prose } from './blocks.js';
import { allowedBlocks } from './allowed-blocks.js';

function stands(asked: Asked, alarm: Alarm): string {
  if (alarm.acknowledgedBy !== null) {
    return staff('alarm seen', { who: nameOf(asked.state, alarm.acknowledgedBy) });
  }
  const when = asked.port.when(alarm.escalatesAt);
  return staff(alarm.escalated ? 'alarm escalated' : 'alarm waits', { when });
}

function oneAlarm(asked: Asked, alarm: Alarm): readonly Block[] {
  const open = alarm.acknowledgedBy === null;
  return [
    heading(staff('alarm of', { who: nameOf(asked.state, alarm.person), when: asked.port.when(alarm.at) })),
    prose(stands(asked, alarm)),
    ...choices(null, [
      ...(open ? [choice(staff('acknowledge'), move('acknowledge-alarm', { alarm: alarm.id }))] : []),
      choice(staff('see words of alarm'), look('alarm-words', { alarm: alarm.id })),
    ]),
  ];
}

/** Alarms, the open ones first; their words are shown to the safeguarding lead alone, each look on record. */
export function alarms(asked: Asked): readonly Message[] {
  const all = Object.values(asked.state.alarms).toSorted(
    (a, b) => Number(a.acknowledgedBy !== null) - Number(b.acknowledgedBy !== null) || b.at - a.at,
  );
  const open = all.filter(({ acknowledgedBy }) => acknowledgedBy === null).length;
  const { alarmNumber } = asked.state.settings;
  return [
    answer(asked, staff('alarms title', { many: open }), [
      heading(staff('alarms title', { many: open })),
      prose(staff('alarm caution')),
      ...(alarmNumber === null ? [] : [prose(staff('alarm number', { number: alarmNumber }))]),
      ...allowedBlocks(
        asked.by.role,
        all.flatMap((alarm) => oneAlarm(asked, alarm)),
      ),
    ]),
  ];
}
