import { Temporal } from 'temporal-polyfill';
import type { Calendar, LocalDate, LocalTime } from '../../shared/time.js';

function plain(date: LocalDate): Temporal.PlainDate {
  return Temporal.PlainDate.from({ year: date.year, month: date.month, day: date.day });
}

/** The calendar of all IANA zones, by Temporal; daylight-saving gaps and doubles as shared/time.ts says. */
export const calendar: Calendar = {
  local(at, zone): LocalTime {
    const there = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone);
    return {
      year: there.year,
      month: there.month,
      day: there.day,
      weekday: there.dayOfWeek,
      minute: there.hour * 60 + there.minute,
    };
  },
  instant(date, minute, zone) {
    const wall = plain(date).toPlainDateTime({ hour: Math.floor(minute / 60) % 24, minute: minute % 60 });
    return wall.toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
  },
  plusDays(date, days): LocalDate {
    const later = plain(date).add({ days });
    return { year: later.year, month: later.month, day: later.day };
  },
  knows(zone) {
    try {
      Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
      return /^[A-Za-z]/.test(zone);
    } catch {
      return false;
    }
  },
};

const dayNames = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** A day and a time as people say it, "Tuesday at 14:00"; beyond a week with the date. */
export function whenWords(at: number, now: number, zone: string): string {
  const there = calendar.local(at, zone);
  const today = calendar.local(now, zone);
  const time = `${Math.floor(there.minute / 60)}:${String(there.minute % 60).padStart(2, '0')}`;
  const days = plain(today).until(plain(there)).days;
  if (days === 0) return `today at ${time}`;
  if (days === 1) return `tomorrow at ${time}`;
  const name = dayNames[there.weekday - 1] ?? '';
  if (days > 1 && days < 7) return `${name} at ${time}`;
  return `${name} ${there.day}.${there.month}. at ${time}`;
}
