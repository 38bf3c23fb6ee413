import { describe, expect, it } from 'vitest';
import { calendar, whenWords } from '../../src/app/calendar.js';

// Oracle: the published rules of summer time. EU directive 2000/84/EC: last Sundays of March and October at 01:00 UTC.
// US Energy Policy Act of 2005: second Sunday of March and first Sunday of November at 02:00 local time.
describe('Days on which the clock changes', () => {
  const at = (iso: string): number => Date.parse(iso);

  it.each([
    ['Berlin, the minute before spring forward', 'Europe/Berlin', '2026-03-29T00:59:00Z', 1 * 60 + 59],
    ['Berlin, spring forward', 'Europe/Berlin', '2026-03-29T01:00:00Z', 3 * 60],
    ['Berlin, the minute before fall back', 'Europe/Berlin', '2026-10-25T00:59:00Z', 2 * 60 + 59],
    ['Berlin, fall back', 'Europe/Berlin', '2026-10-25T01:00:00Z', 2 * 60],
    ['New York, spring forward', 'America/New_York', '2026-03-08T07:00:00Z', 3 * 60],
    ['New York, fall back', 'America/New_York', '2026-11-01T06:00:00Z', 1 * 60],
  ])('%s', (_, zone, instant, minute) => {
    expect(calendar.local(at(instant), zone).minute).toBe(minute);
  });

  it('a school day that begins at 7:30 begins at 7:30 on both sides of a change', () => {
    const before = calendar.instant({ year: 2026, month: 3, day: 27 }, 450, 'Europe/Berlin');
    const after = calendar.instant({ year: 2026, month: 3, day: 30 }, 450, 'Europe/Berlin');
    expect(new Date(before).toISOString()).toBe('2026-03-27T06:30:00.000Z');
    expect(new Date(after).toISOString()).toBe('2026-03-30T05:30:00.000Z');
  });

  it('a minute that is skipped gives the one that is as much later as the gap is long', () => {
    const gap = calendar.instant({ year: 2026, month: 3, day: 29 }, 150, 'Europe/Berlin');
    expect(calendar.local(gap, 'Europe/Berlin').minute).toBe(210);
  });

  it('a minute that comes twice gives the earlier one', () => {
    const twice = calendar.instant({ year: 2026, month: 10, day: 25 }, 150, 'Europe/Berlin');
    expect(new Date(twice).toISOString()).toBe('2026-10-25T00:30:00.000Z');
  });

  it('counts days over the end of February in a leap year', () => {
    expect(calendar.plusDays({ year: 2028, month: 2, day: 28 }, 2)).toEqual({ year: 2028, month: 3, day: 1 });
  });

  it('knows zones by name and nothing else', () => {
    expect(['Europe/London', 'UTC', 'Mars/Base', '+05:00', ''].map((zone) => calendar.knows(zone))).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
});

describe('When something is, in words', () => {
  const now = Date.parse('2026-11-24T12:00:00Z');
  it.each([
    ['2026-11-24T14:05:00Z', 'today at 14:05'],
    ['2026-11-25T07:30:00Z', 'tomorrow at 7:30'],
    ['2026-11-27T07:30:00Z', 'Friday at 7:30'],
    ['2026-12-08T07:30:00Z', 'Tuesday 8.12. at 7:30'],
  ])('%s is %s', (instant, words) => {
    expect(whenWords(Date.parse(instant), now, 'Europe/London')).toBe(words);
  });
});
