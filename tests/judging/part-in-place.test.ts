import { describe, expect, it } from 'vitest';
import { partInPlace } from '../../src/judging/part-in-place.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';

const lexicon = readLexicon();
// Parts of speech as any grammar for schools gives them.
const places = [
  ['The', 'light', 'was gone.', 'noun'],
  ['They', 'light', 'the stove.', 'verb'],
  ['It is a', 'light', 'bag to carry.', 'adj'],
  ['We will', 'watch', 'the tide.', 'verb'],
  ['She looked at her', 'watch', '.', 'noun'],
  ['The keeper of the', 'house', 'slept.', 'noun'],
  ['Wren spoke', 'softly', 'to the goat.', 'adv'],
  ['The boat was', 'sinking', 'fast.', 'verb'],
  ['It was a sudden', 'fall', '.', 'noun'],
  ['The fields are very', 'dry', 'in May.', 'adj'],
] as const;

describe('The part of speech of a word where it stands', () => {
  it.each(places)('%s [%s] %s is a %s', (before, word, after, part) => {
    const { noun, verb, adj, adv } = partInPlace(word, `${before} `, ` ${after}`, lexicon);
    const shares = { noun, verb, adj, adv };
    expect(noun + verb + adj + adv).toBeCloseTo(1, 9);
    expect(Math.max(noun, verb, adj, adv)).toBe(shares[part]);
  });

  it('is even where neither the word nor its place tells anything', () => {
    const shares = partInPlace('zorbel', 'and ', ' xq', lexicon);
    expect(Object.values(shares)).toEqual([0.25, 0.25, 0.25, 0.25]);
  });
});
