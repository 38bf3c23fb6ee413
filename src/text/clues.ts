import type { Clue, ClueKind, Range } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis, Token } from './analysis.js';
import { analyse } from './analyse.js';
import { clueForm, trimClue } from './clue-form.js';
import { wordMark, type ClueRule } from './clue-rules.js';
import { announcing } from './clue-rules-announcing.js';
import { causing, contrasting } from './clue-rules-telling.js';
import { inferredClue } from './inferred-clue.js';
import { antonymAmong, namesQuality, namesThing, synonymAmong } from './word-sense.js';

interface Spot {
  readonly word: string;
  readonly analysis: Analysis;
  /** Where the word stands. */
  readonly at: Range;
  /** Its sentence with the ones before and behind. */
  readonly window: Range;
  readonly sentence: number;
  readonly lexicon: Lexicon;
}

/** What a rule finds in a text, as a range of it; the word's place is cut out and marked first. */
export function applyRule(rule: ClueRule, text: string, window: Range, at: Range): Range | null {
  const marked = text.slice(window.start, at.start) + wordMark + text.slice(at.end, window.end);
  const found = rule.pattern.exec(marked)?.indices?.groups?.['clue'];
  if (!found) return null;
  const cut = window.start + (at.start - window.start);
  const back = (offset: number) => {
    const plain = window.start + offset;
    return plain <= cut ? plain : plain + (at.end - at.start) - wordMark.length;
  };
  return { start: back(found[0]), end: back(found[1]) };
}

function clue(kind: ClueKind, { start, end }: Range): Clue {
  return { kind, place: { in: 'segment', start, end } };
}

/** "but" and "while" set many things against each other; only beside a quality do they tell what a word means. */
const looseContrasts = /^(?:although|but|however)/;

function announced({ analysis, window, at, word, lexicon }: Spot): Clue | null {
  for (const rule of announcing) {
    const found = applyRule(rule, analysis.text, window, at);
    if (!found) continue;
    const shaped = clueForm(rule, found, analysis, word, lexicon);
    if (shaped) return clue(shaped.kind, shaped);
  }
  return null;
}

function contrastedOrCaused({ analysis, window, at, word, lexicon }: Spot): Clue | null {
  if (namesThing(word, lexicon)) return null;
  for (const rule of [...causing, ...contrasting]) {
    const found = applyRule(rule, analysis.text, window, at);
    if (!found) continue;
    const loose = rule.kind === 'contrast' && looseContrasts.test(rule.name);
    const trimmed = trimClue(found, analysis, rule.kind === 'contrast' ? { word, lexicon } : null);
    if (trimmed && (!loose || trimmed.opposite || namesQuality(word, lexicon)))
      return clue(rule.kind as ClueKind, trimmed);
  }
  return null;
}

/** An easier word for the same thing, or the opposite, with no signal. */
function named({ analysis, sentence, at, word, lexicon }: Spot): Clue | null {
  const near = analysis.tokens.filter(
    (token) =>
      Math.abs(token.sentence - sentence) <= 1 &&
      token.start !== at.start &&
      lexicon.zipf(token.lower) > lexicon.zipf(word),
  );
  const same = synonymAmong(word, near, lexicon);
  if (same) return clue('synonym', same);
  const opposite = antonymAmong(word, near, lexicon);
  return opposite ? clue('contrast', opposite) : null;
}

/** The sentence of a token with its neighbours, as far as they are in the same paragraph. */
function windowAround({ text, sentences }: Analysis, { sentence, start, end }: Token): Range {
  const from = sentences[Math.max(0, sentence - 1)]?.start ?? 0;
  const to = sentences[Math.min(sentences.length - 1, sentence + 1)]?.end ?? text.length;
  const before = text.slice(from, start).lastIndexOf('\n\n');
  const behind = text.slice(end, to).indexOf('\n\n');
  return { start: before < 0 ? from : from + before + 2, end: behind < 0 ? to : end + behind };
}

/** Where the word may stand: at the offset first, then wherever else it is written. */
function spotsOf(
  word: string,
  analysis: Analysis,
  offset: number | undefined,
  lexicon: Lexicon,
): readonly Spot[] {
  const lower = word.trim().toLowerCase().replace(/[’‘]/g, "'");
  const bases = new Set(lexicon.bases(lower));
  const { tokens } = analysis;
  const matches = tokens.filter(
    (token) => token.lower === lower || token.lower.replace(/'s?$/, '') === lower,
  );
  const alike = tokens.filter(
    (token) => !matches.includes(token) && lexicon.bases(token.lower).some((base) => bases.has(base)),
  );
  const first = matches.filter(
    (token) => offset !== undefined && token.start <= offset && offset < token.end,
  );
  const rest = [...matches, ...alike].filter((token) => !first.includes(token));
  return [...first, ...rest].map((token) => ({
    word: lower,
    analysis,
    at: { start: token.start, end: token.start + token.text.replace(/['’]s?$/, '').length },
    window: windowAround(analysis, token),
    sentence: token.sentence,
    lexicon,
  }));
}

/** Finds the help that a text gives with a word; the place is in the segment, UTF-16. Null where there is none or the word isn't there. */
export function findClue(
  word: string,
  segmentText: string,
  offset: number | undefined,
  lexicon: Lexicon,
): Clue | null {
  return findClueIn(word, analyse(segmentText, lexicon), offset, lexicon);
}

/** As `findClue`, for a segment that is cut into words already. */
export function findClueIn(
  word: string,
  segment: Analysis,
  offset: number | undefined,
  lexicon: Lexicon,
): Clue | null {
  const spots = spotsOf(word, segment, offset, lexicon);
  for (const find of [announced, contrastedOrCaused, named]) {
    for (const spot of spots) {
      const found = find(spot);
      if (found) return found;
    }
  }
  const [spot] = spots;
  const inferred = spot ? inferredClue(spot.word, spot.analysis, spot.at, spot.sentence, lexicon) : null;
  return inferred ? clue('inference', inferred) : null;
}
