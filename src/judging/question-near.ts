import { cosine, vectorOf, type Vector } from './meaning-vectors.js';
import type { SegmentView } from './segment-view.js';
import type { QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';

const held = new WeakMap<SegmentView, readonly (readonly Vector[])[]>();

/** Vectors of the content words of each sentence. */
function vectorsOf(segment: SegmentView, { lexicon }: JudgingTools): readonly (readonly Vector[])[] {
  const known = held.get(segment);
  if (known) return known;
  const sentences = segment.sentences.map((): Vector[] => []);
  const seen = new Set<string>();
  for (const { content, lower, sentence } of segment.analysis.tokens) {
    const key = `${sentence} ${lower}`;
    const vector = content && !seen.has(key) ? vectorOf(lower, lexicon) : null;
    seen.add(key);
    if (vector) sentences[sentence]!.push(vector);
  }
  held.set(segment, sentences);
  return sentences;
}

/** How near the text comes to the question's words that it lacks: "wed" where it says "married". */
export function nearFeatures(view: QuestionView, into: Record<string, number>, tools: JudgingTools): void {
  const { terms, segment, sentenceCover } = view;
  const total = terms.reduce((sum, { rarity }) => sum + rarity, 0) || 1;
  const covers = [...sentenceCover];
  let lacking = 0;
  let strangest = 0;
  for (const { word, at, rarity } of terms) {
    if (at.length > 0) continue;
    const vector = vectorOf(word.lower, tools.lexicon);
    let nearest = 0;
    if (vector)
      vectorsOf(segment, tools).forEach((others, s) => {
        const near = Math.max(0, ...others.map((other) => cosine(vector, other)));
        if (near > 0.4) covers[s]! += (rarity * near) / total;
        nearest = Math.max(nearest, near);
      });
    lacking += rarity * (1 - nearest);
    strangest = Math.max(strangest, 1 - nearest);
  }
  into['near cover'] = Math.max(0, ...covers);
  into['near lacking'] = lacking / total;
  into['near lacking sum'] = lacking;
  into.strangest = strangest;
}

/** Cosine of a word with the nearest content word of the segment, 0..1. */
export function nearnessTo(segment: SegmentView, lower: string, tools: JudgingTools): number {
  const vector = vectorOf(lower, tools.lexicon);
  if (!vector) return 0;
  return Math.max(
    0,
    ...vectorsOf(segment, tools).flatMap((others) => others.map((other) => cosine(vector, other))),
  );
}
