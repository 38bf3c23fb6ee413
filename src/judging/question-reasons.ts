/*
 * The few things that decided, each with its place. A reason's rule is plain words for staff; what pushed is summed over
 * features of one kind, so that twenty small weights are told as the one thing that they stand for.
 */
import type { Reason } from '../../shared/judgements.js';
import type { Place, Range } from '../../shared/text.js';
import type { LaidLogistic } from './laid-blend.js';
import type { QuestionModel } from './question-model.js';
import { laidModel, type LaidModel, type QuestionChances } from './question-odds.js';
import { topOf, type QuestionView } from './question-view.js';

const grounds = ['form', 'cover', 'place', 'cause', 'feeling', 'length'] as const;
type Ground = (typeof grounds)[number];

/** Weaker pushes, in log odds, are not told. */
const tellable = 0.25;
const told = 3;

const read = new WeakMap<LaidModel, Uint8Array>();

/** The ground of each feature as its number among `grounds`. */
function groundsOf(laid: LaidModel): Uint8Array {
  const known = read.get(laid) ?? Uint8Array.from(laid.names, (name) => grounds.indexOf(readGround(name)));
  read.set(laid, known);
  return known;
}

function readGround(name: string): Ground {
  if (/feeling/.test(name)) return 'feeling';
  if (/clause|^clearest$/.test(name)) return 'place';
  if (
    /(in best|after|before|anywhere|share|cover)$/.test(name) &&
    /^(cause|because|so|for|purpose|kind)\b/.test(name)
  )
    return 'cause';
  if (
    /cover|missing|near|strangest|run|pairs|rarity|present|places|position|spread|at (end|start)|key terms|names it/.test(
      name,
    )
  )
    return 'cover';
  if (/^(length|sentences|best length|text in the past)$/.test(name)) return 'length';
  return 'form';
}

/** Why a question was called literal or inferential, strongest first. */
export function questionReasons(
  view: QuestionView,
  chances: QuestionChances,
  model: QuestionModel,
): readonly Reason[] {
  const byGround = new Map<Ground, number>();
  const laid = laidModel(model);
  const groundAt = groundsOf(laid);
  const add = ({ weights, means }: LaidLogistic, share: number): void => {
    const sums = new Float64Array(grounds.length);
    for (let k = 0; k < weights.length; k++)
      sums[groundAt[k]!]! += share * weights[k]! * (chances.values[k]! - means[k]!);
    grounds.forEach((ground, g) => byGround.set(ground, (byGround.get(ground) ?? 0) + sums[g]!));
  };
  add(laid.story.logistic, chances.tale);
  add(laid.beyond.logistic, 1 - chances.tale);
  const strongest = [...byGround].filter(([, push]) => Math.abs(push) >= tellable);
  strongest.sort(([, a], [, b]) => Math.abs(b) - Math.abs(a));
  return strongest.slice(0, told).flatMap(([ground, push]) => reasonFor(ground, push > 0, view, chances));
}

function reasonFor(
  ground: Ground,
  inferential: boolean,
  view: QuestionView,
  { located }: QuestionChances,
): readonly Reason[] {
  const { wording, sentenceCover, best, segment, terms } = view;
  const bestPlace = inSegment(segment.analysis.sentences[best]);
  const missing = terms.filter(({ at }) => at.length === 0);
  const chance = located[topOf(located)] ?? 0;
  switch (ground) {
    case 'form':
      return [{ rule: `begins with ${wording.opening}`, place: openingPlace(view) }];
    case 'cover':
      if (!inferential)
        return [
          {
            rule: 'one sentence holds its words',
            place: bestPlace,
            figures: { share: sentenceCover[best] ?? 0 },
          },
        ];
      if (missing.length === 0) return [{ rule: 'no sentence holds all its words', place: bestPlace }];
      return [
        {
          rule: 'the text lacks words of it',
          place: rarestPlace(view),
          figures: { missing: missing.length },
        },
      ];
    case 'place':
      return inferential
        ? [{ rule: 'no place seems to answer it', place: null, figures: { probability: chance } }]
        : [
            {
              rule: 'the answer may stand here',
              place: clausePlace(view, located),
              figures: { probability: chance },
            },
          ];
    case 'cause':
      return [
        {
          rule: inferential ? 'no cause is given beside it' : 'a cause is given beside it',
          place: bestPlace,
        },
      ];
    case 'feeling':
      return [
        {
          rule: inferential ? 'no feeling is named beside it' : 'a feeling is named beside it',
          place: bestPlace,
        },
      ];
    case 'length':
      return [];
    default: {
      const never: never = ground;
      return never;
    }
  }
}

function inSegment(range: Range | undefined): Place | null {
  return range ? { in: 'segment', start: range.start, end: range.end } : null;
}

function openingPlace({ question, wording }: QuestionView): Place | null {
  const words = wording.opening === 'other' ? 1 : wording.opening.split(' ').length;
  const first = question.tokens[0];
  const last = question.tokens[Math.min(words, 2) - 1] ?? first;
  return first && last ? { in: 'text', start: first.start, end: last.end } : null;
}

function rarestPlace({ terms }: QuestionView): Place | null {
  const missing = terms.filter(({ at }) => at.length === 0).sort((a, b) => b.rarity - a.rarity)[0];
  return missing ? { in: 'text', start: missing.word.token.start, end: missing.word.token.end } : null;
}

/** Place of the likeliest clause. */
export function clausePlace({ segment }: QuestionView, located: readonly number[]): Place | null {
  const clause = segment.clauses[topOf(located)];
  const first = clause && segment.analysis.tokens[clause.first];
  const last = clause && segment.analysis.tokens[clause.end - 1];
  return first && last ? { in: 'segment', start: first.start, end: last.end } : null;
}
