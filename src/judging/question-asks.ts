import type { Wording } from './question-wording.js';
import type { FormRule } from './question-form.js';

const helper =
  "(do|does|did|is|are|was|were|has|have|had|can|could|will|would|should|might|may|must|isn't|aren't|wasn't|weren't|don't|doesn't|didn't|can't|couldn't|won't|wouldn't|hasn't|haven't|shouldn't)";
const rule = (name: string, pattern: RegExp, example: string, not: string): FormRule => ({
  name,
  pattern,
  example,
  not,
});

/** Forms that ask, with or without a question mark, which children leave out. */
export const asking: readonly FormRule[] = [
  rule('why', /\b(why|how come)\b.+/, 'why the goose did that', 'the goose did that'),
  rule('question word and helper', new RegExp(`\\b(what|who|whom|whose|where|when|which|how)( (?!to\\b)\\w+){0,2} (do|does|did|don't|didn't|doesn't)\\b`), 'and then what did he do', 'she knows what to do'),
  rule('begins with question word and helper', new RegExp(`^(what|who|whom|whose|where|when|which|how)( [\\w']+){0,4} ${helper}\\b`), 'which of the boats was red', 'the boat was red'),
  rule('begins with question word', /^(who|whose|which|where|what(?! (an?|the heck)\b)|how (many|much|long|far|often|old))\b .+/, 'who snorted at her', 'what a silly goose'),
  rule('begins with helper', new RegExp(`^${helper} (?!not\\b|so\\b|it$|nice\\b|your best)[\\w']+ [\\w']+`), 'does he wait for them', 'do not wait'),
  rule('question word after a pause', new RegExp(`\\b(what|who|where|when|which|how) ${helper} (the|a|an|he|she|it|they|you|we|i|his|her|their)\\b`), 'the lamp, how was it lit', 'i see how it works'),
  rule('wonders', /\b(i wonder|i want to know|i'd like to know|my question is|do you know|tell me)\b.+/, 'i wonder if he comes back', 'i know he comes back'),
  rule('tells to answer', /^(name|list|tell|explain|describe|compare|give|find|say)\b.+ \w+/, 'name two kinds of salt', 'names are hard'),
]; // prettier-ignore

const says = /^(i|i'm|im|we|it's|its|that's|thats|this|there|no one|nobody|my|idk|lol|ok|wow|cool)( |$)/;
const inside = new Set(['why', 'question word after a pause']);

/** The rule by which a post asks something, or null where it doesn't; a statement that only holds a question word asks nothing. */
export function asksBy(text: string, { plain, words }: Wording): string | null {
  const content = words.filter(
    ({ lower }) => !/^(idk|ok|lol|huh|hm+|hi|hello|yes|no|yeah|nope)$/.test(lower),
  );
  if (/[?？]/.test(text) && content.length >= 2) return 'question mark';
  const told = says.test(plain);
  const found = asking.find(({ name, pattern }) => pattern.test(plain) && !(told && inside.has(name)));
  return found?.name ?? null;
}
