import type { Calendar, Instant, LocalDate, LocalTime } from '../../shared/time.js';
import type { Settings } from './state.js';

/**
 * Open hours: school days between two minutes of the day in the class's zone. Every deadline of the practice is counted
 * in them; only decide may, since nothing else has a calendar.
 */
export interface SchoolTime {
  readonly settings: Settings;
  readonly calendar: Calendar;
}

const minuteLength = 60_000;
/** Days looked ahead for a school day: the longest row of holidays that can be set is far shorter. */
const farthest = 800;

/** A day as it is kept, "2026-11-25". */
export function dayWords({ year, month, day }: LocalDate): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/** The wall clock in the class's zone. */
export function localAt({ settings, calendar }: SchoolTime, at: Instant): LocalTime {
  return calendar.local(at, settings.zone);
}

/** The day in the class's zone that an instant falls on, "2026-11-25". */
export function dayOf(time: SchoolTime, at: Instant): string {
  return dayWords(localAt(time, at));
}

function minuteOf({ settings, calendar }: SchoolTime, date: LocalDate, minute: number): Instant {
  return calendar.instant(date, minute, settings.zone);
}

/** Weekday of a date, 1 Monday .. 7 Sunday (days since a known Thursday). */
function weekdayOf({ year, month, day }: LocalDate): number {
  const days = Math.floor(daysFromCivil(year, month, day));
  return ((((days + 3) % 7) + 7) % 7) + 1;
}

/** Days since 1970-01-01 in the Gregorian calendar. */
function daysFromCivil(year: number, month: number, day: number): number {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return (
    era * 146_097 +
    yearOfEra * 365 +
    Math.floor(yearOfEra / 4) -
    Math.floor(yearOfEra / 100) +
    dayOfYear -
    719_468
  );
}

/** Whether there is school on a date. */
export function isSchoolDay({ settings }: SchoolTime, date: LocalDate): boolean {
  return settings.schoolDays.includes(weekdayOf(date)) && !settings.holidays.includes(dayWords(date));
}

/** Whether an instant lies in open hours. */
export function isOpen(time: SchoolTime, at: Instant): boolean {
  const there = localAt(time, at);
  const { opensMinute, closesMinute } = time.settings;
  return isSchoolDay(time, there) && there.minute >= opensMinute && there.minute < closesMinute;
}

/** The first school day from a date on, that date included. */
function schoolDayFrom(time: SchoolTime, date: LocalDate): LocalDate {
  let day = date;
  for (let step = 0; step < farthest && !isSchoolDay(time, day); step += 1)
    day = time.calendar.plusDays(day, 1);
  return day;
}

/** The date whose open hours an instant lies in or comes before. */
function openDate(time: SchoolTime, at: Instant): LocalDate {
  const there = localAt(time, at);
  const today = there.minute < time.settings.closesMinute;
  return schoolDayFrom(time, today ? there : time.calendar.plusDays(there, 1));
}

/** The instant itself in open hours, else the next opening. */
export function nextOpen(time: SchoolTime, at: Instant): Instant {
  return Math.max(at, minuteOf(time, openDate(time, at), time.settings.opensMinute));
}

/** The opening of the first school day after the day of an instant. */
export function nextMorning(time: SchoolTime, at: Instant): Instant {
  const after = time.calendar.plusDays(localAt(time, at), 1);
  return minuteOf(time, schoolDayFrom(time, after), time.settings.opensMinute);
}

/** The close of a school day: 1 is the day that an instant lies in or comes before, 2 the one after, and so on. */
export function endOfSchoolDay(time: SchoolTime, at: Instant, nth: number): Instant {
  let date = openDate(time, at);
  for (let day = 1; day < nth; day += 1) date = schoolDayFrom(time, time.calendar.plusDays(date, 1));
  return minuteOf(time, date, time.settings.closesMinute);
}

/** The instant after a number of open minutes. */
export function plusOpen(time: SchoolTime, at: Instant, minutes: number): Instant {
  let left = minutes * minuteLength;
  let date = openDate(time, at);
  let from = nextOpen(time, at);
  for (let day = 0; day < farthest; day += 1) {
    const until = minuteOf(time, date, time.settings.closesMinute);
    if (from + left <= until) return from + left;
    left -= Math.max(0, until - from);
    date = schoolDayFrom(time, time.calendar.plusDays(date, 1));
    from = minuteOf(time, date, time.settings.opensMinute);
  }
  return from;
}

/** Open minutes between two instants, 0 where the second isn't later. */
export function openMinutes(time: SchoolTime, from: Instant, to: Instant): number {
  let sum = 0;
  let date = openDate(time, from);
  for (let day = 0; day < farthest; day += 1) {
    const start = Math.max(from, minuteOf(time, date, time.settings.opensMinute));
    if (start >= to) break;
    sum += Math.max(0, Math.min(to, minuteOf(time, date, time.settings.closesMinute)) - start);
    date = schoolDayFrom(time, time.calendar.plusDays(date, 1));
  }
  return sum / minuteLength;
}

/** The first live session after an instant, null for a class without session days. */
export function nextSession(time: SchoolTime, at: Instant): Instant | null {
  if (time.settings.sessions.length === 0) return null;
  let date: LocalDate = localAt(time, at);
  for (let step = 0; step < farthest; step += 1) {
    const today = time.settings.sessions
      .filter(({ weekday }) => weekday === weekdayOf(date) && isSchoolDay(time, date))
      .map(({ minute }) => minuteOf(time, date, minute))
      .filter((instant) => instant > at);
    if (today.length > 0) return Math.min(...today);
    date = time.calendar.plusDays(date, 1);
  }
  return null;
}
