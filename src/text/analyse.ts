import type { Range } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { cutSentences } from './sentences.js';
import { stemOf } from './stem.js';
import { isStopWord } from './stop-words.js';

/** Longer words are junk from the keyboard; their stem is the word itself. */
const longestWord = 40;

/** Whether capitals tell anything in a text: not where it is typed all in capitals or all without. */
function capitalsTell(text: string): boolean {
  const small = text.match(/\p{Ll}/gu)?.length ?? 0;
  const large = text.match(/\p{Lu}/gu)?.length ?? 0;
  return large > 0 && large < small;
}

function opensSentence(text: string, sentence: Range, start: number): boolean {
  return !/[\p{L}\p{N}]/u.test(text.slice(sentence.start, start));
}

/** A capital after an opening quotation mark tells as little as one at the start of a sentence. */
function followsOpening(text: string, start: number): boolean {
  return /(?:^|[\s(—,:])["“‘']$/u.test(text.slice(Math.max(0, start - 2), start)) || text[start - 2] === ':';
}

interface Draft extends Omit<Token, 'name'> {
  readonly capital: boolean;
  readonly forced: boolean;
}

function draftTokens(text: string, sentences: readonly Range[], words: readonly Range[]): readonly Draft[] {
  const drafts: Draft[] = [];
  let at = 0;
  for (const { start, end } of words) {
    while (at < sentences.length - 1 && start >= (sentences[at]?.end ?? 0)) at++;
    const sentence = sentences[at];
    if (sentence === undefined) break;
    const written = text.slice(start, end);
    const lower = written.toLowerCase().replace(/[’‘`´]/g, "'");
    drafts.push({
      text: written,
      start,
      end,
      lower,
      stem: lower.length > longestWord ? lower : stemOf(lower),
      content: /\p{L}/u.test(lower) && !isStopWord(lower),
      sentence: at,
      capital: /^\p{Lu}/u.test(written) && !/^i(?:'|$)/.test(lower),
      forced: opensSentence(text, sentence, start) || followsOpening(text, start),
    });
  }
  return drafts;
}

/** Cuts a text into sentences and words with stems; takes whatever a child may type. */
export function analyse(text: string, lexicon: Lexicon): Analysis {
  const { sentences, words } = cutSentences(text);
  const drafts = draftTokens(text, sentences, words);
  const tell = capitalsTell(text);
  const small = new Set(drafts.filter(({ capital }) => !capital).map(({ lower }) => lower));
  const named = new Set(
    drafts.filter(({ capital, forced, content }) => capital && !forced && content).map(({ lower }) => lower),
  );
  const isName = ({ capital, lower, content }: Draft) =>
    tell && capital && content && (named.has(lower) || (!small.has(lower) && !lexicon.knows(lower)));
  const tokens = drafts.map((draft): Token => {
    const { capital: _, forced: __, ...rest } = draft;
    return { ...rest, name: isName(draft) };
  });
  const stems = new Map<string, number[]>();
  for (const [n, { stem, content }] of tokens.entries()) {
    if (!content) continue;
    const at = stems.get(stem);
    if (at) at.push(n);
    else stems.set(stem, [n]);
  }
  return { text, sentences, tokens, stems };
}
