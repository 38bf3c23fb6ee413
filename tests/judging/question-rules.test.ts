import { describe, expect, it } from 'vitest';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { judgeQuestion } from '../../src/judging/judge-question.js';
import { asking, asksBy } from '../../src/judging/question-asks.js';
import { marks, openings } from '../../src/judging/question-form.js';
import { signals } from '../../src/judging/question-general.js';
import { questionLevel, type LevelGround } from '../../src/judging/question-level.js';
import { readWording } from '../../src/judging/question-wording.js';
import { makeTools } from '../../src/judging/tools.js';

const tools = makeTools(readLexicon());
const segment =
  'The lamp in the old tower went out on the first night of winter. Siskin climbed the stairs because nobody else would go. ' +
  'At the top she found that a gull had broken the glass, and snow lay on the wick. She hung her own red scarf over the hole and lit the lamp again. ' +
  'In the morning four boats lay safe in the harbour.';
const ask = (text: string, more: { answer?: string; peers?: readonly string[] } = {}) =>
  judgeQuestion({ kind: 'question', segment, text, ...more }, tools);

describe('every rule on wording matches its example and not the other', () => {
  it.each([...openings, ...marks, ...signals, ...asking].map((rule) => [rule.name, rule] as const))(
    '%s',
    (_name, { pattern, example, not }) => {
      expect(example).toMatch(pattern);
      expect(not).not.toMatch(pattern);
    },
  );
});

describe('what asks', () => {
  it.each([
    ['why did siskin climb the stairs'],
    ['who lit the lamp'],
    ['wat broke the glass'],
    ['did she find a gull up there'],
    ['the gull, what did it do'],
    ['I wonder why nobody else would go'],
    ['were did the boats go'],
    ['how many boats'],
  ])('%s: asks, with no question mark', (text) => {
    expect(ask(text).measures.isQuestion).toBe(true);
  });

  it.each([
    ['the lamp went out'],
    ['i dont get the scarf bit'],
    ['idk'],
    ['what a brave girl'],
    ['lamp'],
    [''],
    ['I know why she went'],
  ])('%s: asks nothing, so it is level 0 and unsure', (text) => {
    expect(ask(text)).toMatchObject({
      level: 0,
      value: 'unsure',
      measures: { isQuestion: false, relationship: null },
    });
  });
});

describe('spelling does not count against the thought', () => {
  it.each([
    ['why did siskin climb the stairs', 'wy did siskin clime the stares'],
    ['who broke the glass in the tower', 'hoo broke the glas in the towwer'],
    ['how did she feel when the lamp was lit again', 'how did she feel wen the lamp was lit agen'],
    ['where were the boats in the morning', 'were were the botes in the mourning'],
  ])('%s', (good, misspelt) => {
    const [a, b] = [ask(good), ask(misspelt)];
    expect(b.measures.isQuestion).toBe(true);
    expect(Math.abs(a.measures.inferential - b.measures.inferential)).toBeLessThan(0.15);
  });

  it('question words are read as they were meant', () => {
    const wording = readWording(tools.analyse('wat wud hapen'), tools.analyse(segment), tools);
    expect(wording.plain).toBe('what would happen');
    expect(asksBy('wat wud hapen', wording)).not.toBeNull();
  });
});

describe('reasons', () => {
  it('say in which places they hold, within the texts', () => {
    for (const text of [
      'who broke the glass',
      'why did nobody else go',
      'have you ever been in a tower',
      'how did she feel',
    ]) {
      const { reasons } = ask(text);
      expect(reasons.length).toBeGreaterThan(0);
      expect(reasons.length).toBeLessThanOrEqual(6);
      for (const { place } of reasons) {
        if (place === null) continue;
        const length = place.in === 'segment' ? segment.length : text.length;
        expect(place.start).toBeGreaterThanOrEqual(0);
        expect(place.end).toBeGreaterThan(place.start);
        expect(place.end).toBeLessThanOrEqual(length);
      }
    }
  });

  it('tell a run of the writer’s words', () => {
    const { reasons, measures, level } = ask(
      'why did she find that a gull had broken the glass, and snow lay on the wick?',
    );
    expect(measures.copied).toBeGreaterThan(0.5);
    expect(reasons[0]?.rule).toBe('word for word from the text');
    expect(level).toBe(1);
  });

  it('tell staff of a question that is another pupil’s', () => {
    const text = 'why did siskin have to use her own red scarf to keep the snow off the wick';
    expect(ask(text, { peers: [text] }).reasons.map(({ rule }) => rule)).toContain(
      "like another pupil's question",
    );
    expect(ask(text, { peers: ['who lit it'] }).reasons.map(({ rule }) => rule)).not.toContain(
      "like another pupil's question",
    );
  });
});

describe('the level of a question, by the tutor’s table (common practice, no source)', () => {
  const detail: LevelGround = {
    isQuestion: true,
    label: 'literal',
    relationship: 'right there',
    onTopic: 1,
    copied: 0,
    mainIdea: 0,
    manner: false,
    evidence: null,
  };
  it.each<[string, Partial<LevelGround>, number | null]>([
    ['asks nothing', { isQuestion: false }, 0],
    ['has nothing to do with the text', { onTopic: 0, relationship: 'on my own' }, 0],
    ['a detail', {}, 1],
    ['copied wording', { copied: 0.6, label: 'inferential', relationship: 'author and me' }, 1],
    ['one’s own life', { relationship: 'on my own', label: 'inferential' }, 1],
    ['a literal question on the main idea is no worse than another', { mainIdea: 0.7 }, 2],
    ['joins two places', { relationship: 'think and search' }, 2],
    ['needs an inference', { relationship: 'author and me', label: 'inferential' }, 2],
    ['unsure is no try', { label: 'unsure' }, null],
    [
      'a why without the asker’s own answer',
      { relationship: 'author and me', label: 'inferential', manner: true },
      2,
    ],
    [
      'a why with evidence',
      { relationship: 'author and me', label: 'inferential', manner: true, evidence: 0.7 },
      3,
    ],
    [
      'a why with an answer that the text does not bear out',
      { relationship: 'author and me', label: 'inferential', manner: true, evidence: 0.1 },
      2,
    ],
  ])('%s', (_name, change, level) => {
    expect(questionLevel({ ...detail, ...change })).toBe(level);
  });
});

describe('the answer decides', () => {
  it('an answer in the text’s own words makes a why literal', () => {
    const answered = ask('why did siskin climb the stairs', { answer: 'because nobody else would go' });
    expect(answered.value).toBe('literal');
  });
  it('an answer that the text nowhere says makes it inferential', () => {
    const question = 'why do you think siskin wanted to help the boats';
    const answered = ask(question, { answer: 'she was kind and knew people at sea could get hurt' });
    expect(answered.value).toBe('inferential');
  });
  it('one word that the text nowhere says is never taken for literal', () => {
    for (const answer of ['proud', 'happy', 'relieved']) {
      const answered = ask('how did siskin feel when she saw the boats', { answer });
      expect(answered.value).not.toBe('literal');
      expect(answered.measures.inferential).toBeGreaterThan(0.5);
    }
  });
});

it('a judgement is the same each time and says which rules and weights made it', () => {
  expect(ask('who broke the glass')).toEqual(ask('who broke the glass'));
  expect(ask('who broke the glass').version).toMatch(/^\d+\.\d+$/);
});
