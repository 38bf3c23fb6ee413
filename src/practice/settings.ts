import { Fault } from '../../shared/fault.js';
import { moderations, questionLines, type SettingName } from '../../shared/moves.js';
import { registers, strategies, type Register, type Strategy } from '../../shared/strategies.js';
import type { Calendar } from '../../shared/time.js';
import type { SessionTime, Settings } from './state.js';

const dayNames = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
const longestText = 400;

/** How a setting that is either is written. */
export const switches = ['off', 'on'] as const;

/** What a new class starts with: an adult looks at what is doubtful before anybody else does. */
export const settingDefaults: Settings = {
  moderation: 'hold what is doubtful',
  sessions: [],
  schoolDays: [1, 2, 3, 4, 5],
  opensMinute: 7 * 60 + 30,
  closesMinute: 19 * 60,
  holidays: [],
  register: '8-10',
  zone: 'UTC',
  order: strategies,
  alarmText: null,
  alarmNumber: null,
  termEnds: null,
  wordsKept: 14,
  longestKept: 120,
  yearEnds: '07-31',
  alarmWordsKept: 1,
  idleMinutes: 30,
  alarmMinutes: 30,
  pictureSecret: false,
  staffPassphrase: false,
  questionLine: 'follow the tutor',
};

function unfit(setting: SettingName, expected: string, example: string): Fault {
  return new Fault(
    'bad input',
    `Cannot set ${setting}, expected ${expected}`,
    `Write it like this: ${example}`,
  );
}

