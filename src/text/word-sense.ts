import type { Lexicon } from '../lexicon/lexicon.js';
import type { Token } from './analysis.js';

/** Broader words of what can't be seen and touched: a contrast, a cause or a scene can tell what such a noun means. */
const unseen = new Set(
  (
    'state|condition|feeling|emotion|quality|attribute|trait|act|action|activity|event|happening|occurrence|phenomenon|' +
    'situation|state of affairs|difficulty|trouble|danger|attitude|process|change|alteration|communication|message|' +
    'weather|storm|windstorm|bad weather|ability|skill|misfortune|bad luck|damage|harm|failure|success|fight|conflict|' +
    'disagreement|desire|fear|sorrow|joy|pain|noise|sound|movement|motion|effort|work|belief|idea|thought|lack|need|' +
    'disorder|confusion|silence|amount|quantity|loss|rest|inaction|excitement|punishment|wrongdoing|speech|trip|journey'
  ).split('|'),
);

/** Whether a word names a thing, an animal or an office rather than a quality, a deed or a state. */
export function namesThing(lower: string, lexicon: Lexicon): boolean {
  const shares = lexicon.partShares(lower);
  if (/(?:ed|ing)$/.test(lower) && shares.verb > 0.1) return false;
  if (shares.noun < 0.6) return lexicon.senses(lower) === 0;
  return !lexicon.hypernyms(lower).some((word) => unseen.has(word));
}

/** The first token that means the same by WordNet, or null; very common words ("get") mean too many things to tell. */
export function synonymAmong(lower: string, tokens: readonly Token[], lexicon: Lexicon): Token | null {
  return meaningAmong(lower, new Set(lexicon.synonyms(lower)), tokens, lexicon);
}

/** The first token that means the opposite by WordNet, or null. */
export function antonymAmong(lower: string, tokens: readonly Token[], lexicon: Lexicon): Token | null {
  return meaningAmong(lower, new Set(lexicon.antonyms(lower)), tokens, lexicon);
}

const tooCommon = 6;

function meaningAmong(
  lower: string,
  meanings: ReadonlySet<string>,
  tokens: readonly Token[],
  lexicon: Lexicon,
): Token | null {
  const own = new Set(lexicon.bases(lower));
  const meant = new Set([...meanings].flatMap((word) => [word, ...lexicon.bases(word)]));
  const found = tokens.find((token) => {
    if (lexicon.zipf(token.lower) > tooCommon) return false;
    const bases = lexicon.bases(token.lower);
    return !bases.some((base) => own.has(base)) && bases.some((base) => meant.has(base));
  });
  return found ?? null;
}

/** Whether a word mostly says what something is like. */
export function namesQuality(lower: string, lexicon: Lexicon): boolean {
  const shares = lexicon.partShares(lower);
  return (
    shares.adj + shares.adv > 0.3 || (/ed$/.test(lower) && shares.verb > 0.3) || lexicon.senses(lower) === 0
  );
}
