import type { SettingName } from '../../shared/moves.js';
import type { Settings } from '../practice/state.js';

const dayNames = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

function clock(minute: number): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

function dayName(weekday: number): string {
  return dayNames[weekday - 1] ?? '';
}

function listed(items: readonly string[]): string {
  return items.length === 0 ? 'none' : items.join(', ');
}

/** A setting as a line that reads back into the same setting; "none" where it is empty. */
export function settingValue(settings: Settings, name: SettingName): string {
  switch (name) {
    case 'moderation':
      return settings.moderation;
    case 'sessions':
      return listed(settings.sessions.map(({ weekday, minute }) => `${dayName(weekday)} ${clock(minute)}`));
    case 'school days':
      return listed(settings.schoolDays.map(dayName));
    case 'open hours':
      return `${clock(settings.opensMinute)}-${clock(settings.closesMinute)}`;
    case 'holidays':
      return listed(settings.holidays);
    case 'register':
      return settings.register;
    case 'zone':
      return settings.zone;
    case 'order':
      return settings.order.join(', ');
    case 'alarm text':
      return settings.alarmText ?? 'none';
    case 'alarm number':
      return settings.alarmNumber ?? 'none';
    case 'term ends':
      return settings.termEnds ?? 'none';
    case 'words kept':
      return String(settings.wordsKept);
    case 'longest kept':
      return String(settings.longestKept);
    case 'year ends':
      return settings.yearEnds;
    case 'alarm words kept':
      return String(settings.alarmWordsKept);
    case 'idle minutes':
      return String(settings.idleMinutes);
    case 'alarm minutes':
      return String(settings.alarmMinutes);
    case 'picture secret':
      return settings.pictureSecret ? 'on' : 'off';
    case 'staff passphrase':
      return settings.staffPassphrase ? 'on' : 'off';
    case 'question line':
      return settings.questionLine;
    default:
      return name satisfies never;
  }
}
