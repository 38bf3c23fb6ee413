import { edits } from '../text/edits.js';
import { meantWord } from '../text/similar.js';
import { soundKeys } from '../text/sounds.js';
import { rootOf } from './root.js';
import type { Lexicon } from '../lexicon/lexicon.js';
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

/** Words that only hold a question together; fewer than the passage's stop words, for a question is short. */
const small = new Set(
  (
    'a an the and or but if of at by for with about to from up down in out on off over under again then once here there all ' +
    'any both each few more most other some such no nor not only own same so than too very can will just should now i me my ' +
    'we our you your u he him his she her hers it its they them their what which who whom whose this that these those am is are ' +
    'was were be been being have has had having do does did doing done would could might must may shall because as until while ' +
    'into through during before after above below between against why how when where also upon us im thing things something'
  ).split(' '),
);

function tells(lower: string): boolean {
  return /\p{L}{2}/u.test(lower) && !small.has(lower) && !lower.includes("n't");
}

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
  const small = Object.hasOwn(smallWords, lower) ? smallWords[lower] : undefined;
  if (small !== undefined && small !== lower)
    return { token, lower: small, stem: rootOf(small, tools.lexicon), content: false };
  const known = segment.stems.has(stem) || token.name || !/\p{L}/u.test(lower);
  const meant = known
    ? lower
    : tools.lexicon.knows(lower)
      ? (alikeIn(segment, token, tools) ?? lower)
      : meantWord(token, segment, tools.lexicon);
  if (meant === lower)
    return { token, lower, stem: rootOf(lower, tools.lexicon), content: content || tells(lower) };
  return { token, lower: meant, stem: rootOf(meant, tools.lexicon), content: tells(meant) };
}

const sounds = new WeakMap<Analysis, ReadonlyMap<string, readonly string[]>>();

/** English words more frequent than this (Zipf) are meant as written; those as rare as `rare` may be a word of the segment that is one letter away. */
const frequent = 4;
const rare = 2.5;

/** The word of the segment that an English word stands for which isn't in it, if it sounds the same and is written nearly so: "stares" for "stairs". */
function alikeIn(segment: Analysis, { lower, content }: Token, { lexicon }: JudgingTools): string | null {
  const zipf = lexicon.zipf(lower);
  if (!content || lower.length < 4 || zipf > frequent) return null;
  const words = sounds.get(segment) ?? soundsOf(segment, lexicon);
  const near = soundKeys(lower).flatMap((key) => words.get(key) ?? []);
  const alike = near.find((word) => edits(word, lower) <= 2);
  if (alike !== undefined || zipf > rare) return alike ?? null;
  return [...words.values()].flat().find((word) => edits(word, lower) <= 1) ?? null;
}

/** Words of a segment and their base forms by how they sound. */
function soundsOf(segment: Analysis, lexicon: Lexicon): ReadonlyMap<string, readonly string[]> {
  const words = new Map<string, string[]>();
  const put = (word: string): void => {
    if (word.length < 4) return;
    for (const key of soundKeys(word)) {
      const known = words.get(key);
      if (!known) words.set(key, [word]);
      else if (!known.includes(word)) known.push(word);
    }
  };
  const seen = new Set<string>();
  for (const { lower, content } of segment.tokens) {
    if (!content || seen.has(lower)) continue;
    seen.add(lower);
    put(lower);
    lexicon.bases(lower).forEach(put);
  }
  sounds.set(segment, words);
  return words;
}
