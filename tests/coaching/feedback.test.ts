import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type {
  AnswerJudgement,
  ClarifyJudgement,
  Judgement,
  PredictJudgement,
  QuestionJudgement,
  SumUpJudgement,
} from '../../shared/judgements.js';
import { clueKinds } from '../../shared/text.js';
import { helps, registers, relationships, strategies, type Level } from '../../shared/strategies.js';
import { feedback, feedbackLine, type FeedbackAbout } from '../../src/coaching/feedback.js';
import { feedbackWords } from '../../src/coaching/feedback-words.js';
import { sentencesIn, wordsIn } from './reading-words.js';

const segment =
  'The heron stood in the reeds all morning. A heron can wait for an hour without moving. Then the heron struck, and a fish was gone.';

const common = { probability: null, reasons: [], version: 'test' } as const;
const question = (m: Partial<QuestionJudgement['measures']> = {}, rest: Partial<QuestionJudgement> = {}) =>
  ({
    kind: 'question',
    level: 2,
    value: 'literal',
    measures: {
      isQuestion: true,
      inferential: 0.2,
      relationship: 'right there',
      onTopic: 1,
      mainIdea: 0,
      answerable: 1,
      copied: 0,
      ...m,
    },
    ...common,
    ...rest,
  }) satisfies QuestionJudgement;
const sumUp = (m: Partial<SumUpJudgement['measures']> = {}, rest: Partial<SumUpJudgement> = {}) =>
  ({
    kind: 'sum-up',
    level: 2,
    value: 'on topic',
    measures: {
      content: 0.5,
      wording: 0.5,
      sentences: 1,
      words: 12,
      coverage: 0.5,
      copied: 0,
      onTopic: 1,
      copiedFromPeers: 0,
      gist: null,
      ...m,
    },
    ...common,
    ...rest,
  }) satisfies SumUpJudgement;
const clarify = (m: Partial<ClarifyJudgement['measures']> = {}, rest: Partial<ClarifyJudgement> = {}) =>
  ({
    kind: 'clarify',
    level: 2,
    value: 'names the trouble',
    measures: {
      found: { start: 23, end: 28 },
      misspelt: false,
      fit: null,
      clue: null,
      trouble: 'word',
      fixUp: null,
      ...m,
    },
    ...common,
    ...rest,
  }) satisfies ClarifyJudgement;
const predict = (m: Partial<PredictJudgement['measures']> = {}) =>
  ({
    kind: 'predict',
    level: 2,
    value: 'grounded',
    measures: { grounded: 1, outcome: null, forward: true, retelling: false, negated: false, ...m },
    ...common,
  }) satisfies PredictJudgement;
const answer = (m: Partial<AnswerJudgement['measures']> = {}, rest: Partial<AnswerJudgement> = {}) =>
  ({
    kind: 'answer',
    level: 2,
    value: 'fits',
    measures: { fits: 1, evidence: 1, negated: false, speaksToQuestion: 1, ...m },
    ...common,
    ...rest,
  }) satisfies AnswerJudgement;

const about = (rest: Partial<FeedbackAbout> = {}): FeedbackAbout => ({
  text: 'why did the heron wait',
  segment,
  goal: null,
  register: '8-10',
  help: 'guided',
  ...rest,
});

describe('a question', () => {
  test('that asks nothing is to become one', () => {
    expect(feedback(question({ isQuestion: false }), about()).next).toBe('Now turn it into a question.');
  });
  test('whose answer stands in the text is not worse: the aim is the big idea', () => {
    const told = feedback(question(), about({ text: 'where did the heron stand' }));
    expect(told).toEqual({
      good: 'You asked about “heron” in the text.',
      next: 'Next, try for the big idea.',
      prompt: 'What is this part most about? Ask why.',
    });
  });
  test('in the writer’s words is to be told to a friend', () => {
    const told = feedback(question({ copied: 0.8 }), about());
    expect(told.next).toBe('These words are the writer’s.');
    expect(told.prompt).toBe('Tell it to a friend. Ask it your own way.');
  });
  test('that the judge is unsure of is asked about, not told', () => {
    expect(feedback(question({}, { value: 'unsure' }), about()).next).toBe(
      'Where would a friend find the answer?',
    );
  });
  test('gets no stem where the pupil works alone', () => {
    const { prompt } = feedback(question(), about({ help: 'independent' }));
    expect(prompt).toBe('What is this part most about?');
  });
});

describe('a sum-up', () => {
  test('without a gist hears of a word that the text says often, never that something was missed', () => {
    const told = feedback(sumUp(), about({ text: 'A bird waits a very long time and catches its food' }));
    expect(told.next).toBe('The text says “heron” often.');
    expect(told.prompt).toBe('Does your sum-up need it?');
  });
  test('is praised as short and own only when it is both', () => {
    expect(feedback(sumUp(), about()).good).toBe('It is short and in your own words.');
    expect(feedback(sumUp({ copied: 0.4 }), about()).good).toBe('You kept it short.');
    expect(feedback(sumUp({ copied: 0.9, words: 60, sentences: 5 }), about()).good).toBe(
      'You told about “heron” from the text.',
    );
  });
  test('that is long is to be made shorter', () => {
    expect(feedback(sumUp({ words: 60, sentences: 5 }), about()).next).toBe('Next, try to make it shorter.');
  });
});

