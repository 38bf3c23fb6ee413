import type { Block, Message } from '../../shared/messages.js';
import type { Alarm, Trial } from '../practice/state.js';
import { unbroken } from '../practice/told.js';
import { answer, nameOf, staff, type Asked } from './asked.js';
import { choice, choices, heading, look, move, prose } from './blocks.js';
import { maySeeWords } from './alarm-words.js';
import { allowedBlocks } from './allowed-blocks.js';

/** As many rehearsals are listed, the newest. */
const trialsShown = 3;

function stands(asked: Asked, alarm: Alarm | Trial): string {
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
      ...(maySeeWords(asked.by.role, alarm)
        ? [choice(staff('see words of alarm'), look('alarm-words', { alarm: alarm.id }))]
        : []),
    ]),
  ];
}

function byTime(a: Alarm | Trial, b: Alarm | Trial): number {
  return Number(a.acknowledgedBy !== null) - Number(b.acknowledgedBy !== null) || b.at - a.at;
}

/** Rehearsals stand apart, below, and are counted nowhere. */
function trialBlocks(asked: Asked): readonly Block[] {
  const trials = Object.values(asked.state.trials).toSorted(byTime).slice(0, trialsShown);
  if (trials.length === 0) return [];
  return [
    heading(staff('trials title')),
    ...trials.flatMap((trial) => [
      heading(staff('trial of', { who: nameOf(asked.state, trial.by), when: asked.port.when(trial.at) })),
      prose(staff('trial what')),
      prose(stands(asked, trial)),
      ...(trial.acknowledgedBy === null
        ? choices(null, [choice(staff('acknowledge'), move('acknowledge-alarm', { alarm: trial.id }))])
        : []),
    ]),
  ];
}

/** Alarms, the open ones first; their words are shown to the named adults alone, each look on record. */
export function alarms(asked: Asked): readonly Message[] {
  const all = Object.values(asked.state.alarms).toSorted(byTime);
  const open = all.filter(({ acknowledgedBy }) => acknowledgedBy === null).length;
  const { alarmNumber } = asked.state.settings;
  return [
    answer(asked, staff('alarms title', { many: open }), [
      heading(staff('alarms title', { many: open })),
      prose(staff('alarm caution')),
      ...(alarmNumber === null ? [] : [prose(staff('alarm number', { number: unbroken(alarmNumber) }))]),
      ...allowedBlocks(asked.by.role, [
        ...all.flatMap((alarm) => oneAlarm(asked, alarm)),
        ...trialBlocks(asked),
      ]),
    ]),
  ];
}
