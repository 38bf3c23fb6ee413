import { fixUps, type FixUp } from '../../shared/strategies.js';

/** How a pupil says which fix-up strategy was used; `yes` matches, `no` must not. */
export interface FixUpRule {
  readonly fixUp: FixUp;
  readonly pattern: RegExp;
  readonly yes: string;
  readonly no: string;
}

function rule(fixUp: FixUp, pattern: RegExp, yes: string, no: string): FixUpRule {
  return { fixUp, pattern, yes, no };
}

const again =
  /\b(re-?read|read(?:ing)?\s+(?:it|that|this|the\s+\w+|back|over)?\s*(?:\w+\s+)?(?:again|over|twice|back))\b/;
const parts =
  /\b(break|broke|split|cut|take|took|sound(?:ed)?|chop(?:ped)?)\s+(?:it|the word|\w+)\s+(?:up|in(?:to)?|apart|out)\b|\b(prefix|suffix|root|word part|parts? of the word)\b|\b\w+ (?:plus|and) (?:less|ful|ly|er|ness|un|re|dis)\b/;
const clue =
  /\b(clue|context|(?:words?|sentence|part|bit)\s+(?:next to|beside|around|before|after|near)|(?:next|rest of the) sentence|because it (?:says|said)|it (?:says|said|tells)|the text (?:says|said|tells))\b/;
const instead =
  /\b(synonym|(?:put|try|tried|use|used|swap(?:ped)?|another word|other word|instead)\b.*\b(?:instead|in its place|for it|makes? sense|in the sentence))|\banother word for\b|\binstead of\b/;

/** In the order in which they are looked for: what is said outright first. */
export const fixUpRules: readonly FixUpRule[] = [
  rule('read it again', again, 'I read it again and it made sense', 'it says he read a book'),
  rule(
    'read on',
    /\b(read(?:ing)? on|kept (?:on )?reading|keep (?:on )?reading|read (?:further|ahead|the next|more))\b/,
    'i kept reading',
    'he was reading to her',
  ),
  rule(
    'slow down',
    /\b(slow(?:ed|ly|er)?\s*(?:down|it down)|read (?:it )?slow(?:ly|er)?)\b/,
    'I slowed down there',
    'the dog was slow',
  ),
  rule('break the word into parts', parts, 'I broke it into parts, un and happy', 'the cup broke'),
  rule(
    'look it up',
    /\b(look(?:ed)? (?:it|that|this|the word) up|looked? up (?:the|it)|dictionary|glossary|googled?|searched (?:it|for it))\b/,
    'I looked it up',
    'he looked up at the sky',
  ),
  rule(
    'look at the picture',
    /\b(picture|photo|drawing|illustration|diagram|map)\b/,
    'the picture shows one',
    'I think it is big',
  ),
  rule(
    'ask',
    /\b(ask(?:ed)?\s+(?:my|the|a|someone|somebody|an adult|wren|\w+)\b|can (?:somebody|someone|anyone) (?:tell|help))/,
    'I asked my mum',
    'she asked',
  ),
  rule('try another word in its place', instead, 'I put big instead and it makes sense', 'he tried to run'),
  rule('look for a clue beside it', clue, 'the next sentence has a clue', 'the sun came up'),
  rule(
    'use what I know',
    /\b(i (?:already )?(?:know|knew)|i(?:'ve| have) (?:seen|heard|got|read)|my (?:mum|mom|dad|gran|grandma|grandpa|teacher|brother|sister|uncle|aunt)|we have (?:one|those|that)|at home|reminds me)\b/,
    'I know it from my grandpa',
    'nobody knows',
  ),
  rule(
    'say it in my own words',
    /\b(in my (?:own )?words|i would say|i'd say|in other words|so basically)\b/,
    'in my own words it is a wall',
    'he said a word',
  ),
  rule(
    'find who "it" or "they" is',
    /["“](?:it|they|he|she|them|this|that|him|her|his|their)["”]\s+(?:is|are|means|stands for|refers? to|must be)\b|\b(?:they|he|she|them|him)\s+(?:means|stands for|refers? to)\b|\bwho ["“]?(?:it|they|he|she)["”]? (?:is|are)\b/,
    '"they" means the beavers',
    'it means the bridge is strong',
  ),
];

/** The fix-up strategy that a pupil picked or names, with where it is named; null where there is none. */
export function fixUpIn(
  text: string,
  picked: string | undefined,
): { readonly fixUp: FixUp; readonly at: readonly [number, number] | null } | null {
  const known = fixUps.find((one) => one === picked?.trim());
  if (known) return { fixUp: known, at: null };
  const plain = text.toLowerCase().replace(/[’‘`´]/g, "'");
  for (const { fixUp, pattern } of fixUpRules) {
    const found = pattern.exec(plain);
    if (found) return { fixUp, at: [found.index, found.index + found[0].length] };
  }
  return null;
}
