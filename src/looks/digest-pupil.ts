import type { PostId } from '../../shared/ids.js';
import type { Block } from '../../shared/messages.js';
import { strategies, type Strategy } from '../../shared/strategies.js';
import type { ProgressByStrategy, PupilDigest, QuotedTry } from '../progress/digest-shape.js';
import { strategyWords } from '../progress/doing-words.js';
import type { StrategyProgress } from '../progress/verdict.js';
import { staff } from './asked.js';
import { choice, choices, heading, look, move, prose, quotation } from './blocks.js';

const levels = [0, 1, 2, 3] as const;

function percent(share: number): number {
  return Math.round(100 * share);
}

function measureOf(strategy: Strategy, one: StrategyProgress): Block {
  const { met, tries, low, high, verdict, trend } = one;
  const words = staff('strategy measure', {
    met,
    tries,
    low: percent(low),
    high: percent(high),
    verdict: staff(`verdict ${verdict}`),
  });
  return {
    type: 'measure',
    label: strategyWords(strategy),
    value: met,
    of: tries,
    words: trend === null ? words : `${words}; ${trend}`,
  };
}

function measures(progress: ProgressByStrategy): readonly Block[] {
  return strategies
    .filter((strategy) => progress[strategy].tries > 0)
    .map((strategy) => measureOf(strategy, progress[strategy]));
}

/** One tap for a level of one's own, or a closer look. */
export function levelChoices(post: PostId): readonly Block[] {
  return choices(staff('your level'), [
    ...levels.map((level) =>
      choice(staff('level', { level }), move('overrule', { post, level: String(level) })),
    ),
    choice(staff('look closer'), look('post', { post })),
  ]);
}

function quoted({ text, reason, post }: QuotedTry): readonly Block[] {
  return [quotation(text, null), prose(reason), ...(post === null ? [] : levelChoices(post))];
}

function seen(
  { seen: { counts, quotations } }: PupilDigest,
  evidence: readonly QuotedTry[],
): readonly Block[] {
  const line = staff('seen so far', {
    questions: counts.question,
    replies: counts.answer + counts.add,
    words: counts.clarify,
    sumUps: counts['sum-up'],
    predictions: counts.predict,
  });
  const others = quotations.filter(({ post }) => evidence.every((one) => one.post !== post));
  return [prose(line), ...others.map(({ text }) => quotation(text, null))];
}

/** What the digest shows of one pupil: what was seen, measures with verdicts, quotations with reasons to overrule. */
export function pupilBlocks(pupil: PupilDigest): readonly Block[] {
  const { nickname, led, evidence, otherwise } = pupil;
  return [
    heading(nickname),
    prose(staff(pupil.away ? 'led and away' : 'led', { led, posts: pupil.posts })),
    ...seen(pupil, evidence),
    ...measures(pupil.strategies),
    ...otherwise.flatMap(({ given, strategies: progress }) => {
      const apart = measures(progress);
      return apart.length === 0 ? [] : [prose(staff(`given ${given}`)), ...apart];
    }),
    ...evidence.flatMap(quoted),
  ];
}
