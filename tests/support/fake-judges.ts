import { Fault } from '../../shared/fault.js';
import type { Finding, JudgeInput, Judgement, Judges, Screening } from '../../shared/judgements.js';
import type { Level } from '../../shared/strategies.js';
import type { PassageReading } from '../../shared/text.js';

/** The level that a text asks for by a mark such as "#0"; 2 without one, null for "#?". */
function levelIn(text: string): Level | null {
  const mark = /#([0-3?])/u.exec(text)?.[1];
  if (mark === '?') return null;
  return mark === undefined ? 2 : (Number(mark) as Level);
}

const base = { probability: 0.8, reasons: [], version: 'fake-1' } as const;

/** Judges by marks in the text, so that a rule's test hands in the judgement that it needs. */
function judge(input: JudgeInput): Judgement {
  const level = levelIn(input.text);
  switch (input.kind) {
    case 'question': {
      const unsure = input.text.includes('#?') && input.answer === undefined;
      return {
        ...base,
        kind: 'question',
        level: unsure ? 1 : (level ?? 2),
        value: unsure ? 'unsure' : input.text.startsWith('Why') ? 'inferential' : 'literal',
        measures: {
          isQuestion: level !== 0,
          inferential: 0.5,
          relationship: null,
          onTopic: 1,
          mainIdea: 1,
          answerable: 1,
          copied: 0,
        },
      };
    }
    case 'sum-up':
      return {
        ...base,
        kind: 'sum-up',
        level,
        value: 'on topic',
        measures: {
          content: 1,
          wording: 1,
          sentences: 1,
          words: 8,
          coverage: 1,
          copied: 0,
          onTopic: 1,
          copiedFromPeers: 0,
          gist: input.gist === undefined ? null : 1,
        },
      };
    case 'clarify': {
      const start = input.word === '' ? -1 : input.segment.indexOf(input.word);
      const found = start < 0 ? null : { start, end: start + input.word.length };
      return {
        ...base,
        kind: 'clarify',
        level,
        value: 'names the trouble',
        measures: { found, misspelt: false, fit: null, clue: null, trouble: 'word', fixUp: null },
      };
    }
    case 'predict':
      return {
        ...base,
        kind: 'predict',
        level,
        value: 'grounded',
        measures: {
          grounded: 1,
          outcome: input.next === undefined ? null : 'came true',
          forward: true,
          retelling: false,
          negated: false,
        },
      };
    case 'answer':
      return {
        ...base,
        kind: 'answer',
        level,
        value: 'fits',
        measures: { fits: 1, evidence: 1, negated: false, speaksToQuestion: 1 },
      };
    default:
      return input satisfies never;
  }
}

/** Holds what says "rude" (hurtful), "phone" (personal) or "buy now" (flood); alarms at "unsafe at home". */
function screen({ text }: { readonly text: string }): Screening {
  const marks = [
    ['rude', 'hurtful'],
    ['phone', 'personal'],
    ['buy now', 'flood'],
    ['unsafe at home', 'alarm'],
  ] as const;
  const findings = marks.flatMap(([mark, kind]): Finding[] => {
    const start = text.indexOf(mark);
    return start < 0 ? [] : [{ kind, rule: mark, place: { in: 'text', start, end: start + mark.length } }];
  });
  return { hold: findings.length > 0, alarm: findings.some(({ kind }) => kind === 'alarm'), findings };
}

/** Cuts at blank lines. */
function read(text: string, options: { readonly title?: string; readonly grade?: number }): PassageReading {
  const parts = text.split('\n\n').filter((part) => part.trim() !== '');
  if (parts.length === 0) {
    throw new Fault(
      'bad passage',
      'Cannot read this passage, expected some text, got none',
      'Paste the text.',
    );
  }
  return {
    title: options.title ?? 'A text',
    level: { grade: options.grade ?? null, range: null, ease: null, formulas: {}, words: 0, sentences: 0 },
    segments: parts.map((part, nth) => ({
      text: part,
      sentences: [{ start: 0, end: part.length }],
      keyTerms: [],
      hardWords: [{ word: part.split(' ')[0] ?? '', start: 0, difficulty: 0.5, clue: null }],
      topicSentence: null,
      questions: [{ text: `What is part ${nth + 1} about?`, relationship: 'think and search' }],
    })),
  };
}

/** Judges for tests of the practice: nothing real is judged. */
export const fakeJudges: Judges = { judge, screen, read };
