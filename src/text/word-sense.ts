import type { Lexicon } from '../lexicon/lexicon.js';
import type { Token } from './analysis.js';

/** Broader words of things that can be seen and touched: a contrast or a cause beside them seldom tells what they are. */
const things = new Set([
  'artifact',
  'artefact',
  'instrumentality',
  'instrument',
  'device',
  'structure',
  'construction',
  'building',
  'clothing',
  'covering',
  'container',
  'furniture',
  'furnishing',
  'animal',
  'plant',
  'food',
  'organism',
  'tool',
  'vehicle',
  'decoration',
  'implement',
  'place of business',
  'establishment',
  'solid',
  'fabric',
  'bird',
  'mammal',
  'worker',
  'skilled worker',
  'official',
  'functionary',
  'public servant',
  'seat',
  'sheath',
  'edifice',
  'facility',
  'musical instrument',
  'weapon',
  'vessel',
  'craft',
  'dessert',
  'dish',
  'shelter',
  'contest',
  'race',
  'wind instrument',
  'woodwind',
  'stringed instrument',
  'equine',
  'ungulate',
  'carnivore',
  'rodent',
  'reptile',
  'amphibian',
  'fish',
  'insect',
  'arthropod',
  'tree',
  'shrub',
  'herb',
  'flower',
  'vegetable',
  'fruit',
  'roof',
  'dome',
  'representative',
  'legislator',
  'leader',
  'lawman',
  'judge',
  'boat',
  'ship',
  'wagon',
  'carriage',
  'jewelry',
  'gem',
  'substance',
  'matter',
  'fluid',
  'body part',
  'organ',
  'plant organ',
  'plant part',
  'carbohydrate',
  'protein',
  'compound',
  'chemical compound',
  'organic compound',
  'chemical',
  'port',
  'geographic point',
  'geographical point',
  'body of water',
  'geological formation',
  'formation',
  'region',
  'land',
  'area',
  'smell',
  'unit',
  'time unit',
]);

/** Whether a word names a thing, an animal or an office rather than a quality, a deed or a state. */
export function namesThing(lower: string, lexicon: Lexicon): boolean {
  const shares = lexicon.partShares(lower);
  if (/(?:ed|ing)$/.test(lower) && shares.verb > 0.1) return false;
  if (shares.noun < 0.6) return lexicon.senses(lower) === 0;
  return lexicon.hypernyms(lower).some((word) => things.has(word));
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
