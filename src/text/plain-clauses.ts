import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';

/** A sentence's main clause in one piece: who or what, the verb, the rest; words as written, the article of the subject in lower case. */
export interface PlainClause {
  readonly sentence: number;
  readonly subject: string;
  /** Whether the subject is a name. */
  readonly name: boolean;
  readonly plural: boolean;
  readonly verb: string;
  /** Base form of the verb; "be" for was, were, is, are. */
  readonly base: string;
  readonly past: boolean;
  readonly rest: string;
  /** What stands behind "because", null where nothing does. */
  readonly because: string | null;
}

const mostWords = 14;
const leastRest = 2;
const be: Readonly<Record<string, boolean>> = { was: true, were: true, is: false, are: false };
const articles = new Set(['the', 'a', 'an', 'some', 'many', 'most', 'all', 'these', 'those', 'two', 'three']);
const unclear = /["“”?!:;]|\b(?:he|she|it|they|we|i|you|this|that|these|those|him|them|there|here)\b/i;

/** Whether a word is a verb in the past as it stands, with its base: "walked", "took". */
function pastBase(lower: string, lexicon: Lexicon): string | null {
  const base = lexicon.bases(lower).find((one) => one !== lower && lexicon.partShares(one).verb >= 0.5);
  if (base === undefined || /(?:ing|s|en|wn)$/.test(lower)) return null;
  return base;
}

interface Verb {
  readonly base: string;
  readonly past: boolean;
}

function verbOf(lower: string, plural: boolean, lexicon: Lexicon): Verb | null {
  if (Object.hasOwn(be, lower)) return { base: 'be', past: be[lower] ?? false };
  const past = pastBase(lower, lexicon);
  if (past !== null) return { base: past, past: true };
  const present = plural && lexicon.partShares(lower).verb >= 0.8 && lexicon.bases(lower)[0] === lower;
  return present ? { base: lower, past: false } : null;
}

/** The words of the subject at the start of a sentence: a name, or an article with one or two words, or a plural noun. */
function subjectLength(tokens: readonly Token[], lexicon: Lexicon): number {
  const [first, second, third] = tokens;
  if (!first || !second) return 0;
  const noun = (token: Token | undefined) =>
    token !== undefined && lexicon.partShares(token.lower).noun > 0.6;
  const verb = (token: Token | undefined, plural: boolean) =>
    token !== undefined && verbOf(token.lower, plural, lexicon) !== null;
  const many = (token: Token) => token.lower.endsWith('s') && lexicon.bases(token.lower)[0] !== token.lower;
  if (first.name && verb(second, false)) return 1;
  if (articles.has(first.lower)) {
    if (noun(second) && verb(third, many(second))) return 2;
    if (third && second.content && noun(third) && verb(tokens[3], many(third))) return 3;
    return 0;
  }
  return noun(first) && many(first) && verb(second, true) ? 1 : 0;
}

function readClause(
  analysis: Analysis,
  n: number,
  tokens: readonly Token[],
  lexicon: Lexicon,
): PlainClause | null {
  const length = subjectLength(tokens, lexicon);
  const [first, verb, last] = [tokens[0], tokens[length], tokens[length - 1]];
  const end = analysis.sentences[n]?.end ?? 0;
  if (length === 0 || !first || !verb || !last) return null;
  const plural = !first.name && last.lower.endsWith('s') && lexicon.bases(last.lower)[0] !== last.lower;
  const form = verbOf(verb.lower, plural, lexicon);
  if (!form) return null;
  const behind = analysis.text.slice(verb.end, end).replace(/[.\s]+$/, '');
  const [main = '', because] = behind.split(/,? because (?!of\b)/);
  const rest = (main.split(/[,—–(]| so (?!that)| but | when | while | until /)[0] ?? '').trim();
  const whole = analysis.text.slice(first.start, verb.start);
  if (unclear.test(`${whole} ${rest}`) || /\n/.test(behind) || rest.split(/\s+/).length < leastRest)
    return null;
  const written = analysis.text.slice(first.start, last.end);
  return {
    sentence: n,
    subject: first.name ? written : written.charAt(0).toLowerCase() + written.slice(1),
    name: first.name,
    plural,
    verb: verb.lower,
    ...form,
    rest,
    because: because ?? null,
  };
}

/** The clauses of a text that are plain enough to ask about: a clear subject first, no speech, no pronoun that points elsewhere. */
export function plainClauses(analysis: Analysis, lexicon: Lexicon): readonly PlainClause[] {
  return analysis.sentences.flatMap((_, n) => {
    const tokens = analysis.tokens.filter(({ sentence }) => sentence === n);
    const clause = readClause(analysis, n, tokens, lexicon);
    return clause && `${clause.subject} ${clause.rest}`.split(/\s+/).length <= mostWords ? [clause] : [];
  });
}
