import PorterStemmer from 'natural/lib/natural/stemmers/porter_stemmer.js';
import type { JudgeInput } from '../../shared/judgements.js';
import { fixtureText, demoPassages } from '../../src/app/demo-class.js';
import { makeJudges } from '../../src/app/judges.js';
import { median, progress, type Figure } from './figures.js';
import { childWords } from './child-words.js';

const rounds = 40;

/** The plainest reading of a text: words by a pattern, each brought to its stem, nothing remembered. */
function tokeniseAndStem(text: string): number {
  let letters = 0;
  for (const [word] of text.toLowerCase().matchAll(/[\p{L}\p{N}]+(?:['’][\p{L}]+)*/gu))
    letters += PorterStemmer.stem(word).length;
  return letters;
}

type Kind = JudgeInput['kind'] | 'screen';

/** Posts of each kind on one segment, no two alike, so that nothing is answered from memory. */
function postsOf(
  kind: Kind,
  segment: string,
  next: string,
  many: number,
  from: number,
): readonly JudgeInput[] {
  return Array.from({ length: many }, (_, n): JudgeInput => {
    const text = childWords(kind === 'screen' ? 'question' : kind, segment, from + n);
    switch (kind) {
      case 'question':
      case 'screen':
        return { kind: 'question', segment, text };
      case 'sum-up':
        return { kind, segment, text };
      case 'clarify': {
        const words = [...segment.matchAll(/\p{L}{5,}/gu)];
        return { kind, segment, word: words[(from + n) % words.length]?.[0] ?? '', text };
      }
      case 'predict':
        return { kind, segment, text, next };
      case 'answer':
        return { kind, segment, question: childWords('question', segment, from + n), text };
      default:
        return kind satisfies never;
    }
  });
}

/** Milliseconds a post on a segment that has been read already, beside plain tokenising and stemming of the same text; rounds of both take turns. */
export function judgeFigures(): readonly Figure[] {
  const judges = makeJudges();
  const { segments } = judges.read(fixtureText(demoPassages[0]), { grade: 5 });
  const [segment = '', next = ''] = segments.map(({ text }) => text);
  const each = 50;
  const kinds: readonly Kind[] = ['question', 'sum-up', 'clarify', 'predict', 'answer', 'screen'];
  return kinds.flatMap((kind): Figure[] => {
    progress(`judging: ${kind} ...`);
    const judged: number[] = [];
    const plain: number[] = [];
    let seen = 0;
    for (let round = -10; round < rounds; round += 1) {
      const posts = postsOf(kind, segment, next, each, (round + 10) * each);
      let from = performance.now();
      for (const post of posts) {
        seen +=
          kind === 'screen'
            ? judges.screen({ text: post.text }).findings.length
            : judges.judge(post).reasons.length;
      }
      const took = performance.now() - from;
      from = performance.now();
      for (const { text } of posts) seen += tokeniseAndStem(text);
      if (round < 0) continue;
      plain.push((performance.now() - from) / each);
      judged.push(took / each);
    }
    if (seen === 0) throw new Error('Cannot measure, expected something judged, got nothing');
    return [
      { name: `judge: ${kind}`, value: median(judged), unit: 'ms a post' },
      { name: `judge: ${kind}, tokenise and stem alone`, value: median(plain), unit: 'ms a post' },
      {
        name: `judge: ${kind}, against tokenise and stem`,
        value: median(judged) / median(plain),
        unit: 'times',
      },
    ];
  });
}
