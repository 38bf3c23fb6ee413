import { raritySum, shareOf, type StemView } from './answer-view.js';
import { feelings } from './question-cues.js';
import { locate, type Locator } from './question-locator.js';
import type { Features } from './question-features.js';
import { topOf, type QuestionView } from './question-view.js';

/** What the segment says for an answer: features, and the clause that bears it out most. */
export interface Evidence {
  readonly features: Features;
  /** Share of the answer's own content words that stand in the segment, 0..1. */
  readonly share: number;
  /** Index of the clause, -1 where none holds a word of it. */
  readonly clause: number;
  /** How far it is the kind of thing asked for and takes up the question, 0..1. */
  readonly speaks: number;
}

/** Lays an answer beside the segment: does it say what stands where the question's answer would be looked for? */
export function evidenceFor(question: QuestionView, answer: StemView, locator: Locator): Evidence {
  const { segment, terms } = question;
  const asked = new Set(terms.map(({ word }) => word.stem));
  const stands = (stem: string): boolean => segment.stems.has(stem);
  const isFresh = (stem: string): boolean => !asked.has(stem);
  const fresh = raritySum(answer, isFresh);
  const share = shareOf(
    raritySum(answer, (stem) => isFresh(stem) && stands(stem)),
    fresh,
    0,
  );
  const clauses = clauseHolds(question, answer, isFresh);
  const sentences = sentenceHolds(question, answer, isFresh);
  const located = locate(question, locator);
  const clause = topOf(clauses);
  const holds = clause >= 0 && clauses[clause]! > 0;
  const bestSentence = topOf(sentences);
  const apart = holds ? Math.abs(bestSentence - question.best) / Math.max(1, sentences.length) : 1;
  const expected = clauses.reduce((sum, held, i) => sum + held * located[i]!, 0);
  const total = located.reduce((sum, chance) => sum + chance, 0);
  const nearBest = Math.max(0, ...[-1, 0, 1].map((step) => sentences[question.best + step] ?? 0));
  const kind = rightKind(question.wording.opening, answer);
  return {
    share,
    clause: holds ? clause : -1,
    speaks: Math.min(
      1,
      0.5 * kind + 0.5 * Math.min(1, nearBest + raritySum(answer, (stem) => asked.has(stem)) / 2),
    ),
    features: {
      share,
      'all stands': share === 1 ? 1 : 0,
      'nothing fresh': fresh === 0 ? 1 : 0,
      'best clause': shareOf(holds ? clauses[clause]! : 0, 1),
      'best sentence': sentences[bestSentence] ?? 0,
      'near the question': nearBest,
      apart,
      located: holds ? Math.log(located[clause]! + 1e-4) : Math.log(1e-4),
      'located share': shareOf(expected, total),
      'top clause': clauses[topOf(located)] ?? 0,
      'right kind': kind,
      'asked words': shareOf(
        raritySum(answer, (stem) => asked.has(stem)),
        raritySum(answer, () => true),
      ),
      length: Math.log(answer.keys.length + 1),
      'fresh words': Math.log(1 + [...answer.rarities.keys()].filter(isFresh).length),
      'cover of question': question.sentenceCover[question.best] ?? 0,
      'why given because': question.wording.opening === 'why' && because(answer) ? 1 : 0,
      'feeling asked, none said': question.wording.opening === 'how feel' && kind === 0 ? 1 : 0,
      'feeling unasked': question.wording.opening !== 'how feel' && saysFeeling(answer) ? 1 : 0,
    },
  };
}

/** Share of the answer's fresh rarity that each clause, with its neighbours at a third, holds. */
function clauseHolds(
  { segment }: QuestionView,
  answer: StemView,
  isFresh: (stem: string) => boolean,
): readonly number[] {
  const total = raritySum(answer, isFresh);
  const holds = new Array<number>(segment.clauses.length).fill(0);
  for (const [stem, rarity] of answer.rarities) {
    if (!isFresh(stem)) continue;
    for (const c of new Set((segment.stems.get(stem) ?? []).map((i) => segment.clauseOf[i]!)))
      holds[c]! += shareOf(rarity, total);
  }
  return holds;
}

function sentenceHolds(
  { segment }: QuestionView,
  answer: StemView,
  isFresh: (stem: string) => boolean,
): readonly number[] {
  const total = raritySum(answer, isFresh);
  const holds = new Array<number>(segment.sentences.length).fill(0);
  for (const [stem, rarity] of answer.rarities) {
    if (!isFresh(stem)) continue;
    for (const s of new Set((segment.stems.get(stem) ?? []).map((i) => segment.analysis.tokens[i]!.sentence)))
      holds[s]! += shareOf(rarity, total);
  }
  return holds;
}

const because = ({ analysis }: StemView): boolean =>
  /\b(because|cause|becuz|cuz|so that|so|to|since|wanted)\b/i.test(analysis.text);
const saysFeeling = ({ analysis }: StemView): boolean =>
  analysis.tokens.some(({ lower }) => feelings.has(lower));

/** 1 where the answer is the kind of thing that the question asks for, 0 where it isn't, 0.5 where one can't tell. */
function rightKind(opening: string, answer: StemView): number {
  const { text, tokens } = answer.analysis;
  switch (opening) {
    case 'how feel':
      return saysFeeling(answer) ? 1 : 0;
    case 'how many':
      return /\d|\b(one|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|hundred|thousand|many|few|all|none|half|long|far)\b/i.test(
        text,
      )
        ? 1
        : 0;
    case 'where':
      return /\b(in|on|at|under|by|near|to|from|behind|inside|outside|over|there|home|up|down|into)\b/i.test(
        text,
      )
        ? 1
        : tokens.length <= 3
          ? 0.5
          : 0;
    case 'when':
      return /\b(when|after|before|at|in|on|night|day|morning|year|years|then|until|while)\b|\d/i.test(text)
        ? 1
        : 0.2;
    case 'why':
      return because(answer) ? 1 : tokens.length >= 3 ? 0.5 : 0;
    case 'who':
      return tokens.length <= 6 ? 1 : 0.5;
    default:
      return 0.5;
  }
}
