import { meantWord } from '../text/similar.js';
import { isStopWord } from '../text/stop-words.js';
import { stemOf } from '../text/stem.js';
import type { Analysis, Token } from '../text/analysis.js';
import type { JudgingTools } from './tools.js';
import { marks, openings } from './question-form.js';

/** A word of a question as it was meant: spelling put right, the place is where the pupil wrote it. */
export interface MeantWord {
  readonly token: Token;
  readonly lower: string;
  readonly stem: string;
  readonly content: boolean;
}

/** A question's wording: its words as meant, and what its form says. */
export interface Wording {
  readonly words: readonly MeantWord[];
  /** Lower case, spaced singly, spelling put right. */
  readonly plain: string;
  /** Name of the rule for its first words, 'other' where none holds. */
  readonly opening: string;
  readonly marks: ReadonlySet<string>;
}

/** How children write the small words of questions; words that are themselves English stand only where they can't be meant. */
const smallWords: Readonly<Record<string, string>> = {
  wat: 'what', wut: 'what', waht: 'what', wot: 'what', whats: 'what is', wats: 'what is', wy: 'why', whi: 'why', wye: 'why',
  woh: 'who', hoo: 'who', whos: 'who is', wer: 'where', wear: 'where', were: 'were', whare: 'where', wher: 'where', wheres: 'where is',
  wen: 'when', whan: 'when', wich: 'which', witch: 'witch', hou: 'how', hows: 'how is', wud: 'would', wuld: 'would', woud: 'would',
  cud: 'could', coud: 'could', shud: 'should', shoud: 'should', dose: 'does', dus: 'does', duz: 'does', becuz: 'because', becos: 'because',
  becuse: 'because', becaus: 'because', beacuse: 'because', cuz: 'because', cos: 'because', bcuz: 'because', coz: 'because', thay: 'they', thier: 'their', hav: 'have', wil: 'will',
  didnt: "didn't", dosnt: "doesn't", doesnt: "doesn't", dont: "don't", couldnt: "couldn't", wouldnt: "wouldn't",
  wasnt: "wasn't", isnt: "isn't", arent: "aren't", cant: "can't", wont: "won't", havent: "haven't", hasnt: "hasn't",
}; // prettier-ignore

/** Misspelt words that are English too: put right only at the start of a question before such a word. */
const startsWith: readonly { readonly pattern: RegExp; readonly as: string; readonly example: string }[] = [
  {
    pattern: /^(were|wear) (did|do|does|is|are|was|were|have|has|can|could|will|would)\b/,
    as: 'where',
    example: 'were did he go',
  },
  { pattern: /^(witch|which) (?=\w)/, as: 'which', example: 'witch boat came first' },
  { pattern: /^(hoe|who) (did|do|does|many|much|long) (?=\w)/, as: 'how', example: 'hoe did he get in' },
];

/** What may stand before a question without changing it. */
const preamble =
  /^((and|so|but|ok|um|well|my question is|(from|in|according to) (the|this) (article|text|story|passage|part)) )+/;

/** Reads the wording of a question against the segment, whose words are the likeliest meaning of a misspelt one. */
export function readWording(question: Analysis, segment: Analysis, tools: JudgingTools): Wording {
  const words = question.tokens.map((token) => meantBy(token, segment, tools));
  let plain = words.map(({ lower }) => lower).join(' ');
  for (const { pattern, as } of startsWith) {
    const found = pattern.exec(plain);
    if (found && found[1] !== 'who') plain = as + plain.slice(found[1]!.length);
  }
  plain = plain.replace(preamble, '');
  const opening = openings.find(({ pattern }) => pattern.test(plain))?.name ?? 'other';
  return {
    words,
    plain,
    opening,
    marks: new Set(marks.filter(({ pattern }) => pattern.test(plain)).map(({ name }) => name)),
  };
}

function meantBy(token: Token, segment: Analysis, tools: JudgingTools): MeantWord {
  const { lower, stem, content } = token;
  const small = smallWords[lower];
  if (small !== undefined && small !== lower)
    return { token, lower: small, stem: stemOf(small), content: false };
  if (segment.stems.has(stem) || tools.lexicon.knows(lower) || token.name || !/\p{L}/u.test(lower))
    return { token, lower, stem, content };
  const meant = meantWord(token, segment, tools.lexicon);
  return { token, lower: meant, stem: stemOf(meant), content: !isStopWord(meant) };
}
