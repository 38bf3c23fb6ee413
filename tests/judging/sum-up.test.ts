import { describe, expect, test } from 'vitest';
import type { JudgeInput } from '../../shared/judgements.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { judgeSumUp } from '../../src/judging/judge-sum-up.js';
import { makeTools } from '../../src/judging/tools.js';

const tools = makeTools(readLexicon());
const segment =
  'Long ago there were no refrigerators. Fresh meat and fish spoiled within days. Salt solved the problem. It draws out moisture, and the tiny living things that make food rot cannot grow without moisture. A barrel of salted fish could last for months. That meant sailors could cross oceans, and families could eat in the hungry weeks before spring.';
const gist =
  'Before fridges, people used salt to keep meat and fish from rotting, so food lasted for months.';

function judge(text: string, more: Partial<Extract<JudgeInput, { kind: 'sum-up' }>> = {}) {
  return judgeSumUp({ kind: 'sum-up', segment, text, ...more }, tools);
}
const honest = 'People had no fridges so they put salt on meat and fish to stop it going bad.';

describe('the level of a sum-up', () => {
  test.each([
    ['nothing at all', '', 0],
    ['one word', 'salt', 0],
    ['another topic', 'My brother plays football in the park every Sunday with his best friend.', 0],
    ['the topic only', 'about salt and fish', 1],
    ['the whole paragraph pasted', segment, 1],
    [
      'one long sentence pasted',
      'It draws out moisture, and the tiny living things that make food rot cannot grow without moisture.',
      1,
    ],
    ['the idea in own words', honest, 2],
    ['the idea in own words, without capitals and full stops', honest.toLowerCase().replace('.', ''), 2],
  ])('%s', (_, text, level) => {
    expect(judge(text).level).toBe(level);
  });

  test('three takes an adult’s gist: the same sum-up stops at two without one', () => {
    expect(judge(honest).level).toBe(2);
    expect(judge(honest).measures.gist).toBeNull();
    expect(judge(honest, { gist }).level).toBe(3);
  });

  test('what denies where the gist does not is no three', () => {
    const denied = 'People did not use salt to keep meat and fish from rotting before fridges.';
    expect(judge(denied, { gist: gist.replace('Before fridges', 'Long ago') }).level).toBeLessThan(3);
  });

  test('telling everything again, sentence by sentence, is a list and no sum-up', () => {
    const retold =
      'Back then nobody had a fridge at home. All meat went bad after a few days and so did fish. Then people found out salt helps. Salt pulls the wet out of food. Germs need wet to live so they die off. One barrel of fish in salt was good for many months. Because of it ships went over the sea. Mums and dads had food for kids when spring was not there yet.';
    expect(judge(retold).level).toBe(1);
  });
});

describe('what a sum-up is measured by', () => {
  test('a short honest sum-up beats a long copy in level and wording', () => {
    const copy = judge(segment);
    const own = judge(honest);
    expect(own.level!).toBeGreaterThan(copy.level!);
    expect(own.measures.wording).toBeGreaterThan(copy.measures.wording);
    expect(own.measures.copied).toBe(0);
  });

  test('words and sentences are counted, shares lie between 0 and 1', () => {
    const { measures } = judge('Salt kept food good. Sailors ate it.');
    expect(measures).toMatchObject({ words: 7, sentences: 2 });
    for (const share of [measures.content, measures.wording, measures.coverage, measures.onTopic]) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
  });

  test('more key terms are more coverage', () => {
    expect(judge(honest).measures.coverage).toBeGreaterThan(judge('They put it on food.').measures.coverage);
  });

  test('a sum-up of another segment is off topic, also with a shared word', () => {
    const other = judge('Beavers build a dam of sticks and mud so a deep pond keeps wolves away.');
    expect(other.value).toBe('off topic');
    expect(judge(honest).value).toBe('on topic');
  });

  test('spelling does not count against the thought', () => {
    const misspelt = judge('Peple had no frijes so they put sallt on meet and fissh to stop it going bad.');
    expect(misspelt.level).toBe(2);
    expect(misspelt.value).toBe('on topic');
  });

  test('the rule of the level comes first among the reasons; places lie in the texts', () => {
    const { reasons } = judge(segment);
    expect(reasons[0]?.rule).toBe('mostly copied');
    for (const { place } of reasons) {
      if (!place) continue;
      expect(place.start).toBeLessThan(place.end);
      expect(place.end).toBeLessThanOrEqual(segment.length);
    }
  });

  test('the same post is judged the same', () => {
    expect(judge(honest)).toEqual(judge(honest));
  });

  test('any text is taken', () => {
    for (const text of [
      '',
      ' ',
      '🐟🐟🐟',
      '???',
      'a'.repeat(5000),
      '1 2 3',
      'el pez se puede conservar con sal',
    ]) {
      const { measures, level } = judge(text);
      expect(level).not.toBeNull();
      expect(Number.isFinite(measures.content + measures.wording + measures.copied)).toBe(true);
    }
  });
});