describe('clarifying', () => {
  test('a meaning that nothing confirms is to be read in the sentence', () => {
    const told = feedback(clarify({}, { value: 'read it again' }), about());
    expect(told.next).toBe('Read it in the sentence.');
    expect(told.prompt).toBe('Does it still make sense?');
  });
  test('the word is shown as the text spells it, not as the pupil does', () => {
    const told = feedback(clarify({ misspelt: true }), about({ text: 'reads means plants', word: 'reedz' }));
    expect(told.good).toBe('You stopped at “reeds”. That is a good stop.');
    expect(feedbackLine(told)).not.toContain('reedz');
  });
  test('nothing hard: which word might a younger child ask about', () => {
    const told = feedback(
      clarify({ found: null, trouble: null }, { value: 'nothing yet', level: 0 }),
      about({ text: 'i get it all' }),
    );
    expect(told.next).toBe('Which word might a younger child ask about?');
  });
});

test('a prediction is never told whether it came true', () => {
  for (const outcome of ['came true', 'partly', 'off track'] as const) {
    expect(feedback(predict({ outcome }), about())).toEqual(feedback(predict(), about()));
  }
});

test('an answer that fits is to be shown in the text', () => {
  expect(feedback(answer(), about()).prompt).toBe('Tap the sentence that helped you.');
});

test('outside the one current goal there is thanks and one true thing, no step', () => {
  const told = feedback(sumUp(), about({ goal: 'question' }));
  expect(told).toEqual({ good: 'Thanks. It is short and in your own words.', next: '', prompt: '' });
  expect(feedback(answer(), about({ goal: 'question' })).next).not.toBe('');
  expect(feedback(answer(), about({ goal: 'predict' })).next).toBe('');
});

const share = fc.double({ min: 0, max: 1, noNaN: true });
const range = fc.constantFrom(null, { start: 4, end: 9 }, { start: 23, end: 28 }, { start: 0, end: 60 });
const level = fc.constantFrom<Level | null>(0, 1, 2, 3, null);
const anyJudgement: fc.Arbitrary<Judgement> = fc.oneof(
  fc
    .record({
      isQuestion: fc.boolean(),
      inferential: share,
      relationship: fc.constantFrom(...relationships, null),
      onTopic: share,
      mainIdea: share,
      answerable: share,
      copied: share,
    })
    .chain((m) =>
      fc
        .record({
          level,
          value: fc.constantFrom('literal' as const, 'inferential' as const, 'unsure' as const),
        })
        .map((rest) => question(m, rest)),
    ),
  fc
    .record({
      words: fc.nat(80),
      sentences: fc.nat(6),
      copied: share,
      gist: fc.option(share),
    })
    .chain((m) =>
      fc
        .record({ level, value: fc.constantFrom('on topic' as const, 'off topic' as const) })
        .map((rest) => sumUp(m, rest)),
    ),
  fc
    .record({
      found: range,
      fit: fc.option(share),
      clue: fc.option(
        fc
          .constantFrom(...clueKinds)
          .map((kind) => ({ kind, place: { in: 'segment' as const, start: 0, end: 3 } })),
      ),
      trouble: fc.constantFrom('word' as const, 'phrase' as const, 'pronoun' as const, 'idea' as const, null),
      fixUp: fc.constantFrom(null, 'read on'),
    })
    .chain((m) =>
      fc
        .record({
          level,
          value: fc.constantFrom(
            'fits' as const,
            'read it again' as const,
            'names the trouble' as const,
            'nothing yet' as const,
          ),
        })
        .map((rest) => clarify(m, rest)),
    ),
  fc
    .record({ grounded: share, forward: fc.boolean(), retelling: fc.boolean(), negated: fc.boolean() })
    .map((m) => predict(m)),
  fc
    .record({ evidence: share, speaksToQuestion: share })
    .chain((m) =>
      fc
        .constantFrom('fits' as const, 'not yet' as const, 'unsure' as const)
        .map((value) => answer(m, { value })),
    ),
);

const anyAbout = fc.record({
  text: fc.constantFrom(
    'why did the heron wait',
    'teh hreon wiats',
    '',
    'heron heron',
    '🐟',
    'an hour without moving',
  ),
  segment: fc.constantFrom(segment, '', 'A'),
  goal: fc.constantFrom(...strategies, null),
  register: fc.constantFrom(...registers),
  help: fc.constantFrom(...helps),
});

const spoken = Object.values(feedbackWords).flatMap((entry) =>
  ['11-14' in entry ? entry['11-14'] : entry['8-10'], entry['8-10']].map((words) =>
    words.split(/\{word\}/u).map((part) => part.trim()),
  ),
);

test('whatever the judgement, 40 words at most, sentences of 12 at most, every sentence from the catalogue', () => {
  fc.assert(
    fc.property(anyJudgement, anyAbout, (judgement, told) => {
      const said = feedback(judgement, told);
      const line = feedbackLine(said);
      expect(wordsIn(line).length).toBeLessThanOrEqual(40);
      for (const sentence of sentencesIn(line)) expect(wordsIn(sentence).length).toBeLessThanOrEqual(12);
      expect(said.good).not.toBe('');
      expect(line).not.toMatch(/\{|\b(?:teh|hreon|wiats|undefined|null)\b/u);
      for (const part of [said.good.replace(/^Thanks\. /u, ''), said.next, said.prompt]) {
        if (part === '') continue;
        expect(spoken.some((pieces) => pieces.every((piece) => part.includes(piece)))).toBe(true);
      }
      if (told.goal === null) expect([said.next, said.prompt]).not.toContain('');
    }),
    { numRuns: 2000 },
  );
});
