import type { ClueKind } from '../../shared/text.js';

/** A rule that finds the help with a word by a signal. In `pattern` the word stands as `W`; the help is the group `clue`. */
export interface ClueRule {
  readonly name: string;
  /** `form`: told by the form of what is found: a list is an example, a word or two a synonym, more a definition. */
  readonly kind: ClueKind | 'form';
  readonly pattern: RegExp;
  /** A sentence that it finds help in, the word between braces, with the help. */
  readonly example: readonly [string, string];
  /** A sentence in which it must find none. */
  readonly not: string;
}

/** The mark that stands for the word; no text holds it. */
export const wordMark = '\u0001';

const pieces: Readonly<Record<string, string>> = {
  W: wordMark,
  /** Where a sentence begins. */
  BEGIN: '(?<=^|[.!?]["”’\']?\\s+)',
  /** To the end of the sentence. */
  REST: '(?<clue>[^.;!?]+)',
  /** To the next comma. */
  PART: '(?<clue>[^,.;!?—–]+)',
  /** At most five words within the clause; at most eight. */
  NEAR: '(?: [^\\s,.;!?]+){0,5}',
  LATER: '(?:[^\\s.;!?]+ ){0,8}?',
  /** Anything within the sentence, within the clause. */
  SOME: '[^.!?]*?',
  IN: '[^,.;!?]*?',
  KIND: '(?:an?|any|all|one|some|someone|somebody|something|people|animals|plants|tools|things|the|when|where|how)',
};

/** Builds a pattern from its pieces, written in capitals. */
function pattern(source: string): RegExp {
  return new RegExp(
    source.replace(/BEGIN|NEAR|LATER|KIND|REST|PART|SOME|IN|W/g, (name) => pieces[name] ?? name),
    'diu',
  );
}

/** Makes a rule. */
export function rule(
  kind: ClueRule['kind'],
  name: string,
  source: string,
  example: readonly [string, string],
  not: string,
): ClueRule {
  return { name, kind, pattern: pattern(source), example, not };
}
