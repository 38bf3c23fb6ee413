import type { KeyTerm, Range } from '../../shared/text.js';
import type { Analysis } from './analysis.js';
import { isHeading } from './headings.js';
import { stemOf } from './stem.js';

/** Ours, by eye on the open half of fixtures/sets/topics: a sentence must hold this much of the key terms' weight. */
const leastShare = 0.3;
const firstBonus = 0.25;
const lastBonus = 0.05;
/** A segment with more speech than this tells a scene, which has no topic sentence. */
const mostSpeech = 0.2;

function speechShare(text: string): number {
  const speech = text.match(/["“][^"“”]*["”]/g)?.join('').length ?? 0;
  return speech / Math.max(1, text.length);
}

/** The sentence of a segment that says what it is about, or null where none stands out. */
export function topicSentence(segment: Analysis, terms: readonly KeyTerm[]): Range | null {
  if (speechShare(segment.text) > mostSpeech) return null;
  const weights = new Map(terms.map(({ term, weight }) => [stemOf(term.toLowerCase()), weight]));
  const total = [...weights.values()].reduce((sum, weight) => sum + weight, 0);
  const prose = segment.sentences.flatMap((range, n) => (isHeading(segment.text, range) ? [] : [n]));
  let best: { readonly n: number; readonly score: number } | null = null;
  for (const n of prose) {
    const range = segment.sentences[n];
    if (!range || /[?!]["”’]?$/.test(segment.text.slice(range.start, range.end))) continue;
    const stems = new Set(segment.tokens.filter(({ sentence }) => sentence === n).map(({ stem }) => stem));
    const held = [...stems].reduce((sum, stem) => sum + (weights.get(stem) ?? 0), 0) / Math.max(total, 1e-9);
    if (held < leastShare) continue;
    const score = held + (n === prose[0] ? firstBonus : 0) + (n === prose.at(-1) ? lastBonus : 0);
    if (!best || score > best.score) best = { n, score };
  }
  return best ? (segment.sentences[best.n] ?? null) : null;
}
