import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ClueKind } from '../../shared/text.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { announcing } from '../../src/text/clue-rules-announcing.js';
import { causing, contrasting } from '../../src/text/clue-rules-telling.js';
import { applyRule, findClue } from '../../src/text/clues.js';

const lexicon = readLexicon();
const rules = [...announcing, ...contrasting, ...causing];

/** Reads "The {loom} is old." into the text and the word's place. */
function marked(sentence: string) {
  const start = sentence.indexOf('{');
  const end = sentence.indexOf('}') - 1;
  const text = sentence.replace(/[{}]/g, '');
  return { text, window: { start: 0, end: text.length }, at: start < 0 ? null : { start, end } };
}

describe('every rule', () => {
  it.each(rules.map((rule) => [rule.name, rule] as const))('%s finds its example', (_, rule) => {
    const { text, window, at } = marked(rule.example[0]);
    const found = at && applyRule(rule, text, window, at);
    expect(found && text.slice(found.start, found.end)).toBe(rule.example[1]);
  });

  it.each(rules.map((rule) => [rule.name, rule] as const))('%s leaves what is none', (_, rule) => {
    const { text, window, at } = marked(rule.not);
    expect(at).not.toBeNull();
    expect(at && applyRule(rule, text, window, at)).toBeNull();
  });
});

interface Row {
  readonly text: string;
  readonly word: string;
  readonly kind: ClueKind | null;
  readonly clue: string | null;
}

/** Per kind: found right (kind alike and places overlapping), given, labelled; and rows right in all. */
function measure(part: 'open' | 'sealed') {
  const path = new URL(`../../fixtures/sets/clues/${part}.jsonl`, import.meta.url);
  const counts: Record<string, { right: number; given: number; labelled: number }> = {};
  const of = (kind: ClueKind | null) => (counts[kind ?? 'none'] ??= { right: 0, given: 0, labelled: 0 });
  for (const line of readFileSync(path, 'utf8').trim().split('\n')) {
    const row = JSON.parse(line) as Row;
    const found = findClue(row.word, row.text, undefined, lexicon);
    const start = row.clue === null ? 0 : row.text.indexOf(row.clue);
    const touches =
      row.clue === null ||
      (found !== null && found.place.start < start + row.clue.length && start < found.place.end);
    of(row.kind).labelled++;
    of(found?.kind ?? null).given++;
    if ((found?.kind ?? null) === row.kind && touches) of(row.kind).right++;
  }
  return Object.fromEntries(
    Object.entries(counts)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([kind, { right, given, labelled }]) => [
        kind,
        `${right} right of ${given} given, ${labelled} labelled`,
      ]),
  );
}

// Pinned, so that a change shows its cost; precision is right/given, recall right/labelled.
// First run on the sealed half, before rules were added from textbook lists (its rows were never looked at): 64 of 100 right;
// cause 9 of 10 given and 12 labelled, contrast 7/8/12, definition 6/8/12, example 7/9/13, inference 14/28/18, none 13/24/20, synonym 8/13/13.
describe('on the labelled sets', () => {
  it('finds so much on the open half', () => {
    expect(measure('open')).toMatchInlineSnapshot(`
      {
        "cause": "13 right of 13 given, 13 labelled",
        "contrast": "13 right of 13 given, 13 labelled",
        "definition": "13 right of 13 given, 13 labelled",
        "example": "10 right of 10 given, 12 labelled",
        "inference": "15 right of 20 given, 17 labelled",
        "none": "20 right of 20 given, 20 labelled",
        "synonym": "11 right of 11 given, 12 labelled",
      }
    `);
  });
  it('finds so much on the sealed half', () => {
    expect(measure('sealed')).toMatchInlineSnapshot(`
      {
        "cause": "10 right of 11 given, 12 labelled",
        "contrast": "7 right of 9 given, 12 labelled",
        "definition": "6 right of 8 given, 12 labelled",
        "example": "7 right of 9 given, 13 labelled",
        "inference": "14 right of 24 given, 18 labelled",
        "none": "15 right of 26 given, 20 labelled",
        "synonym": "8 right of 13 given, 13 labelled",
      }
    `);
  });
});

describe('a clue in a segment', () => {
  it('is looked for at the offset first', () => {
    const text = 'The arid hills lay ahead. Nothing grew. Then came an arid, or dry, valley.';
    const clue = findClue('arid', text, text.lastIndexOf('arid'), lexicon);
    expect(clue && [clue.kind, text.slice(clue.place.start, clue.place.end)]).toEqual(['synonym', 'dry']);
  });
  it('is none where the word is not there', () => {
    expect(findClue('walrus', 'The arid, or dry, hills.', undefined, lexicon)).toBeNull();
    expect(findClue('', '', undefined, lexicon)).toBeNull();
  });
});
