/** The four strategies in the order in which they are usually introduced (common practice, no source; the order is a setting). */
export const strategies = ['question', 'clarify', 'sum-up', 'predict'] as const;
export type Strategy = (typeof strategies)[number];

/** What a pupil can do on a segment; an answer replies to a question, an addition to a public sum-up. */
export const doings = ['predict', 'question', 'answer', 'clarify', 'sum-up', 'add'] as const;
export type Doing = (typeof doings)[number];

/** How a piece of evidence was given; kinds are never pooled. */
export const givens = ['typed', 'said', 'scribed', 'heard'] as const;
export type Given = (typeof givens)[number];

/** The two registers in which children are spoken to. */
export const registers = ['8-10', '11-14'] as const;
export type Register = (typeof registers)[number];

/** How much help a pupil gets with a strategy, from most to least (gradual release, Pearson & Gallagher 1983). */
export const helps = ['modelled', 'shared', 'guided', 'independent'] as const;
export type Help = (typeof helps)[number];

/** The four question-answer relationships (Raphael 1986; Raphael & Au 2005). */
export const relationships = ['right there', 'think and search', 'author and me', 'on my own'] as const;
export type Relationship = (typeof relationships)[number];

/** A level of a try, 0 to 3, as the tutor's table has it. */
export type Level = 0 | 1 | 2 | 3;

/** What a pupil can do about a hard place, in the trade's words (common practice, no source). */
export const fixUps = [
  'read it again',
  'read on',
  'slow down',
  'break the word into parts',
  'look for a clue beside it',
  'try another word in its place',
  'look at the picture',
  'use what I know',
  'find who "it" or "they" is',
  'say it in my own words',
  'ask',
  'look it up',
] as const;
export type FixUp = (typeof fixUps)[number];
