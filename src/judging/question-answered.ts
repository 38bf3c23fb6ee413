import { feelings } from './question-cues.js';
import type { Features } from './question-features.js';
import { rarityOf, type QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';

/** Features of a question whose answer is known: the more of the answer's wording stands in the segment, the more literal it is. */
export function answeredFeatures(
  view: QuestionView,
  answer: string,
  alone: number,
  tools: JudgingTools,
): Features {
  const { segment, wording } = view;
  const reading = tools.analyse(answer);
  const words = reading.tokens.map(({ stem }) => stem);
  const texts = segment.analysis.tokens.map(({ stem }) => stem);
  const content = [...reading.stems.keys()];
  const asked = new Set(view.terms.map(({ word }) => word.stem));
  const fresh = content.filter((stem) => !asked.has(stem));
  const stands = (stem: string): boolean => segment.stems.has(stem);
  const rarity = (stem: string): number =>
    rarityOf(reading.tokens[reading.stems.get(stem)![0]!]!.lower, tools.lexicon);
  const total = content.reduce((sum, stem) => sum + rarity(stem), 0);
  const held = content.filter(stands).reduce((sum, stem) => sum + rarity(stem), 0);
  const run = longestIn(words, texts, segment.stems);
  const [one, two, three, four] = [1, 2, 3, 4].map((size) => shareOfRuns(words, texts, segment.stems, size));
  return {
    alone,
    'runs of one': one!,
    'runs of two': two!,
    'runs of three': three!,
    'runs of four': four!,
    'most runs of three': three! >= 0.75 ? 1 : 0,
    'all words stand': one === 1 ? 1 : 0,
    'all in order': words.length > 0 && run === words.length ? 1 : 0,
    'longest run': run / Math.max(1, words.length),
    'longest run words': Math.min(8, run),
    'content stands': content.length > 0 ? content.filter(stands).length / content.length : 0.5,
    'fresh stands': fresh.length > 0 ? fresh.filter(stands).length / fresh.length : 0.5,
    'fresh missing': Math.min(4, fresh.filter((stem) => !stands(stem)).length),
    'nothing fresh': fresh.length === 0 ? 1 : 0,
    'rarity held': total > 0 ? held / total : 0.5,
    'rarity lost': total - held,
    'one sentence': bestSentence(view, content),
    'answer length': Math.log(words.length + 1),
    'one word': words.length === 1 ? 1 : 0,
    'feeling word': reading.tokens.some(({ lower }) => feelings.has(lower)) ? 1 : 0,
    'feeling word missing': reading.tokens.some(({ lower, stem }) => feelings.has(lower) && !stands(stem))
      ? 1
      : 0,
    'begins with who': /^(he|she|they|it|the|his|her|there|because)\b/i.test(answer) ? 1 : 0,
    'whole sentence': /\.\s*$/.test(answer) ? 1 : 0,
    'will in answer': /\b(will|would|might|could)\b/i.test(answer) ? 1 : 0,
    'was in answer': /\b(was|were|is|are|did|had|wanted)\b/i.test(answer) ? 1 : 0,
    'not in answer': /n't\b|\b(not|no|never)\b/i.test(answer) ? 1 : 0,
    'why answered': wording.opening === 'why' ? three! : 0,
    'feeling answered': wording.opening === 'how feel' ? one! : 0,
    'happened answered': wording.opening.startsWith('what') ? three! : 0,
  };
}

/** Share of an answer's runs of `size` words that stand in the segment in that order; of shorter runs where it has fewer words. */
function shareOfRuns(
  words: readonly string[],
  texts: readonly string[],
  places: ReadonlyMap<string, readonly number[]>,
  size: number,
): number {
  const length = Math.min(size, words.length);
  if (length === 0) return 0;
  const starts = words.slice(0, words.length - length + 1);
  const found = starts.filter((first, i) =>
    (places.get(first) ?? []).some((at) => runAt(words, i, texts, at) >= length),
  );
  return found.length / starts.length;
}

function longestIn(
  words: readonly string[],
  texts: readonly string[],
  places: ReadonlyMap<string, readonly number[]>,
): number {
  let longest = 0;
  words.forEach((word, i) => {
    for (const at of places.get(word) ?? []) longest = Math.max(longest, runAt(words, i, texts, at));
  });
  return longest;
}

function runAt(words: readonly string[], from: number, texts: readonly string[], at: number): number {
  let length = 0;
  while (from + length < words.length && words[from + length] === texts[at + length]) length += 1;
  return length;
}

/** Highest share of the answer's content words that one sentence holds. */
function bestSentence({ segment }: QuestionView, content: readonly string[]): number {
  if (content.length === 0) return 0.5;
  const counts = new Array<number>(segment.sentences.length).fill(0);
  for (const stem of content)
    for (const s of new Set((segment.stems.get(stem) ?? []).map((i) => segment.analysis.tokens[i]!.sentence)))
      counts[s]! += 1;
  return Math.max(0, ...counts) / content.length;
}
