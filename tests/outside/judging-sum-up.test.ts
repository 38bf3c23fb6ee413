import { describe, expect, test } from 'vitest';
import { rougeL, rougeN, rougeSkip } from '../../src/judging/sum-up-rouge.js';

// Source: Lin 2004, "ROUGE: a package for automatic evaluation of summaries", ACL anthology W04-1013, its worked example.
const reference = 'police killed the gunman'.split(' ');

describe('overlap as published', () => {
  test.each([
    ['police kill the gunman', 0.75, 0.5],
    ['the gunman kill police', 0.5, 0.1667],
    ['the gunman police killed', 0.5, 0.3333],
  ])('%s: ROUGE-L %d, skip-bigram %d (published)', (text, l, skip) => {
    expect(rougeL(text.split(' '), reference)).toBeCloseTo(l, 4);
    expect(rougeSkip(text.split(' '), reference)).toBeCloseTo(skip, 4);
  });

  // Arithmetic from the published formula.
  test.each([
    ['police kill the gunman', 0.75, 0.3333],
    ['the gunman kill police', 0.75, 0.3333],
    ['the gunman police killed', 1, 0.6667],
  ])('%s: ROUGE-1 %d, ROUGE-2 %d (calculated)', (text, one, two) => {
    expect(rougeN(text.split(' '), reference, 1)).toBeCloseTo(one, 4);
    expect(rougeN(text.split(' '), reference, 2)).toBeCloseTo(two, 4);
  });

  test('nothing overlaps with nothing', () => {
    expect(rougeN([], reference, 1)).toBe(0);
    expect(rougeN(reference, [], 1)).toBe(0);
    expect(rougeL([], reference)).toBe(0);
    expect(rougeSkip(['police'], reference)).toBe(0);
  });
});
