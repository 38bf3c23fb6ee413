import { describe, expect, test } from 'vitest';
import { concepts } from '../../src/safety/alarm-words.js';
import { alarmRules, readAlarms } from '../../src/safety/alarms.js';
import { foldText } from '../../src/safety/folding.js';
import { settingOf } from '../../src/safety/setting.js';
import { speak } from '../../src/safety/spoken.js';

const names = ['Wren', 'Finch'];
/** A reader for whom few words are right, so that misspellings are heard. */
const right = new Set(
  'the a and is it in my to at of with when his cake garden nice they was has'.split(' '),
);

function rulesIn(text: string, passage?: string): readonly string[] {
  const setting = settingOf(passage, names);
  const spoken = speak(foldText(text), (word) => setting.names.has(word));
  return readAlarms(spoken, setting, (word) => right.has(word)).hits.map(({ finding }) => finding.rule);
}

test('each rule names only concepts that exist', () => {
  const known = new Set([
    ...Object.keys(concepts),
    ...['KIN', 'ELDER', 'THEIRKIN', 'REALFRIEND', 'AGE', 'NUM'],
  ]);
  const named = alarmRules.flatMap((rule) =>
    [...rule.patterns, ...rule.unless].flatMap(({ steps }) => steps.flatMap(({ runs }) => runs.flat())),
  );
  expect(named.length).toBeGreaterThan(1000);
  expect(named.filter((one) => /^[A-Z]/u.test(one) && !known.has(one))).toEqual([]);
});

describe('worry words are heard however they are spelt', () => {
  test.each([
    'i think about sucide',
    'my dad hitts me evry nite',
    'i  w a n t  t o  k i l l  m y s e l f',
    'I DONT WANNA LIVE ANYMORE',
    'my bruther beets me evry nite',
  ])('%s', (text) => {
    expect(rulesIn(text)).not.toEqual([]);
  });
});

describe('it matters who does it to whom', () => {
  test.each([
    ['my own father', 'my dad hits me', true],
    ['the father of a story', 'the father hits the boy', false],
    ['a ball', 'the ball hit me on the nose', false],
    ['a friend of my own', 'my friend wants to die', true],
    ['somebody of a story', 'the girl wants to die', false],
    ['an adult online', 'a man online wants a photo of me without clothes', true],
    ['an aunt with a dog', 'my aunt sent me a picture of her new dog', false],
    ['a knife meant for somebody', 'i have a knife in my bag for wren', true],
    ['a knife for clay', 'can i borrow a knife for the clay', false],
  ])('%s: %s', (_, text, alarms) => {
    expect(rulesIn(text).length > 0).toBe(alarms);
  });
});

describe('the words of the passage are its own', () => {
  const passage = 'Tam ran away from the farm. "I wish I had never been born," he said.';
  test('quoted, they call nobody', () => {
    expect(rulesIn('he said i wish i had never been born', passage)).toEqual([]);
  });
  test('but a child who says the same of itself does', () => {
    expect(rulesIn('I understand Tam. I wish I had never been born too.', passage)).not.toEqual([]);
  });
});

describe('a joke is one unless it is meant', () => {
  test.each([
    ['i want to die of boredom lol', false],
    ['lol no really i want to die', true],
  ])('%s', (text, alarms) => {
    expect(rulesIn(text).length > 0).toBe(alarms);
  });
});
