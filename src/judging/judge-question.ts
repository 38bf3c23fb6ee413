import type { JudgeInput, QuestionJudgement, Reason } from '../../shared/judgements.js';
import type { Relationship } from '../../shared/strategies.js';
import type { Analysis } from '../text/analysis.js';
import { stemOf } from '../text/stem.js';
import { copiedFrom, type Copied } from './copied.js';
import { asksBy } from './question-asks.js';
import { signals } from './question-general.js';
import { questionLevel } from './question-level.js';
import type { Cuts, QuestionModel } from './question-model.js';
import { questionChances, type QuestionChances } from './question-odds.js';
import { questionReasons } from './question-reasons.js';
import { viewQuestion, type QuestionView } from './question-view.js';
import { viewSegment } from './segment-view.js';
import type { JudgingTools } from './tools.js';
import { versions } from './version.js';
import weights from './weights/question.json' with { type: 'json' };

type Input = Extract<JudgeInput, { kind: 'question' }>;

/** JSON widens pairs to arrays of numbers, hence the cast; the training command writes the file in this shape. */
export const questionModel = weights as unknown as QuestionModel;

/** Judges a pupil's question on its segment, with the answer's words where there is one. `relationship` is the likelier one even where `value` is unsure. */
export function judgeQuestion(input: Input, tools: JudgingTools, model = questionModel): QuestionJudgement {
  const view = viewQuestion(input.text, input.segment, tools);
  const asks = asksBy(input.text, view.wording) !== null;
  const chances = questionChances(view, input.answer, model, tools);
  if (!asks) return nothingAsked(chances, view, tools);
  const cuts = moved(chances.cuts, input.line ?? 0);
  const value = labelFor(chances.inferential, cuts);
  const relationship = relationshipOf(chances, cuts);
  const copied = copiedIn(view, view.segment.analysis, tools);
  const onTopic = topicOf(view);
  const level = questionLevel({
    isQuestion: true,
    label: value,
    relationship,
    onTopic,
    copied: copied.share,
    mainIdea: chances.mainIdea,
    manner: chances.features.manner === 1,
    evidence: chances.answered?.['content stands'] ?? null,
  });
  return {
    kind: 'question',
    level,
    value,
    probability: Math.max(chances.inferential, 1 - chances.inferential),
    measures: {
      isQuestion: true,
      inferential: chances.inferential,
      relationship,
      onTopic,
      mainIdea: chances.mainIdea,
      answerable: chances.answerable,
      copied: copied.share,
    },
    reasons: [
      ...copiedReasons(copied, view, input, tools),
      ...relationshipReasons(relationship, view, chances),
      ...questionReasons(view, chances, model),
    ],
    version: versions.question,
  };
}

function nothingAsked(chances: QuestionChances, view: QuestionView, tools: JudgingTools): QuestionJudgement {
  return {
    kind: 'question',
    level: 0,
    value: 'unsure',
    probability: null,
    measures: {
      isQuestion: false,
      inferential: chances.inferential,
      relationship: null,
      onTopic: topicOf(view),
      mainIdea: 0,
      answerable: 0,
      copied: copiedIn(view, view.segment.analysis, tools).share,
    },
    reasons: [{ rule: 'no question', place: null }],
    version: versions.question,
  };
}

/** The cuts where a class has moved its line. */
function moved({ low, cut, high }: Cuts, line: number): Cuts {
  return { low: low + line, cut: cut + line, high: high + line };
}

function labelFor(chance: number, { low, high }: Cuts): QuestionJudgement['value'] {
  return chance < low ? 'literal' : chance > high ? 'inferential' : 'unsure';
}

/** From this chance on an answer is taken to be joined from several places; on the open questions right as often as one half, and it finds nine of ten where one half finds eight. */
const severalFrom = 0.4;

/** The likeliest relationship on the side that the cut gives. */
function relationshipOf({ inferential, own, search }: QuestionChances, { cut }: Cuts): Relationship {
  if (inferential > cut) return own > 0.5 ? 'on my own' : 'author and me';
  return search > severalFrom ? 'think and search' : 'right there';
}

/** How far a question is about the segment: the share of its content words found there; a pronoun alone may mean anything. */
function topicOf({ terms, wording }: QuestionView): number {
  const found = terms.filter(({ at }) => at.length > 0).length;
  if (found > 0) return Math.min(1, 0.4 + (0.6 * found) / terms.length);
  return wording.marks.has('it or they') ? 0.3 : 0;
}

const nothingCopied: Copied = { share: 0, runs: [], inRun: [] };

/** Fewer shared words than these make no run that counts, so that the closer look is spared. */
const leastShared = { words: 6, content: 3 };

function copiedIn(view: QuestionView, source: Analysis, tools: JudgingTools): Copied {
  const { words } = view.wording;
  const shared = words.filter(({ stem }) => viewSegment(source, tools).stems.has(stem));
  if (
    shared.length < leastShared.words ||
    shared.filter(({ content }) => content).length < leastShared.content
  )
    return nothingCopied;
  const keys = words.map(({ token, lower }) => (token.content ? stemOf(lower) : lower));
  return copiedFrom(view.question, keys, source, view.segment.analysis);
}

function copiedReasons(
  copied: Copied,
  view: QuestionView,
  { peers = [] }: Input,
  tools: JudgingTools,
): readonly Reason[] {
  const [run] = copied.runs;
  const own: Reason[] = run
    ? [
        {
          rule: 'word for word from the text',
          place: { in: 'segment', ...run.source },
          figures: { words: run.end - run.first, copied: copied.share },
        },
      ]
    : [];
  const most = Math.max(0, ...peers.map((peer) => copiedIn(view, tools.analyse(peer), tools).share));
  return most >= 0.5
    ? [...own, { rule: "like another pupil's question", place: null, figures: { copiedFromPeers: most } }]
    : own;
}

function relationshipReasons(
  relationship: Relationship,
  view: QuestionView,
  { own, features }: QuestionChances,
): readonly Reason[] {
  const signal = (...names: readonly string[]) =>
    signals.find(({ name, pattern }) => names.includes(name) && pattern.test(view.wording.plain));
  switch (relationship) {
    case 'on my own':
      return [
        {
          rule: signal('you', 'have you ever') ? 'asks about the reader' : 'can be answered without reading',
          place: null,
          figures: { probability: own },
        },
      ];
    case 'think and search':
      return [
        {
          rule: signal('several', 'two questions', 'from to')
            ? 'asks for several things'
            : 'its words stand in several places',
          place: null,
          figures: { spread: features.spread ?? 0 },
        },
      ];
    case 'right there':
    case 'author and me':
      return [];
    default: {
      const never: never = relationship;
      return never;
    }
  }
}
