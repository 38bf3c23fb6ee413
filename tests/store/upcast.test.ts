import { describe, expect, it } from 'vitest';
import { formOf, upcast, type UpcastSteps } from '../../src/store/upcast.js';

const steps: UpcastSteps = {
  'pupil-moved': [(old) => ({ ...old, group: old['team'] }), (old) => ({ ...old, why: null })],
  'pupil-left': [({ person, at, by }) => ({ type: 'person-removed', person, at, by })],
  'person-removed': [(old) => ({ ...old, kept: true })],
};

describe('Events of an old form', () => {
  it.each([
    [
      'the first form goes through every step',
      'pupil-moved',
      1,
      { team: 'g' },
      { team: 'g', group: 'g', why: null },
    ],
    ['a later form through those after it', 'pupil-moved', 2, { group: 'g' }, { group: 'g', why: null }],
    ['the newest form stays', 'pupil-moved', 3, { group: 'g' }, { group: 'g' }],
    ['a type without steps stays', 'pupil-came', 1, { a: 1 }, { a: 1 }],
  ])('%s', (_, type, form, fields, expected) => {
    expect(upcast({ type, ...fields }, form, steps)).toEqual({ type, ...expected });
  });

  it('may become another type, and go on from its first form', () => {
    expect(upcast({ type: 'pupil-left', person: 'p', at: 1, by: 'clock' }, 1, steps)).toEqual({
      type: 'person-removed',
      person: 'p',
      at: 1,
      by: 'clock',
      kept: true,
    });
  });

  it('are written in the newest form from then on', () => {
    expect(formOf('pupil-moved', steps)).toBe(3);
    expect(formOf('pupil-came', steps)).toBe(1);
  });
});
