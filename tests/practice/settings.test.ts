import { describe, expect, it, test } from 'vitest';
import { Fault } from '../../shared/fault.js';
import { asId, type ClassId } from '../../shared/ids.js';
import type { SettingName } from '../../shared/moves.js';
import { emptyState } from '../../src/practice/empty-state.js';
import { evolve } from '../../src/practice/evolve.js';
import { settingDefaults, withSetting } from '../../src/practice/settings.js';
import type { Settings } from '../../src/practice/state.js';
import { fakeCalendar } from '../support/fake-calendar.js';
import { makeClass, monday, Played } from './playing.js';

const set = (setting: SettingName, value: string): Settings =>
  withSetting(settingDefaults, setting, value, fakeCalendar);

describe('settings', () => {
  it('of a new class hold what is doubtful, and say so in its first event', () => {
    expect(settingDefaults.moderation).toBe('hold what is doubtful');
    const played = new Played(monday());
    played.move('founder', { type: 'make-class', name: 'Room 4', zone: 'UTC', nickname: 'Heron' });
    expect(played.of('class-made')[0]?.moderation).toBe('hold what is doubtful');
    expect(played.state.settings.moderation).toBe('hold what is doubtful');
  });

  it('of a class made before that was noted hold everything, as they did then', () => {
    const at = monday();
    const made = {
      type: 'class-made',
      at,
      by: 'founder',
      name: 'Old',
      zone: 'UTC',
      register: '8-10',
    } as const;
    expect(evolve(emptyState(asId<ClassId>('c1')), made).settings.moderation).toBe('hold everything');
  });

  it('change the staff passphrase for an administrator alone', () => {
    const played = makeClass();
    played.staff({ type: 'add-person', nickname: 'Tern', role: 'administrator' });
    const on = { type: 'change-setting', setting: 'staff passphrase', value: 'on' } as const;
    expect(played.refused(played.person('Heron'), on)).toBe('not allowed');
    played.move(played.person('Tern'), on);
    expect(played.state.settings.staffPassphrase).toBe(true);
  });

  test.each<[SettingName, string, Partial<Settings>]>([
    ['moderation', 'Publish', { moderation: 'publish' }],
    [
      'sessions',
      'Tue 14:00, Thu 14:30',
      {
        sessions: [
          { weekday: 2, minute: 840 },
          { weekday: 4, minute: 870 },
        ],
      },
    ],
    ['sessions', 'Tuesday 9:05', { sessions: [{ weekday: 2, minute: 545 }] }],
    ['sessions', 'none', { sessions: [] }],
    ['school days', 'Mon-Fri', { schoolDays: [1, 2, 3, 4, 5] }],
    ['school days', 'Sat, Mon-Tue', { schoolDays: [1, 2, 6] }],
    ['open hours', '08:00-16:30', { opensMinute: 480, closesMinute: 990 }],
    ['holidays', '2026-12-24, 2026-12-25', { holidays: ['2026-12-24', '2026-12-25'] }],
    ['register', '11-14', { register: '11-14' }],
    ['zone', 'Test/Plus-Two', { zone: 'Test/Plus-Two' }],
    ['order', 'predict, question, clarify, sum-up', { order: ['predict', 'question', 'clarify', 'sum-up'] }],
    ['alarm text', 'Ms Heron is in room 4.', { alarmText: 'Ms Heron is in room 4.' }],
    ['alarm number', 'none', { alarmNumber: null }],
    ['term ends', '2026-07-17', { termEnds: '2026-07-17' }],
    ['idle minutes', '45', { idleMinutes: 45 }],
    ['alarm minutes', '10', { alarmMinutes: 10 }],
    ['picture secret', 'on', { pictureSecret: true }],
    ['staff passphrase', 'On', { staffPassphrase: true }],
    ['question line', 'as measured', { questionLine: 'as measured' }],
  ])('%s takes “%s”', (setting, value, expected) =>
    expect(set(setting, value)).toEqual({ ...settingDefaults, ...expected }),
  );

  test.each<[SettingName, string]>([
    ['moderation', 'perhaps'],
    ['sessions', 'Tue'],
    ['sessions', 'Tue 25:00'],
    ['sessions', 'Tue 14:00 pm'],
    ['school days', ''],
    ['school days', 'Fri-Mon'],
    ['open hours', '19:00-07:30'],
    ['open hours', '08:00-08:30'],
    ['holidays', '24.12.2026'],
    ['holidays', '2026-02-30'],
    ['register', '7'],
    ['zone', 'Mars/Base'],
    ['order', 'question, clarify'],
    ['order', 'question, question, clarify, sum-up'],
    ['alarm text', ' '],
    ['term ends', 'soon'],
    ['idle minutes', '1'],
    ['alarm minutes', '0'],
    ['picture secret', 'yes'],
    ['staff passphrase', ''],
    ['idle minutes', 'half an hour'],
  ])('%s refuses “%s” with what was expected and an example', (setting, value) => {
    expect(() => set(setting, value)).toThrow(Fault);
    try {
      set(setting, value);
    } catch (problem) {
      expect(problem).toMatchObject({
        code: 'bad input',
        message: expect.stringMatching(/^Cannot set .+, expected .+/u) as string,
      });
      expect((problem as Fault).remedy).toMatch(/^Write it like this: /u);
    }
  });

  it('changes nothing where it refuses', () => {
    const played = makeClass();
    const before = played.state;
    expect(
      played.refused(played.person('Heron'), {
        type: 'change-setting',
        setting: 'open hours',
        value: 'late',
      }),
    ).toBe('bad input');
    expect(played.state).toBe(before);
  });
});
