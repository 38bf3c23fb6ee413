import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';

const lexicon = readLexicon();

describe('word knowledge', () => {
  it.each([
    ['geese', 'goose'],
    ['running', 'run'],
    ['stopped', 'stop'],
    ['glasses', 'glass'],
    ['happier', 'happy'],
    ['was', 'be'],
    ['bus', 'bus'],
    ['number', 'number'],
    ['species', 'species'],
    ['brillig', 'brillig'],
  ])('the likeliest base of %s is %s', (word, base) => {
    expect(lexicon.bases(word)[0]).toBe(base);
  });

  it('keeps both bases where a form has two', () => {
    expect(lexicon.bases('leaves')).toEqual(expect.arrayContaining(['leaf', 'leave']));
  });

  it('relates words', () => {
    expect(lexicon.synonyms('arid')).toContain('waterless');
    expect(lexicon.antonyms('arid')).toContain('wet');
    expect(lexicon.hypernyms('dog')).toContain('animal');
    expect(lexicon.glossWords('peril')).toContain('danger');
    expect(lexicon.synonyms('brillig')).toEqual([]);
  });

  it('knows contractions, compounds and forms, but no junk', () => {
    for (const word of ["don't", "they're", 'well-known', 'geese']) expect(lexicon.knows(word)).toBe(true);
    for (const word of ['asdfgh', 'brilligest', '']) expect(lexicon.knows(word)).toBe(false);
  });

  it('counts syllables, exceptions too', () => {
    const counts = {
      cat: 1,
      every: 2,
      beaver: 2,
      climbed: 1,
      creature: 2,
      idea: 3,
      'ice-cold': 2,
      photosynthesis: 5,
    };
    expect(Object.fromEntries(Object.keys(counts).map((word) => [word, lexicon.syllables(word)]))).toEqual(
      counts,
    );
  });

  it('tells common from rare, and nouns from verbs', () => {
    expect(lexicon.zipf('the')).toBeGreaterThan(7);
    expect(lexicon.zipf('brillig')).toBe(0);
    expect(lexicon.familiar('walked')).toBe(true);
    expect(lexicon.familiar('estuary')).toBe(false);
    expect(lexicon.partShares('beaver').noun).toBeGreaterThan(0.7);
    expect(lexicon.partShares('walk').verb).toBeGreaterThan(0.5);
  });

  it('answers odd input with nothing', () => {
    for (const word of ['', ' ', '\ud800', 'x'.repeat(5000), '__proto__', '日本']) {
      expect(lexicon.zipf(word)).toBe(0);
      expect(lexicon.synonyms(word)).toEqual([]);
      expect(Array.isArray(lexicon.spellings(word))).toBe(true);
    }
  });
});

describe("children's spellings", () => {
  const firsts = (part: string) => {
    const rows = readFileSync(new URL(`../../fixtures/sets/spellings/${part}.jsonl`, import.meta.url), 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { wrong: string; right: string });
    const found = rows.map(({ wrong, right }) => lexicon.spellings(wrong).indexOf(right.toLowerCase()));
    return {
      of: rows.length,
      first: found.filter((at) => at === 0).length,
      any: found.filter((at) => at >= 0).length,
    };
  };

  // Pinned, so that a change shows its cost. The sealed half was run once, after tuning on the open one.
  it('are read right first in so many cases', () => {
    expect({ open: firsts('open'), sealed: firsts('sealed') }).toMatchInlineSnapshot(`
      {
        "open": {
          "any": 70,
          "first": 57,
          "of": 75,
        },
        "sealed": {
          "any": 68,
          "first": 49,
          "of": 75,
        },
      }
    `);
  });

  it("prefer the passage's own words", () => {
    expect(lexicon.spellings('brige', new Set(['bridge']))[0]).toBe('bridge');
  });
});
