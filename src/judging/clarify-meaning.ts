import type { Range } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from '../text/analysis.js';
import { matchWord } from '../text/similar.js';

/** What a pupil says that a word means. */
export interface ProposedMeaning {
  readonly tokens: readonly Token[];
  /** Where it stands in the pupil's text. */
  readonly place: Range;
}

/** Words that lead in to a meaning and say nothing themselves. */
const leadIn =
  /^\W*(?:(?:so|well|um+|ok(?:ay)?|maybe|probably|and|or)\b\W*)*(?:i (?:think|thik|guess|bet|reckon|believe|know|thought|would say)|i'?m (?:pretty )?sure|in my (?:own )?words)?\W*(?:that )?/;
const means =
  /\b(?:means?|meant|ment|is like|is when|are when|it'?s like|another word for|a synonym (?:for|of)|same (?:thing )?as|stands for|refers to|is called|describes)\b\W*(?:that|when|like|something|somebody|to be|it|is|be|kind of|sort of|it is)?\W*/;
const copula =
  /^(?:it|this|that|they|he|she|its|it's|thats|that's|the word)\W*(?:is|was|are|were)?\s*(?:just |like |kind of |sort of |a kind of |sort of like |another word for |when )?/;
/** What follows is evidence or a fix-up, not the meaning. */
const tail =
  /\b(?:because|becaus|becuz|becuase|bc|cuz|cos|since it says|i (?:looked|read|asked|broke|found|used|know (?:it|this) (?:from|because))|the (?:text|next sentence|sentence|picture) (?:says|said|shows|tells)|it says)\b/;
/** Nothing is explained: only that it is not understood. */
const asks =
  /\b(?:don'?t|dont|do not|didn'?t|didnt|did not|cant|can't|cannot)\s+(?:know|get|understand|understood|no|remember)\b|\bwhat (?:does|do|is|are|was|did)\b|\bno idea\b|\bidk\b|\bnot sure\b|\bconfus|\bhard (?:word|to)\b|\bwho is\b|\?\s*$/;

/** Whether a text says that something is not understood rather than what it means. */
export function onlyAsks(plain: string): boolean {
  return asks.test(plain) && !/\b(?:means|i think|it is|its|maybe|probably|because)\b/.test(plain);
}

/** Lower case with straight apostrophes, as long as the text. */
export function plainOf(text: string): string {
  const plain = text.toLowerCase().replace(/[’‘`´]/g, "'");
  return plain.length === text.length ? plain : text.replace(/[’‘`´]/g, "'");
}

/** The clause in which a stretch stands: telling what one did is no meaning. */
function clauseAround(plain: string, [from, to]: readonly [number, number]): readonly [number, number] {
  const before = plain.slice(0, from).search(/(?:[,.;:!?]|\band\b|\bso\b)[^,.;:!?]*$/);
  const behind = plain.slice(to).search(/[,.;:!?]|\b(?:and|so|it means)\b/);
  return [before < 0 ? 0 : before, behind < 0 ? plain.length : to + behind];
}

/** Cuts the proposed meaning out of a pupil's text: behind "means" and the like, before "because"; null where nothing is proposed. The word itself is no meaning of it, nor is the clause that names a fix-up. */
export function proposedMeaning(
  text: Analysis,
  word: readonly Token[],
  lexicon: Lexicon,
  fixUpAt: readonly [number, number] | null = null,
): ProposedMeaning | null {
  const plain = plainOf(text.text);
  if (onlyAsks(plain)) return null;
  let start = leadIn.exec(plain)?.[0].length ?? 0;
  const said = means.exec(plain);
  if (said && said.index < 60) start = said.index + said[0].length;
  else start += copula.exec(plain.slice(start))?.[0].length ?? 0;
  const rest = tail.exec(plain.slice(start));
  const end = rest && rest.index > 0 ? start + rest.index : plain.length;
  const aside = fixUpAt && !(said && said.index < fixUpAt[1]) ? clauseAround(plain, fixUpAt) : null;
  const inside = text.tokens.filter(
    (token) =>
      token.start >= start &&
      token.end <= end &&
      !(aside && token.start >= aside[0] && token.end <= aside[1]),
  );
  const own = inside.filter(({ lower }) => word.length === 0 || matchWord(lower, word, lexicon) === null);
  const tokens = own.some(({ content }) => content) ? own : inside;
  const first = tokens[0];
  const last = tokens.at(-1);
  if (!first || !last || own.length === 0) return null;
  return { tokens, place: { start: first.start, end: last.end } };
}
