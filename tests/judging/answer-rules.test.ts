import { describe, expect, it } from 'vitest';
import { contradiction, negates, opposed, polarityOf } from '../../src/judging/answer-negation.js';
import { judgeAnswer } from '../../src/judging/judge-answer.js';
import { makeTools } from '../../src/judging/tools.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';

const tools = makeTools(readLexicon());
const segment =
  'The bridge closed in May. Its middle arch had sunk, and carts slid off it in the rain. The miller did not wait: he built a raft and carried flour across on it.';
const question = 'How did the miller get his flour over the river?';
const answer = (text: string, reference?: readonly string[], asked = question) =>
  judgeAnswer({ kind: 'answer', segment, question: asked, text, ...(reference ? { reference } : {}) }, tools);

describe('a "not" against the text', () => {
  const polarity = (text: string) => polarityOf(tools.analyse(text));
  it.each([
    ['carts did not slide off the bridge', 'carts slid off and carts slide often', true],
    ['because carts do not slide', 'in the rain carts slide', true],
    ['there was enough flour', 'there was not enough flour', true],
    ['he did not wait', 'the miller did not wait', false],
    ['there wasnt enough flour', 'there was not enough flour', false],
    ['he built a raft', 'he built a raft', false],
  ])('%s, beside %s: %s', (text, source, turned) => {
    expect(contradiction(polarity(text), polarity(source)) !== null).toBe(turned);
  });

  it('is seen however a child writes it', () => {
    for (const text of ['he didnt go', "he didn't go", 'he never went', 'nobody went'])
      expect(negates(tools.analyse(text)), text).toBe(true);
    expect(negates(tools.analyse('he went at noon'))).toBe(false);
  });

  it('opposites are seen between two texts, not within one', () => {
    const of = (text: string) => tools.analyse(text);
    expect(opposed(of('the pitch was higher'), of('the pitch was lower'))).toBe(true);
    expect(opposed(of('it was higher, not lower'), of('it was lower'))).toBe(false);
  });
});

describe('without a reference, the evidence in the segment speaks', () => {
  it('a right answer turned round is never said to fit', () => {
    for (const text of [
      'he did not build a raft',
      'he never carried flour across on a raft',
      'the bridge was not closed',
    ])
      expect(answer(text), text).toMatchObject({ measures: { negated: true }, value: 'not yet' });
  });
  it('an answer with the words of the place fits better than one with none of the text’s words', () => {
    const good = answer('he built a raft and carried it across');
    const off = answer('with a very big airplane');
    expect(good.measures.fits!).toBeGreaterThan(off.measures.fits!);
    expect(good.measures.evidence).toBe(1);
    expect(off.reasons.at(-1)?.rule).toBe('the text has none of its own words');
  });
  it('a misspelt answer is read as it was meant', () => {
    expect(answer('he bilt a raft and carryed the flower acros').measures.evidence).toBeGreaterThan(0.7);
  });
  it('nothing said is level 0 and fits nothing', () => {
    expect(answer('')).toMatchObject({ level: 0, measures: { fits: null } });
  });
  it('places lie in the segment', () => {
    const place = answer('he built a raft').reasons.at(-1)?.place;
    expect(place?.in).toBe('segment');
    expect(segment.slice(place!.start, place!.end)).toContain('raft');
  });
});

describe('with a reference', () => {
  const reference = ['He carried it over on a raft that he had made himself.'];
  it('an answer that says what the reference says scores above one that doesn’t', () => {
    expect(answer('on a raft he made', reference).measures.fits!).toBeGreaterThan(
      answer('over the bridge', reference).measures.fits!,
    );
  });
  it('works by a plain rule where the weights from share-alike data are left out', () => {
    const plain = (text: string) =>
      judgeAnswer({ kind: 'answer', segment, question, text, reference }, tools, null);
    expect(plain('he carried it on a raft that he had made himself').value).toBe('fits');
    expect(plain('he swam').value).toBe('not yet');
    expect(plain('he did not carry it on a raft').value).not.toBe('fits');
  });
});
