import { describe, expect, it } from 'vitest';
import { nextReview, type reviewDays } from '../../src/progress/words-to-review.js';
import { day, monday } from './a-class.js';

type Days = (typeof reviewDays)[number] | null;

describe('Word review', () => {
  it.each([
    { name: 'a confirmed word comes back the next day', before: null, known: false, days: 1 },
    { name: 'known after one day: three days on', before: 1, known: true, days: 3 },
    { name: 'known after three days: seven on', before: 3, known: true, days: 7 },
    { name: 'known after seven days: twenty-one on', before: 7, known: true, days: 21 },
    { name: 'not known: from the start', before: 7, known: false, days: 1 },
  ] as { name: string; before: Days; known: boolean; days: number }[])('$name', ({ before, known, days }) => {
    expect(nextReview(monday, before, known)).toEqual({ days, at: monday + days * day });
  });

  it('known after twenty-one days: done', () => {
    expect(nextReview(monday, 21, true)).toBeNull();
  });
});
