import { z } from 'zod';
import type { JudgeInput, Judgement, Judges, Reason } from '../../shared/judgements.js';
import type { Place } from '../../shared/text.js';
import { explain } from '../coaching/explain.js';
import { feedback, feedbackLine } from '../coaching/feedback.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { findClue } from '../text/clues.js';
import { hardWordDifficulty } from '../text/hard-words.js';
import { readLevel } from '../text/level.js';

const text = z.string().transform((raw) => raw.toWellFormed());
const maybeText = text.nullish().transform((value) => value ?? undefined);
const maybeOffset = z
  .number()
  .int()
  .nonnegative()
  .nullish()
  .transform((value) => value ?? undefined);

const shapes = {
  question: z.object({ kind: z.literal('question'), segment: text, text, answer: maybeText }),
  'sum-up': z.object({ kind: z.literal('sum-up'), segment: text, text }),
  clarify: z.object({ kind: z.literal('clarify'), segment: text, word: text, text, offset: maybeOffset }),
  predict: z.object({ kind: z.literal('predict'), segment: text, text, next: maybeText }),
  answer: z.object({
    kind: z.literal('answer'),
    segment: text,
    question: text,
    text,
    reference: z
      .array(text)
      .nullish()
      .transform((value) => value ?? undefined),
  }),
  level: z.object({ kind: z.literal('level'), text }),
  'hard-word': z.object({ kind: z.literal('hard-word'), segment: text, word: text, offset: maybeOffset }),
  screen: z.object({
    kind: z.literal('screen'),
    text,
    passage: maybeText,
    names: z
      .array(text)
      .nullish()
      .transform((value) => value ?? undefined),
  }),
} as const;
type Kind = keyof typeof shapes;
type Line = { [K in Kind]: z.infer<(typeof shapes)[K]> }[Kind];

/** Drops keys whose value is undefined, which exact optional types ask for. */
function present<T extends object>(value: T): T {
  const kept: Partial<T> = { ...value };
  for (const [name, one] of Object.entries(value)) if (one === undefined) delete kept[name as keyof T];
  return kept as T;
}

function readLine(value: unknown): Line | string {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return 'Cannot judge this line, expected a JSON object, got something else';
  }
  const kind = (value as { kind?: unknown }).kind;
  if (typeof kind !== 'string' || !Object.hasOwn(shapes, kind)) {
    return `Cannot judge this line, expected kind to be one of ${Object.keys(shapes).join(', ')}`;
  }
  const read = shapes[kind as Kind].safeParse(value);
  if (read.success) return present<Line>(read.data);
  const issue = read.error.issues[0];
  const at = issue?.path.join('.') || 'the line';
  const [, expected = 'something else', got = 'this'] =
    /expected (.+), received (.+)$/u.exec(issue?.message ?? '') ?? [];
  return `Cannot judge this line, expected ${at} to be ${expected}, got ${got}`;
}

function reasonsOf(reasons: readonly Reason[], input: JudgeInput): readonly object[] {
  const texts = {
    segment: input.segment,
    text: input.text,
    ...('next' in input && input.next !== undefined ? { next: input.next } : {}),
    ...('answer' in input && input.answer !== undefined ? { answer: input.answer } : {}),
  };
  return reasons.map((reason) => ({ rule: reason.rule, place: reason.place, words: explain(reason, texts) }));
}

/** The named fields of a judgement, each kind as the command line promises them. */
function measuresOf(judgement: Judgement): object {
  switch (judgement.kind) {
    case 'question': {
      const { isQuestion, inferential, relationship, onTopic, mainIdea, answerable } = judgement.measures;
      return { isQuestion, inferential, label: judgement.value, relationship, onTopic, mainIdea, answerable };
    }
    case 'sum-up': {
      const { content, wording, sentences, words, coverage, copied, onTopic } = judgement.measures;
      return { content, wording, sentences, words, coverage, copied, onTopic };
    }
    case 'clarify': {
      const { found, misspelt, fit, clue, trouble, fixUp } = judgement.measures;
      return { found, misspelt, fit, clue, trouble, fixUp, value: judgement.value };
    }
    case 'predict': {
      const { grounded, outcome } = judgement.measures;
      return { grounded, outcome };
    }
    case 'answer': {
      const { fits, negated } = judgement.measures;
      return { fits, negated };
    }
  }
}

function judged(input: JudgeInput, judges: Judges): object {
  const judgement = judges.judge(input);
  const about = {
    text: input.text,
    segment: input.segment,
    goal: input.kind === 'answer' ? null : input.kind,
    register: '8-10',
    help: 'guided',
    ...('word' in input ? { word: input.word } : {}),
  } as const;
  return {
    kind: judgement.kind,
    ...measuresOf(judgement),
    level: judgement.level,
    reasons: reasonsOf(judgement.reasons, input),
    feedback: feedbackLine(feedback(judgement, about)),
  };
}

function answer(line: Line, judges: Judges, lexicon: Lexicon): object {
  switch (line.kind) {
    case 'level': {
      const { grade, range, ease, formulas } = readLevel(line.text, lexicon);
      return { kind: line.kind, grade, range, ease, formulas };
    }
    case 'hard-word':
      return {
        kind: line.kind,
        difficulty: hardWordDifficulty(line.word, line.segment, line.offset, lexicon),
        clue: findClue(line.word, line.segment, line.offset, lexicon),
      };
    case 'screen': {
      const { hold, alarm, findings } = judges.screen(line as Parameters<Judges['screen']>[0]);
      const places = findings.map(({ kind, rule, place }: { kind: string; rule: string; place: Place }) => ({
        kind,
        rule,
        place,
      }));
      return { kind: line.kind, hold, alarm, findings: places };
    }
    case 'question':
    case 'sum-up':
    case 'clarify':
    case 'predict':
    case 'answer':
      return judged(line as JudgeInput, judges);
  }
}

/** Answers one line of `judge`: the named fields, or `{error: message}` for a bad line. */
export function judgeLine(
  value: unknown,
  judges: Judges,
  lexicon: Lexicon,
): { readonly answer: object } | { readonly error: string } {
  const line = readLine(value);
  return typeof line === 'string' ? { error: line } : { answer: answer(line, judges, lexicon) };
}
