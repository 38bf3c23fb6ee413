import type { Calendar } from '../../shared/time.js';

const day = 86_400_000;

/** Zones that the fake calendar knows, with their hours before UTC's clock: no daylight saving. */
const zones: Readonly<Record<string, number>> = { UTC: 0, 'Test/Plus-Two': 2, 'Test/Minus-Five': -5 };

function offset(zone: string): number {
  return (zones[zone] ?? 0) * 3_600_000;
}

/** A calendar without daylight saving, for the rules; zones as they are belong to the app's own tests. */
export const fakeCalendar: Calendar = {
  local(at, zone) {
    const there = new Date(at + offset(zone));
    return {
      year: there.getUTCFullYear(),
      month: there.getUTCMonth() + 1,
      day: there.getUTCDate(),
      weekday: there.getUTCDay() === 0 ? 7 : there.getUTCDay(),
      minute: there.getUTCHours() * 60 + there.getUTCMinutes(),
    };
  },
  instant(date, minute, zone) {
    return Date.UTC(date.year, date.month - 1, date.day) + minute * 60_000 - offset(zone);
  },
  plusDays(date, days) {
    const there = new Date(Date.UTC(date.year, date.month - 1, date.day) + days * day);
    return { year: there.getUTCFullYear(), month: there.getUTCMonth() + 1, day: there.getUTCDate() };
  },
  knows: (zone) => Object.hasOwn(zones, zone),
};
