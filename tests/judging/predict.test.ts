import { describe, expect, test } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { judgePredict } from '../../src/judging/judge-predict.js';
import { predictCues } from '../../src/judging/predict-cues.js';
import { makeTools } from '../../src/judging/tools.js';

const tools = makeTools(readLexicon());
const segment =
  'The river had been rising all night. Wren stood on the old wooden bridge and felt it shake under her boots. Two boards were already gone. On the far bank her little goat was bleating.';
const next =
  'Wren did not think twice. She ran across the shaking bridge and grabbed the goat. Behind her the boards broke, and the river carried the bridge away.';

function judge(text: string, more: { readonly next?: string } = {}) {
  return judgePredict({ kind: 'predict', segment, text, ...more }, tools);
}

describe('the level of a prediction', () => {
  test.each([
    ['nothing', '', 0],
    ['what was read', 'The river was rising and two boards were gone.', 0],
    ['nothing of what comes', 'something exciting happens', 0],
    ['wild, with a reason from elsewhere', 'aliens will land because i saw that in a film', 0],
    ['tied to a clue', 'i think the bridge will break because the boards are already gone', 2],
    ['tied to a clue, misspelt', 'i think the brige will brake becuase the bords are alredy gone', 2],
  ])('%s', (_, text, level) => {
    expect(judge(text).level).toBe(level);
  });

  test('three takes evidence and the next part', () => {
    const text = 'wren will run over the bridge and grab the goat because it was bleating on the far bank';
    expect(judge(text).level).toBe(2);
    expect(judge(text, { next }).level).toBe(3);
  });
});

describe('what a prediction is measured by', () => {
  test('looking ahead and telling again are told apart', () => {
    expect(judge('the bridge will fall').measures).toMatchObject({ forward: true, retelling: false });
    expect(judge('wren stood on the bridge').measures).toMatchObject({ forward: false, retelling: true });
  });

  test('a clue grounds it, a reason of one’s own does not', () => {
    const clue = judge('the bridge will break because it shakes and boards are gone');
    const own = judge('a shark comes because sharks are scary');
    expect(clue.value).toBe('grounded');
    expect(own.value).toBe('not grounded');
    expect(clue.measures.grounded).toBeGreaterThan(own.measures.grounded);
  });

  test.each([
    ['no next part', 'the bridge will break', undefined, null],
    ['it stands there', 'she runs across the bridge and grabs the goat', next, 'came true'],
    ['nothing of it stands there', 'a helicopter picks up her uncle', next, 'off track'],
    ['a "not" in the claim: nothing is said', 'the bridge will not break', next, null],
    ['a retelling', 'two boards were gone', next, null],
    ['nothing definite', 'something bad will happen', next, null],
  ])('outcome: %s', (_, text, part, outcome) => {
    expect(judge(text, part === undefined ? {} : { next: part }).measures.outcome).toBe(outcome);
  });

  test('a "not" in the reason turns no outcome round', () => {
    const { measures } = judge('she runs across and grabs the goat because it cant swim', { next });
    expect(measures.negated).toBe(false);
    expect(measures.outcome).toBe('came true');
  });

  test('the clue is shown in the text', () => {
    const { reasons } = judge('the goat will fall in because two boards are gone');
    const clue = reasons.find(({ rule }) => rule === 'clue in the text');
    expect(clue?.place && segment.slice(clue.place.start, clue.place.end)).toBe(
      'Two boards were already gone.',
    );
  });
});

describe('cues', () => {
  test.each(predictCues)('$name: "$yes", and not "$no"', ({ pattern, yes, no }) => {
    expect(pattern.test(yes)).toBe(true);
    expect(pattern.test(no)).toBe(false);
  });
});
