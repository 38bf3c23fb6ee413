import type { Sentence, Token } from './alarm-hearing.js';

/** Words side by side, each a concept (capitals) or a word (small letters). */
type Run = readonly string[];

interface Step {
  readonly runs: readonly Run[];
  /** At most so many tokens stand between this step and the one before. */
  readonly gap: number;
}

/** Steps in order inside one sentence. */
export interface Pattern {
  readonly source: string;
  readonly steps: readonly Step[];
  /** Begins at the sentence's first word. */
  readonly first: boolean;
}

const usual = 3;
const far = 60;

/**
 * Reads a pattern: "KIN HARM ME" with at most three words between steps, ".." for any number of them, "a_b" for words side
 * by side, "a|b_c" for either, "^_" before what begins the sentence, "$" for its end.
 */
export function patternOf(text: string): Pattern {
  const source = text.trim();
  const steps: Step[] = [];
  let gap = usual;
  for (const part of source.replace(/^\^_/u, '').split(/\s+/u)) {
    if (part === '..') {
      gap = far;
      continue;
    }
    steps.push({ runs: part.split('|').map((run) => run.split('_')), gap });
    gap = usual;
  }
  return { source, steps, first: source.startsWith('^_') };
}

/** Token after a run that begins here, or -1. */
function after(run: Run, tokens: readonly Token[], from: number): number {
  let at = from;
  for (const one of run) {
    const token = tokens[at];
    if (one === '$') {
      if (token !== undefined) return -1;
    } else if (token?.word === one) at += 1;
    else if (token?.concepts.has(one) === true) at += token.length;
    else return -1;
  }
  return at;
}

function follow(steps: readonly Step[], tokens: readonly Token[], from: number, step: number): number {
  const next = steps[step];
  if (next === undefined) return from;
  const last = Math.min(from + (step === 0 ? 0 : next.gap), tokens.length);
  for (let here = from; here <= last; here += 1)
    for (const run of next.runs) {
      const to = after(run, tokens, here);
      const end = to < 0 ? -1 : follow(steps, tokens, to, step + 1);
      if (end >= 0) return end;
    }
  return -1;
}

function possible(pattern: Pattern, has: ReadonlySet<string>): boolean {
  return pattern.steps.every(({ runs }) =>
    runs.some((run) => run.every((one) => one === '$' || has.has(one))),
  );
}

/** Token indices of what a pattern found, end exclusive. */
export interface Match {
  readonly from: number;
  readonly to: number;
}

/** First place of a pattern in a sentence, as token indices (end exclusive), or null. */
export function findPattern(pattern: Pattern, { tokens, has }: Sentence): Match | null {
  if (!possible(pattern, has)) return null;
  const last = pattern.first ? 1 : tokens.length;
  for (let from = 0; from < last; from += 1) {
    const to = follow(pattern.steps, tokens, from, 0);
    if (to >= 0) return { from, to };
  }
  return null;
}
