import { readLines } from './read-lines.js';

/** A question labelled by people, with the section it is about. */
export interface LabelledQuestion {
  readonly story: string;
  /** In the part that no threshold is chosen on. */
  readonly val: boolean;
  readonly section: string;
  readonly text: string;
  readonly answer: string;
  readonly inferential: 0 | 1;
  /** Of another expert, with their own answer; null where nobody else labelled it. */
  readonly second: { readonly answer: string; readonly inferential: 0 | 1 } | null;
}

interface QuestionLine {
  readonly id: string;
  readonly section: string;
  readonly question: string;
  readonly answer: string;
  readonly label: string;
  readonly second_label?: string;
  readonly second_answer?: string;
}

const inferential = (label: string): 0 | 1 => (label === 'implicit' ? 1 : 0);

/** The story questions of a data folder (FairytaleQA, Xu et al. 2022, Apache-2.0), train then val. */
export function readQuestions(dir: string): readonly LabelledQuestion[] {
  return ['train', 'val'].flatMap((part) => {
    const lines = readLines<{ section: string; text: string }>(dir, `sections.${part}.jsonl`);
    const sections = new Map(lines.map(({ section, text }) => [section, text]));
    return readLines<QuestionLine>(dir, `questions.${part}.jsonl`).map((line): LabelledQuestion => ({
      story: line.id.slice(0, line.id.lastIndexOf('/')),
      val: part === 'val',
      section: sections.get(line.section) ?? '',
      text: line.question,
      answer: line.answer,
      inferential: inferential(line.label),
      second:
        line.second_label === undefined
          ? null
          : { answer: line.second_answer ?? '', inferential: inferential(line.second_label) },
    }));
  });
}

/** The fold 0..4 of each case, whole groups together, by the order in which groups first come. */
export function foldsOf(groups: readonly string[], folds = 5): readonly number[] {
  const order = new Map<string, number>();
  for (const group of groups) if (!order.has(group)) order.set(group, order.size);
  return groups.map((group) => order.get(group)! % folds);
}
