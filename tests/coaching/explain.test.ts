import { describe, expect, test } from 'vitest';
import { explain } from '../../src/coaching/explain.js';

const texts = { segment: 'The tide turned at noon. Crabs came out.', text: 'when did the tide turn' };

describe('a reason in a tutor’s words', () => {
  test('is quoted when shown, from the text that its place points into', () => {
    const reason = { rule: 'no such rule', place: { in: 'segment', start: 4, end: 23 } } as const;
    expect(explain(reason, texts)).toBe('no such rule: “tide turned at noon”');
    expect(explain({ ...reason, place: { in: 'text', start: 0, end: 4 } }, texts)).toBe(
      'no such rule: “when”',
    );
  });
  test('goes without a quotation where the words are gone or the place lies outside them', () => {
    expect(explain({ rule: 'a rule', place: { in: 'next', start: 0, end: 4 } }, texts)).toBe('a rule');
    expect(explain({ rule: 'a rule', place: { in: 'text', start: 0, end: 400 } }, texts)).toBe('a rule');
    expect(explain({ rule: 'a rule', place: null }, texts)).toBe('a rule');
  });
  test('a long quotation is cut at a word and says so', () => {
    const segment = 'word '.repeat(60);
    const said = explain({ rule: 'r', place: { in: 'segment', start: 0, end: 300 } }, { segment, text: '' });
    expect(said).toMatch(/^r: “(word )+…”$/u);
    expect(said.length).toBeLessThan(110);
  });
  test('figures stand in its sentence, shares as per cent', () => {
    const reason = { rule: 'share copied', place: null, figures: { copied: 0.5 } };
    expect(explain(reason, texts)).toBe('50 % of its words stand in runs from the text');
  });
  test('a figure that is missing leaves the rule its own name, never half a sentence', () => {
    expect(explain({ rule: 'share copied', place: null }, texts)).toBe('share copied');
  });
});
