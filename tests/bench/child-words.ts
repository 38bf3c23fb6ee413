import type { JudgeInput } from '../../shared/judgements.js';

const starts: Readonly<Record<JudgeInput['kind'], readonly string[]>> = {
  question: [
    'Why does the text say',
    'How does it feel when',
    'What would happen if',
    'Where does it say that',
  ],
  'sum-up': ['It is mostly about how', 'This part tells us that', 'The big thing is that'],
  clarify: ['I think it means', 'Maybe it is when', 'It could be like'],
  predict: ['I think next', 'Maybe in the next part', 'I guess that'],
  answer: ['Because', 'It says that', 'I think it is since'],
};

const lengths: Readonly<Record<JudgeInput['kind'], number>> = {
  question: 7,
  'sum-up': 24,
  clarify: 8,
  predict: 12,
  answer: 12,
};

const common =
  'boat rain dog stone hand night tree house fish road bread cloud bell shoe window garden river winter friend coat lamp letter apple basket horse ladder'.split(
    ' ',
  );

/** Every fourth post has a slip of the pen. "window": "windwo". */
function slipIn(word: string): string {
  return word.slice(0, -2) + (word.at(-1) ?? '') + (word.at(-2) ?? '');
}

/** An invented post about a segment, made of words of the segment and of common words that stand for the number, so that no two are alike. */
export function childWords(kind: JudgeInput['kind'], segment: string, number: number): string {
  const words = [...segment.matchAll(/[\p{L}’']+/gu)].map(([word]) => word.toLowerCase());
  const start = starts[kind][number % starts[kind].length] ?? '';
  const from = (number * 7) % Math.max(1, words.length - lengths[kind]);
  const middle = words.slice(from, from + lengths[kind]);
  const own = [...number.toString(common.length)].map(
    (digit) => common[Number.parseInt(digit, common.length)] ?? '',
  );
  const ending = number % 4 === 0 ? own.map(slipIn) : own;
  return `${start} ${middle.join(' ')} and the ${ending.join(' and ')}${kind === 'question' ? '?' : '.'}`;
}
