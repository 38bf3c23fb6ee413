import { describe, expect, test } from 'vitest';
import type { JudgeInput } from '../../shared/judgements.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { fixUpIn, fixUpRules } from '../../src/judging/clarify-fix-ups.js';
import { judgeClarify } from '../../src/judging/judge-clarify.js';
import { makeTools } from '../../src/judging/tools.js';

const tools = makeTools(readLexicon());
const segment =
  'The mule was obstinate. We pulled, we begged, and still it would not move. Its owner, a pedlar (a man who sells things from door to door), only shrugged. They waited by the treacherous river, and it rose.';

function judge(word: string, text: string, more: Partial<Extract<JudgeInput, { kind: 'clarify' }>> = {}) {
  return judgeClarify({ kind: 'clarify', segment, word, text, ...more }, tools);
}
function at(found: { readonly start: number; readonly end: number } | null): string | null {
  return found && segment.slice(found.start, found.end);
}

describe('the hard place is found', () => {
  test.each([
    ['as written', 'obstinate', 'obstinate', false],
    ['with a capital', 'Obstinate', 'obstinate', false],
    ['in another form', 'rise', 'rose', false],
    ['misspelt', 'obstanit', 'obstinate', true],
    ['misspelt by ear', 'trecherus', 'treacherous', true],
    ['a phrase', 'door to door', 'door to door', false],
    ['a pronoun', 'they', 'They', false],
  ])('%s', (_, word, place, misspelt) => {
    const { measures } = judge(word, '');
    expect(at(measures.found)).toBe(place);
    expect(measures.misspelt).toBe(misspelt);
  });

  test('nearest to the place that was tapped', () => {
    const second = segment.indexOf('it rose');
    expect(judge('it', '', { offset: second }).measures.found?.start).toBe(second);
    expect(judge('it', '').measures.found?.start).toBe(segment.indexOf('it would'));
  });

  test('nowhere when the segment has nothing like it', () => {
    expect(judge('helicopter', 'what is it').measures.found).toBeNull();
  });
});

describe('the level of a clarifying try', () => {
  test.each([
    ['nothing', '', '', 0, 'nothing yet'],
    ['"I get it all"', '', 'i get it all', 0, 'nothing yet'],
    ['only the word', 'obstinate', '', 1, 'names the trouble'],
    ['a word and that it is not known', 'obstinate', 'i dont know what it means', 1, 'names the trouble'],
    ['a word and a fix-up', 'obstinate', 'i read the sentence again', 2, 'names the trouble'],
    ['a meaning that no definition stands for', 'obstinate', 'it means stubborn', 2, 'read it again'],
    ['a meaning turned round', 'obstinate', 'not stubborn', 1, 'read it again'],
    ['what the text defines', 'pedlar', 'somebody who sells things', 2, 'fits'],
    [
      'what the text defines, with where it says so',
      'pedlar',
      'he sells things, it says so right after the word: from door to door',
      3,
      'fits',
    ],
  ])('%s', (_, word, text, level, value) => {
    expect(judge(word, text)).toMatchObject({ level, value });
  });

  test('the adult’s meaning makes it fit, its contrary never', () => {
    const meaning = 'stubborn, not willing to do what others want';
    expect(judge('obstinate', 'stubborn', { meaning }).value).toBe('fits');
    expect(judge('obstinate', 'not stubborn', { meaning }).value).toBe('read it again');
    expect(judge('obstinate', 'very willing', { meaning }).value).toBe('read it again');
  });

  test('a picked fix-up counts as well as a written one', () => {
    expect(judge('obstinate', '', { fixUp: 'look it up' })).toMatchObject({
      level: 2,
      measures: { fixUp: 'look it up' },
    });
  });

  test('spelling does not count against the thought', () => {
    expect(judge('pedler', 'sombody who sels things')).toMatchObject({ level: 2, value: 'fits' });
  });
});

describe('what a try is measured by', () => {
  test.each([
    ['obstinate', 'word'],
    ['they', 'pronoun'],
    ['door to door', 'phrase'],
    ['why the owner of the mule only shrugged and did nothing', 'idea'],
  ])('%s is trouble with a %s', (word, trouble) => {
    expect(judge(word, 'i dont get it').measures.trouble).toBe(trouble);
  });

  test('a near meaning fits better than a far one, a contrary least', () => {
    const fit = (text: string) => judge('obstinate', text).measures.fit!;
    expect(fit('stubborn')).toBeGreaterThan(fit('a kind of hat'));
    expect(fit('stubborn')).toBeGreaterThan(0.5);
    expect(fit('not stubborn')).toBeLessThanOrEqual(0.1);
  });

  test('no meaning, no fit', () => {
    expect(judge('obstinate', 'i dont know this word').measures.fit).toBeNull();
  });

  test('the clue of the text comes with its place', () => {
    const { clue } = judge('pedlar', '').measures;
    expect(clue?.kind).toBe('definition');
    expect(clue && segment.slice(clue.place.start, clue.place.end)).toContain('a man who sells things');
  });
});

describe('fix-up rules', () => {
  test.each(fixUpRules)('$fixUp: "$yes", and not "$no"', ({ fixUp, yes, no }) => {
    expect(fixUpIn(yes, undefined)?.fixUp).toBe(fixUp);
    expect(fixUpIn(no, undefined)?.fixUp).not.toBe(fixUp);
  });
});
