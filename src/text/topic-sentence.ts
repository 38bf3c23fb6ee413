import type { KeyTerm, Range } from '../../shared/text.js';
import type { Analysis } from './analysis.js';
import { isHeading } from './headings.js';
import { stemOf } from './stem.js';

/** Ours, by eye on the open half of fixtures/sets/topics: a sentence must hold this much of the key terms' weight. */
const leastShare = 0.1;
/** Writers for children mostly say first what a paragraph is about. */
const firstBonus = 0.9;
const lastBonus = 0.05;

/** A scene is told: people speak, or somebody with a name does something. Scenes have no topic sentence. */
function tellsScene({ text, tokens }: Analysis): boolean {
  if (/["“][^"“”]*[,.!?]["”]/.test(text)) return true;
  return tokens.some((token, n) => {
    const next = tokens[n + 1];
    const opens = tokens[n - 1]?.sentence !== token.sentence;
    return token.name && opens && next !== undefined && /(?:ed|ew|ook|ame|ent|aw|an|ad|as)$/.test(next.lower);
  });
}

/** The sentence of a segment that says what it is about, or null where none stands out. */
export function topicSentence(segment: Analysis, terms: readonly KeyTerm[]): Range | null {
  if (tellsScene(segment)) return null;
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
