import type { Analysis } from '../text/analysis.js';
import { meantWord } from '../text/similar.js';
import { isStopWord } from '../text/stop-words.js';
import { polarityOf, type Polarity } from './answer-negation.js';
import { rootOf } from './root.js';
import { rarityOf } from './question-view.js';
import type { JudgingTools } from './tools.js';

/** A text by its content stems, spelling put right against another text. */
export interface StemView {
  readonly analysis: Analysis;
  /** Stem of every token, as meant. */
  readonly keys: readonly string[];
  /** Content stems with how much each tells. */
  readonly rarities: ReadonlyMap<string, number>;
  readonly polarity: Polarity;
}

/** Small words that carry an answer all the same: numbers, directions, yes and no. */
const telling =
  /^(\d+|one|two|three|four|five|six|seven|eight|nine|ten|more|less|up|down|yes|no|same|all|none|most|both|in|out|a|b|c|d)$/;

/** Reads a text by its stems; words that nobody knows are read as words of `against`. */
export function viewStems(text: string, against: Analysis | null, tools: JudgingTools): StemView {
  const analysis = tools.analyse(text);
  const rarities = new Map<string, number>();
  const keys = analysis.tokens.map((token) => {
    const known =
      !against ||
      against.stems.has(token.stem) ||
      tools.lexicon.knows(token.lower) ||
      !/\p{L}/u.test(token.lower);
    const lower = known ? token.lower : meantWord(token, against, tools.lexicon);
    const stem = rootOf(lower, tools.lexicon);
    const content = known ? token.content : !isStopWord(lower);
    if (content) rarities.set(stem, rarityOf(lower, tools.lexicon));
    else if (telling.test(lower) && lower.length > 1) rarities.set(stem, 0.25);
    return stem;
  });
  return { analysis, keys, rarities, polarity: polarityOf(analysis, keys) };
}

/** Sum of the rarity of stems for which `holds`. */
export function raritySum(view: StemView, holds: (stem: string) => boolean): number {
  let sum = 0;
  for (const [stem, rarity] of view.rarities) if (holds(stem)) sum += rarity;
  return sum;
}

/** Share `part` of `whole`, `none` where the whole is nothing. */
export function shareOf(part: number, whole: number, none = 0): number {
  return whole > 0 ? part / whole : none;
}
