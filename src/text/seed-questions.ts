import type { HardWord, KeyTerm, SeedQuestion } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from './analysis.js';
import { plainClauses, type PlainClause } from './plain-clauses.js';

const mostOfAKind = 2;
/** Verbs of being and having, which nobody does for a reason. */
const states = new Set(['be', 'have', 'belong', 'seem', 'know', 'contain', 'become', 'mean', 'hear', 'see']);

/** "Why did the engineers wait?" for a clause whose cause the text gives. */
function whyStated({ subject, verb, base, past, plural, name, rest }: PlainClause): string {
  if (base === 'be') return `Why ${verb} ${subject} ${rest}?`;
  const helper = past ? 'did' : plural && !name ? 'do' : 'does';
  return `Why ${helper} ${subject} ${base} ${rest}?`;
}

/** "Who covered the sign with plastic?" for a clause about somebody with a name. */
function who({ verb, rest }: PlainClause): string {
  return `Who ${verb} ${rest}?`;
}

/** "Why do you think Wren covered the sign with plastic?" where the text doesn't say why. */
function whyThought({ subject, verb, rest }: PlainClause): string {
  return `Why do you think ${subject} ${verb} ${rest}?`;
}

/** Asked where no clause is plain enough to ask about: right for any text, and both aim at the main idea. */
const always = {
  literal: 'What is this part mostly about? Which words tell you so?',
  inferential: 'What would you tell a friend about this part first, and why?',
} as const;

function literal(clauses: readonly PlainClause[], words: readonly HardWord[]): readonly SeedQuestion[] {
  const stated = clauses.filter(({ because }) => because !== null).map(whyStated);
  const named = clauses.filter(({ name, base }) => name && base !== 'be').map(who);
  const meant = words
    .filter(({ clue }) => clue?.kind === 'definition' || clue?.kind === 'synonym')
    .map(({ word }) => `What does the word “${word.toLowerCase()}” mean in this part?`);
  const found = [...stated.slice(0, 1), ...named.slice(0, 1), ...meant.slice(0, 1)]
    .slice(0, mostOfAKind)
    .map((text): SeedQuestion => ({ text, relationship: 'right there' }));
  if (found.length > 0) return found;
  return [{ text: always.literal, relationship: 'think and search' }];
}

function inferential(clauses: readonly PlainClause[], segment: Analysis): readonly SeedQuestion[] {
  const open = clauses.filter(({ because, base }) => because === null && !states.has(base));
  const deeds = [...open.filter(({ name }) => name), ...open.filter(({ name }) => !name)];
  const asked = new Set(clauses.filter(({ name }) => name).slice(0, 1));
  // What "who" asks for would be given away by "why do you think Wren …", so another deed is taken where there is one.
  const deed = deeds.find((one) => !asked.has(one)) ?? deeds[0];
  const person = clauses.find(({ name, base }) => name && base !== 'be')?.subject;
  const speaks = /["“][^"“”]+[,.!?]["”]/.test(segment.text);
  const found = [
    ...(deed ? [whyThought(deed)] : []),
    ...(person !== undefined && speaks ? [`How do you think ${person} felt at the end of this part?`] : []),
  ];
  return (found.length > 0 ? found : [always.inferential]).map((text): SeedQuestion => ({
    text,
    relationship: 'author and me',
  }));
}

/** Questions that the bot could seed on a segment, marked as its own: literal ones first, then inferential ones. */
export function seedQuestions(
  segment: Analysis,
  terms: readonly KeyTerm[],
  words: readonly HardWord[],
  lexicon: Lexicon,
): readonly SeedQuestion[] {
  if (terms.length === 0 || segment.sentences.length === 0) return [];
  const clauses = plainClauses(segment, lexicon);
  return [...literal(clauses, words), ...inferential(clauses, segment)];
}
