import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { analyse } from '../../src/text/analyse.js';
import { matchWord, mendedStems } from '../../src/text/similar.js';

const lexicon = readLexicon();
const sentencesOf = (text: string) =>
  analyse(text, lexicon).sentences.map(({ start, end }) => text.slice(start, end));
const wordsOf = (text: string) => analyse(text, lexicon).tokens.map((token) => token.text);

describe('a text is cut into sentences', () => {
  it.each([
    ['no capitals', 'the cat sat. it was fat', ['the cat sat.', 'it was fat']],
    ['no space behind the stop', 'The cat sat.It ran.', ['The cat sat.', 'It ran.']],
    ['a title', 'Mr. Crane ran. Dr. Wren sat.', ['Mr. Crane ran.', 'Dr. Wren sat.']],
    ['who says it', '“Stop!” Wren shouted. He sat.', ['“Stop!” Wren shouted.', 'He sat.']],
    [
      'small letters behind speech',
      '"Why?" asked Wren. "Go," he said.',
      ['"Why?" asked Wren.', '"Go," he said.'],
    ],
    ['short forms', 'It was 3 p.m. in the U.S. then.', ['It was 3 p.m. in the U.S. then.']],
    ['a number', 'It is 3.5 m long. It grows.', ['It is 3.5 m long.', 'It grows.']],
    ['lines of a list', 'Take a cup\nAdd sugar', ['Take a cup', 'Add sugar']],
    [
      'a wrapped line',
      `${'The long road went up and up and up to the '.repeat(2)}\nOld mill.`,
      [`${'The long road went up and up and up to the '.repeat(2)}\nOld mill.`],
    ],
    ['nothing', ' \n😀 …', []],
  ])('%s', (_, text, sentences) => {
    expect(sentencesOf(text)).toEqual(sentences);
  });
});

describe('a text is cut into words', () => {
  it.each([
    ['I don’t like well-known dogs’ bones.', ['I', 'don’t', 'like', 'well-known', 'dogs', 'bones']],
    ['the dam—and…the and/or', ['the', 'dam', 'and', 'the', 'and', 'or']],
    ['yes 😀 42 times!!!', ['yes', '42', 'times']],
  ])('%s', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });

  it('tells names from words at the start of a sentence', () => {
    const { tokens } = analyse('Dogs bark. Then Wren ran. Wren laughed at Brizzle. THE dogs ran.', lexicon);
    expect(tokens.filter(({ name }) => name).map(({ lower }) => lower)).toEqual(['wren', 'wren', 'brizzle']);
  });

  it('takes what is typed in capitals for no names', () => {
    expect(analyse('THE BEAVER BUILT A DAM', lexicon).tokens.some(({ name }) => name)).toBe(false);
  });

  it('straightens apostrophes and stems content words', () => {
    const { tokens, stems } = analyse('The beavers’ dams weren’t BUILT.', lexicon);
    expect(tokens[3]?.lower).toBe("weren't");
    expect([...stems.keys()]).toEqual(['beaver', 'dam', 'built']);
  });

  it('keeps offsets true in any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        const { tokens, sentences } = analyse(text, lexicon);
        let last = 0;
        for (const token of tokens) {
          expect(text.slice(token.start, token.end)).toBe(token.text);
          expect(token.start).toBeGreaterThanOrEqual(last);
          expect(sentences[token.sentence]).toBeDefined();
          last = token.end;
        }
      }),
      { numRuns: 200 },
    );
  });

  it.each([
    'x'.repeat(5000),
    '!?.'.repeat(1700),
    'a.'.repeat(2500),
    '"'.repeat(5000),
    '(a '.repeat(1700),
    '\n'.repeat(5000),
    '\ud800'.repeat(5000),
    'asdf jkl; '.repeat(500),
  ])('gets through 5000 characters of junk in under two seconds', (junk) => {
    const from = performance.now();
    analyse(junk, lexicon);
    expect(performance.now() - from).toBeLessThan(2000);
  });
});

describe('misspelt words', () => {
  const passage = analyse(
    'The beavers built a dam across the stream because they wanted a deep pond where they could be safe.',
    lexicon,
  );
  it.each([
    ['streem', 'stream', true],
    ['bevers', 'beavers', true],
    ['Beaver', 'beavers', false],
    ['building', 'built', false],
  ])('%s is read as %s', (word, meant, misspelt) => {
    const match = matchWord(word, passage.tokens, lexicon);
    expect([match?.token.lower, match?.misspelt]).toEqual([meant, misspelt]);
  });

  it.each(['house', 'damage', '', '??', 'dog'])('%s is no word of the passage', (word) => {
    expect(matchWord(word, passage.tokens, lexicon)).toBeNull();
  });

  it('count as the words they mean', () => {
    const post = analyse('the bevers bilt a damm becuz thay wantid a deap pond', lexicon);
    expect([...mendedStems(post, passage, lexicon).keys()]).toEqual([
      'beaver',
      'built',
      'dam',
      'want',
      'deep',
      'pond',
    ]);
  });
});
