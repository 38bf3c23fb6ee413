import type { ClarifyJudgement } from '../../shared/judgements.js';
import type { Token } from '../text/analysis.js';

type Trouble = ClarifyJudgement['measures']['trouble'];

const pronouns = new Set(
  'it they them he she him her his hers their theirs its this that these those who which one ones we us you'.split(
    ' ',
  ),
);
const longestPhrase = 5;

/** "I get it all" and the like: nothing is named. */
const nothing =
  /^\W*(?:i (?:get|got|understand|understood|know|knew) (?:it|this|them|everything|every ?word|all)(?: all)?|nothing(?: (?:was|is) hard)?|none|no(?:pe|thing)?|n\/?a|idk|everything (?:was|is) (?:easy|clear|ok|fine)|(?:it|this) (?:was|is) (?:easy|all easy)|no (?:hard )?words?|all (?:good|clear)|i didn'?t have (?:any|trouble).*)\W*$/;

/** Whether a text says that there was nothing to clarify. */
export function saysNothing(plain: string): boolean {
  return nothing.test(plain);
}

/** The kind of trouble, by what is named: a small word that stands for something, one word, a few words, or a whole thought. */
export function troubleOf(named: readonly Token[], found: boolean, plain: string): Trouble {
  const only = named[0];
  if (!only) return /\b(why|how come|part|idea|sentence|paragraph)\b/.test(plain) ? 'idea' : null;
  if (named.length === 1) return pronouns.has(only.lower) ? 'pronoun' : 'word';
  if (named.length <= longestPhrase && found) return 'phrase';
  return 'idea';
}
