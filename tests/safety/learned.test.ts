import { describe, expect, test } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { learnedRules, thresholdFor } from '../../src/safety/learned.js';
import { makeScreen } from '../../src/safety/screen.js';
import { chanceBy, fitConcern } from '../../src/app/train/fit-screen.js';
import type { ScreenCase } from '../../src/app/train/screen-cases.js';

const lexicon = readLexicon();
const screen = makeScreen((word) => lexicon.knows(word));

const post = (writer: string, alarm: boolean, ...features: readonly string[]): ScreenCase => ({
  set: 'alarm-open',
  writer,
  text: '',
  passage: null,
  names: [],
  hold: alarm,
  features,
  labels: { alarm, hurtful: null, personal: null },
});

describe('the learned layer', () => {
  test('finds what no rule foresaw, and points at words of the post', () => {
    const text = 'sometimes i lie awake and listen if she is still breathing';
    const [first] = screen({ text }).findings;
    expect(first?.rule).toBe(learnedRules.alarm);
    expect(first && text.slice(first.place.start, first.place.end)).toMatch(/\w/u);
  });
  test('says nothing of a post without words', () => {
    expect(screen({ text: '...' }).findings).toEqual([]);
  });
  test('asks more of a post that speaks neither of its writer nor to anybody', () => {
    expect(thresholdFor(['c I'], 'alarm', 0.5)).toBe(0.5);
    expect(thresholdFor(['w wolf'], 'alarm', 0.5)).toBeGreaterThan(0.8);
    expect(thresholdFor(['w wolf'], 'hurtful', 0.5)).toBe(0.5);
  });
  test('learns which features alarm, from the posts it is given and no others', () => {
    const cases = [0, 1, 2, 3].flatMap((k) => [
      post('a', true, 'w hide', `w n${String(k)}`),
      post('a', false, 'w cake', `w n${String(k)}`),
      post('b', false, 'w hide'),
    ]);
    const model = fitConcern(cases, 'alarm', ({ writer }) => writer === 'a');
    expect(chanceBy(model, ['w hide'])).toBeGreaterThan(0.6);
    expect(chanceBy(model, ['w cake'])).toBeLessThan(0.4);
    expect(fitConcern(cases, 'alarm', ({ writer }) => writer === 'a')).toEqual(model);
  });
});
