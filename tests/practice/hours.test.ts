import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  endOfSchoolDay,
  nextMorning,
  nextOpen,
  nextSession,
  openMinutes,
  plusOpen,
  type SchoolTime,
} from '../../src/practice/hours.js';
import { settingDefaults } from '../../src/practice/settings.js';
import type { Settings } from '../../src/practice/state.js';
import { fakeCalendar } from '../support/fake-calendar.js';
import { day, minute, monday, weekday } from './playing.js';

const timeWith = (settings: Partial<Settings> = {}): SchoolTime => ({
  settings: { ...settingDefaults, ...settings },
  calendar: fakeCalendar,
});
const time = timeWith();

describe('open hours are school days 07:30-19:00', () => {
  test.each([
    ['inside they run on', monday('08:00'), 60, monday('09:00')],
    ['over the night they stop', monday('18:00'), 120, weekday(2, '08:30')],
    ['over the weekend too', weekday(5, '18:00'), 120, weekday(8, '08:30')],
    ['from the night they begin in the morning', monday('05:00'), 30, monday('08:00')],
    ['up to the very close', monday('18:00'), 60, monday('19:00')],
    ['nothing is nothing', monday('12:00'), 0, monday('12:00')],
  ])('%s', (_, at, minutes, expected) => expect(plusOpen(time, at, minutes)).toBe(expected));

  it('are counted in the class’s zone', () => {
    const east = timeWith({ zone: 'Test/Plus-Two' });
    expect(nextOpen(east, monday('04:00'))).toBe(monday('05:30'));
    expect(endOfSchoolDay(east, monday('06:00'), 1)).toBe(monday('17:00'));
  });

  it('leave out holidays', () => {
    const free = timeWith({ holidays: ['2026-01-06', '2026-01-07'] });
    expect(nextMorning(free, monday('12:00'))).toBe(weekday(4, '07:30'));
    expect(endOfSchoolDay(free, monday('12:00'), 2)).toBe(weekday(4, '19:00'));
  });

  it('know the next session, not on a holiday', () => {
    const sessions = [{ weekday: 2, minute: 840 }];
    expect(nextSession(timeWith({ sessions }), monday())).toBe(weekday(2, '14:00'));
    expect(nextSession(timeWith({ sessions }), weekday(2, '14:00'))).toBe(weekday(9, '14:00'));
    expect(nextSession(timeWith({ sessions, holidays: ['2026-01-06'] }), monday())).toBe(weekday(9, '14:00'));
    expect(nextSession(time, monday())).toBeNull();
  });

  it('add up: what was added is what lies between', () => {
    fc.assert(
      fc.property(fc.nat({ max: 30 * 1440 }), fc.nat({ max: 5000 }), (start, minutes) => {
        const from = monday('00:00') + start * minute;
        const to = plusOpen(time, from, minutes);
        expect(openMinutes(time, from, to)).toBe(minutes);
        expect(to).toBeGreaterThanOrEqual(from);
        expect(to - from).toBeLessThan(40 * day);
      }),
    );
  });
});
