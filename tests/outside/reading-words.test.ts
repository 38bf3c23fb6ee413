import PorterFromFolder from 'natural/lib/natural/stemmers/index.js';
import { describe, expect, it } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { prefixedWord, prefixes } from '../../src/text/prefixes.js';
import { stemOf } from '../../src/text/stem.js';

const lexicon = readLexicon();

describe('prefixes', () => {
  // White, Sowell & Yanagihara 1989, The Reading Teacher 42:302-308: share of prefixed words in per cent.
  it('come with the published shares, most frequent first', () => {
    expect(prefixes.map(({ forms, share }) => [forms[0], share])).toEqual([
      ['un', 26],
      ['re', 14],
      ['in', 11],
      ['dis', 7],
      ['en', 4],
      ['non', 4],
      ['in', 3],
      ['over', 3],
      ['mis', 3],
      ['sub', 3],
      ['pre', 3],
      ['inter', 3],
      ['fore', 3],
      ['de', 2],
      ['trans', 2],
      ['super', 1],
      ['semi', 1],
      ['anti', 1],
      ['mid', 1],
      ['under', 1],
    ]);
  });

  // From memory of the same source.
  it.each(['uncle', 'reach', 'invent', 'missile'])('%s has none, though it begins like one', (word) => {
    expect(prefixedWord(word, lexicon)).toBeNull();
  });

  it.each([
    ['unhappy', 'un', 'happy'],
    ['rewrite', 're', 'write'],
    ['impossible', 'im', 'possible'],
    ['dislike', 'dis', 'like'],
    ['misjudge', 'mis', 'judge'],
    ['preheat', 'pre', 'heat'],
    ['overheat', 'over', 'heat'],
    ['semicircle', 'semi', 'circle'],
  ])('%s is %s and %s', (word, prefix, rest) => {
    expect(prefixedWord(word, lexicon)).toMatchObject({ prefix, rest });
  });
});

describe('stems', () => {
  // Oracle: the Porter stemmer of the package natural, taken from its folder rather than from the single file that we load.
  it.each(
    'relational conditional running hopping happiness caresses ponies ties agreed plastered motoring sky electricity formalize'.split(
      ' ',
    ),
  )('%s', (word) => {
    expect(stemOf(word)).toBe(PorterFromFolder.PorterStemmer.stem(word));
  });

  it('takes the possessive off first', () => {
    expect(stemOf("beaver's")).toBe('beaver');
    expect(stemOf("foxes'")).toBe('fox');
  });
});
