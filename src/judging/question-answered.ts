import { raritySum, viewStems, type StemView } from './answer-view.js';
import { feelings } from './question-cues.js';
import type { Features } from './question-features.js';
import { nearnessTo } from './question-near.js';
import type { QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';

const worked = new WeakMap<QuestionView, Map<string, Features>>();

/** Features of a question whose answer is known: the more of the answer's wording stands in the segment, the more literal it is. `alone` are the log odds without it. */
export function answeredFeatures(
  view: QuestionView,
  answer: string,
  alone: number,
  tools: JudgingTools,
): Features {
  const answers = worked.get(view) ?? new Map<string, Features>();
  worked.set(view, answers);
  const features = answers.get(answer) ?? answerFeatures(view, answer, tools);
  answers.set(answer, features);
  return { ...features, alone };
}

function answerFeatures(view: QuestionView, answer: string, tools: JudgingTools): Features {
  const { segment, wording } = view;
  const reading = viewStems(answer, segment.analysis, tools);
  const words = reading.keys;
  const texts = segment.roots;
  const content = [...reading.rarities.keys()];
  const asked = new Set(view.terms.map(({ word }) => word.stem));
  const fresh = content.filter((stem) => !asked.has(stem));
  const stands = (stem: string): boolean => segment.stems.has(stem);
  const total = raritySum(reading, () => true);
  const held = raritySum(reading, stands);
  const run = longestIn(words, texts, segment.stems);
  const core = coreOf(reading, asked);
  const coreRun = longestIn(core, texts, segment.stems);
  const subject = words.length - core.length;
  const [one, two, three, four] = [1, 2, 3, 4].map((size) => shareOfRuns(words, texts, segment.stems, size));
  return {
    'runs of one': one!,
    'runs of two': two!,
    'runs of three': three!,
    'runs of four': four!,
    'core runs of three': shareOfRuns(core, texts, segment.stems, 3),
    'core runs of two': shareOfRuns(core, texts, segment.stems, 2),
    'core stands': core.length > 0 ? core.filter(stands).length / core.length : 0.5,
    'core in one run': core.length > 0 && coreRun === core.length ? 1 : 0,
    'core run': coreRun / Math.max(1, core.length),
    'core length': Math.log(core.length + 1),
    'words before core': Math.min(4, subject),
    'in order': orderShare(view, words),
    'core in order': orderShare(view, core),
    'most core runs': shareOfRuns(core, texts, segment.stems, 3) >= 0.6 ? 1 : 0,
    'most runs of three': three! >= 0.75 ? 1 : 0,
    'all words stand': one === 1 ? 1 : 0,
    'all in order': words.length > 0 && run === words.length ? 1 : 0,
    'longest run': run / Math.max(1, words.length),
    'longest run words': Math.min(8, run),
    'content stands': content.length > 0 ? content.filter(stands).length / content.length : 0.5,
    'fresh stands': fresh.length > 0 ? fresh.filter(stands).length / fresh.length : 0.5,
    'fresh near': nearShare(view, reading, fresh, tools),
    'fresh missing': Math.min(4, fresh.filter((stem) => !stands(stem)).length),
    'nothing fresh': fresh.length === 0 ? 1 : 0,
    'rarity held': total > 0 ? held / total : 0.5,
    'rarity lost': total - held,
    'one sentence': bestSentence(view, content),
    'answer length': Math.log(words.length + 1),
    'one word': words.length === 1 ? 1 : 0,
    'feeling word': reading.analysis.tokens.some(({ lower }) => feelings.has(lower)) ? 1 : 0,
    'feeling word missing': reading.analysis.tokens.some(
      ({ lower }, i) => feelings.has(lower) && !stands(words[i]!),
    )
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

/** How near the text comes to the answer's own words on average, 1 where it has them all; a half where there are none. */
function nearShare(
  view: QuestionView,
  reading: StemView,
  fresh: readonly string[],
  tools: JudgingTools,
): number {
  if (fresh.length === 0) return 0.5;
  const near = fresh.map((stem) =>
    view.segment.stems.has(stem)
      ? 1
      : nearnessTo(view.segment, reading.analysis.tokens[reading.keys.indexOf(stem)]!.lower, tools),
  );
  return near.reduce((sum, one) => sum + one, 0) / fresh.length;
}

/** Small words that stand before what an answer really says. */
const lead =
  /^(he|she|they|it|i|we|you|his|her|their|its|the|a|an|because|that|so|to|was|were|is|are|had|has|did|would|will|in|order|by|of|for|as|there|and|very|felt|feels|feel)$/;

/** An answer's stems without what it repeats of the question and the small words before the rest: "The Giant was old" to "old". */
function coreOf({ analysis, keys }: StemView, asked: ReadonlySet<string>): readonly string[] {
  const first = analysis.tokens.findIndex(({ lower }, i) => !asked.has(keys[i]!) && !lead.test(lower));
  return first < 0 ? keys : keys.slice(first);
}

/** Highest share of the words that two sentences in a row hold in the same order, gaps allowed. */
function orderShare({ segment }: QuestionView, words: readonly string[]): number {
  if (words.length === 0) return 0.5;
  const { tokens, sentences } = segment.analysis;
  let most = 0;
  for (let s = 0; s < sentences.length; s++) {
    const within = segment.roots.filter((_, i) => tokens[i]!.sentence === s || tokens[i]!.sentence === s + 1);
    most = Math.max(most, commonInOrder(words, within));
  }
  return most / words.length;
}

/** Length of the longest common subsequence. */
function commonInOrder(a: readonly string[], b: readonly string[]): number {
  let before = new Uint8Array(b.length + 1);
  for (const word of a) {
    const row = new Uint8Array(b.length + 1);
    b.forEach(
      (other, j) => (row[j + 1] = word === other ? before[j]! + 1 : Math.max(row[j]!, before[j + 1]!)),
    );
    before = row;
  }
  return before[b.length]!;
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