function parts(value: string): readonly string[] {
  return value
    .split(/[,;]/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

function isNone(value: string): boolean {
  return ['none', '-'].includes(value.toLowerCase());
}

/** "14:00" as a minute of the day, null where it is none. */
function minuteOf(text: string): number | null {
  const found = /^(\d{1,2}):(\d{2})$/u.exec(text.trim());
  if (!found) return null;
  const minute = Number(found[1]) * 60 + Number(found[2]);
  return Number(found[2]) < 60 && minute < 24 * 60 ? minute : null;
}

/** "Tue" or "Tuesday" as 1..7, null where it is none. */
function weekdayOf(text: string): number | null {
  const word = text.trim().toLowerCase();
  const at = word.length < 3 ? -1 : dayNames.findIndex((name) => word.startsWith(name.toLowerCase()));
  return at < 0 ? null : at + 1;
}

function sessionsOf(value: string): readonly SessionTime[] {
  if (isNone(value)) return [];
  const example = 'Tue 14:00, Thu 14:00 (or "none")';
  return parts(value).map((part) => {
    const [day = '', time = '', ...rest] = part.split(/\s+/u);
    const weekday = weekdayOf(day);
    const minute = minuteOf(time);
    if (weekday === null || minute === null || rest.length > 0)
      throw unfit('sessions', 'days with a time', example);
    return { weekday, minute };
  });
}

function daysOf(value: string): readonly number[] {
  const example = 'Mon-Fri (or Mon, Tue, Thu)';
  const days = parts(value).flatMap((part) => {
    const [from, to] = part.split('-').map(weekdayOf);
    const last = to === undefined ? from : to;
    if (from == null || last == null || last < from)
      throw unfit('school days', 'days of the week in order', example);
    return Array.from({ length: last - from + 1 }, (_, step) => from + step);
  });
  if (days.length === 0) throw unfit('school days', 'at least one day', example);
  return [...new Set(days)].toSorted((a, b) => a - b);
}

function hoursOf(value: string): Pick<Settings, 'opensMinute' | 'closesMinute'> {
  const [from, to] = value.split('-').map(minuteOf);
  if (from == null || to == null || to - from < 60) {
    throw unfit('open hours', 'two times of one day, at least an hour apart', '07:30-19:00');
  }
  return { opensMinute: from, closesMinute: to };
}

function dateOf(setting: SettingName, text: string, calendar: Calendar): string {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(text);
  const [year, month, day] = [Number(found?.[1]), Number(found?.[2]), Number(found?.[3])];
  const fits = found && month >= 1 && month <= 12 && day >= 1 && day <= 31;
  const there = fits ? calendar.plusDays({ year, month, day: 1 }, day - 1) : null;
  if (there?.month !== month) throw unfit(setting, 'dates as year-month-day', '2026-12-24');
  return text;
}

function orderOf(value: string): readonly Strategy[] {
  const order = parts(value).map((part) => strategies.find((strategy) => strategy === part.toLowerCase()));
  const known = order.filter((strategy) => strategy !== undefined);
  if (new Set(known).size !== strategies.length || order.length !== strategies.length) {
    throw unfit('order', 'each of the four strategies once', strategies.join(', '));
  }
  return known;
}

function lineOf(setting: SettingName, value: string): string | null {
  if (isNone(value)) return null;
  if (value.trim() === '' || value.length > longestText) {
    throw unfit(setting, `words, at most ${longestText} characters`, 'Please talk to Ms Heron in room 4.');
  }
  return value.trim();
}

function pick<W extends string>(setting: SettingName, words: readonly W[], value: string): W {
  const found = words.find((word) => word === value.trim().toLowerCase());
  if (found === undefined) throw unfit(setting, `one of: ${words.join(', ')}`, words[0] ?? '');
  return found;
}

function numberOf(setting: SettingName, value: string, from: number, to: number, example: string): number {
  const number = /^\d{1,3}$/u.test(value.trim()) ? Number(value) : -1;
  if (number < from || number > to) throw unfit(setting, `a number from ${from} to ${to}`, example);
  return number;
}

function minutesOf(setting: SettingName, value: string): number {
  return numberOf(setting, value, 5, 240, '30');
}

/** A day of any year, "07-31"; the 29th of February is none, since it isn't in every year. */
function yearDayOf(value: string): string {
  const found = /^(\d{2})-(\d{2})$/u.exec(value.trim());
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][Number(found?.[1]) - 1] ?? 0;
  const day = Number(found?.[2]);
  if (!found || day < 1 || day > days) throw unfit('year ends', 'a month and a day', '07-31');
  return value.trim();
}

function isOn(setting: SettingName, value: string): boolean {
  return pick(setting, switches, value) === 'on';
}

/** The settings with one of them read from a line; throws `Fault` with what was expected. */
export function withSetting(
  settings: Settings,
  setting: SettingName,
  value: string,
  calendar: Calendar,
): Settings {
  if (setting === 'zone' && !calendar.knows(value.trim())) {
    throw unfit('zone', 'the name of a time zone', 'Europe/Paris');
  }
  const dates = (words: string): readonly string[] =>
    isNone(words) ? [] : parts(words).map((word) => dateOf(setting, word, calendar));
  if (setting === 'holidays') return { ...settings, holidays: dates(value) };
  if (setting === 'term ends') return { ...settings, termEnds: dates(value)[0] ?? null };
  return readSetting(settings, setting, value);
}

/** Takes a value that was checked when it was set; needs no calendar. Throws `Fault` where it can't be read. */
export function readSetting(settings: Settings, setting: SettingName, value: string): Settings {
  switch (setting) {
    case 'moderation':
      return { ...settings, moderation: pick(setting, moderations, value) };
    case 'sessions':
      return { ...settings, sessions: sessionsOf(value) };
    case 'school days':
      return { ...settings, schoolDays: daysOf(value) };
    case 'open hours':
      return { ...settings, ...hoursOf(value) };
    case 'holidays':
      return { ...settings, holidays: isNone(value) ? [] : parts(value) };
    case 'register':
      return { ...settings, register: pick<Register>(setting, registers, value) };
    case 'zone':
      return { ...settings, zone: value.trim() };
    case 'order':
      return { ...settings, order: orderOf(value) };
    case 'alarm text':
      return { ...settings, alarmText: lineOf(setting, value) };
    case 'alarm number':
      return { ...settings, alarmNumber: lineOf(setting, value) };
    case 'term ends':
      return { ...settings, termEnds: isNone(value) ? null : (parts(value)[0] ?? null) };
    case 'words kept':
      return { ...settings, wordsKept: numberOf(setting, value, 0, 60, '14') };
    case 'longest kept':
      return { ...settings, longestKept: numberOf(setting, value, 14, 365, '120') };
    case 'year ends':
      return { ...settings, yearEnds: yearDayOf(value) };
    case 'alarm words kept':
      return { ...settings, alarmWordsKept: numberOf(setting, value, 0, 10, '1') };
    case 'idle minutes':
      return { ...settings, idleMinutes: minutesOf(setting, value) };
    case 'alarm minutes':
      return { ...settings, alarmMinutes: minutesOf(setting, value) };
    case 'picture secret':
      return { ...settings, pictureSecret: isOn(setting, value) };
    case 'staff passphrase':
      return { ...settings, staffPassphrase: isOn(setting, value) };
    case 'question line':
      return { ...settings, questionLine: pick(setting, questionLines, value) };
    default:
      return setting satisfies never;
  }
}
