import type { Lexicon } from '../lexicon/lexicon.js';
import { isStopWord } from './stop-words.js';

/** A word where it stands, for the model of how hard it is. */
export interface WordInPlace {
  /** As written. */
  readonly word: string;
  /** The sentence around it, or as much of the segment as there is. */
  readonly sentence: string;
}

const endings: Readonly<Record<string, RegExp>> = {
  'ends as an act': /(?:tion|sion|ment|ance|ence|age)s?$/,
  'ends as a quality': /(?:ity|ness|acy|ism|hood|ship)(?:s)?$/,
  'ends as a person': /(?:er|or|ist|ian|ant)s?$/,
  'ends as a science': /(?:ology|ics|graphy|metry|nomy)$/,
  'ends as a substance': /(?:ase|ine|in|ose|gen|ide|ate|ium|yte|ol|cyte|some|osis|itis|emia|oma)s?$/,
  'ends as a form': /(?:ing|ed)$/,
  plural: /[^s]s$/,
};
const begins =
  /^(?:micro|hyper|hypo|poly|pheno|geno|neuro|cyto|photo|hetero|homo|immuno|chromo|proto|auto|bio|electro|meta|epi|endo|exo|trans|inter|sub|anti)/;
const greek = /ph|rh|ps(?=[eyi])|y(?=[^aeiou\b])|x|chr|sth/;

/** Kinds of thing by WordNet's broader words; what can be touched is easier than what can't. */
const kinds: Readonly<Record<string, readonly string[]>> = {
  person: ['person', 'individual', 'someone', 'relative', 'worker', 'leader'],
  'living thing': ['animal', 'plant', 'organism', 'beast', 'mammal', 'bird', 'tree', 'herb'],
  'thing made': [
    'artifact',
    'instrumentality',
    'device',
    'structure',
    'container',
    'clothing',
    'building',
    'room',
    'way',
  ],
  'body part': ['body part', 'organ', 'external body part'],
  stuff: [
    'substance',
    'material',
    'compound',
    'chemical',
    'chemical compound',
    'chemical element',
    'protein',
    'molecule',
    'acid',
    'enzyme',
  ],
  food: ['food', 'foodstuff', 'nutrient', 'drink'],
  time: ['time period', 'time unit', 'period', 'period of time'],
  illness: ['disease', 'illness', 'disorder', 'ill health'],
  idea: ['idea', 'concept', 'content', 'knowledge', 'cognition', 'attribute', 'quality', 'state', 'property'],
  deed: ['act', 'action', 'activity', 'deed', 'human action', 'event'],
  measure: ['measure', 'quantity', 'amount', 'definite quantity', 'unit of measurement'],
  group: ['group', 'grouping', 'social group', 'organization', 'gathering', 'assemblage'],
};

function mean(values: readonly number[], none: number): number {
  return values.length === 0 ? none : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function plainOf(word: string): string {
  return word.toLowerCase().replace(/[’‘]/g, "'").replace(/'s?$/, '');
}

function contextOf(sentence: string, lower: string, lexicon: Lexicon) {
  const others = (sentence.toLowerCase().match(/[a-z][a-z'-]+/g) ?? []).filter((word) => word !== lower);
  const content = others.filter((word) => !isStopWord(word));
  const zipfs = content.map((word) => lexicon.zipf(word));
  return {
    count: others.length,
    meanZipf: mean(zipfs, 4.2),
    rare: mean(
      zipfs.map((zipf) => Number(zipf < 3)),
      0.2,
    ),
  };
}

/** Features of a word by name, each a small number, as the weights file knows them. */
export function difficultyFeatures(place: WordInPlace, lexicon: Lexicon): Readonly<Record<string, number>> {
  const lower = plainOf(place.word);
  const zipf = lexicon.zipf(lower);
  const bases = lexicon.bases(lower);
  const baseZipf = Math.max(zipf, ...bases.map((base) => lexicon.zipf(base)));
  const syllables = lexicon.syllables(lower);
  const senses = Math.log1p(lexicon.senses(lower));
  const broader = new Set(lexicon.hypernyms(lower));
  const gloss = lexicon.glossWords(lower).filter((word) => !isStopWord(word));
  const synonyms = lexicon.synonyms(lower);
  const context = contextOf(place.sentence, lower, lexicon);
  const shares = lexicon.partShares(lower);
  const capital = /^\p{Lu}/u.test(place.word);
  const features: Record<string, number> = {
    zipf,
    'zipf over 2': Math.max(0, zipf - 2),
    'zipf over 3': Math.max(0, zipf - 3),
    'zipf over 4': Math.max(0, zipf - 4),
    'zipf over 5': Math.max(0, zipf - 5),
    unlisted: Number(zipf === 0),
    'base zipf': baseZipf,
    'base zipf over 3': Math.max(0, baseZipf - 3),
    'base zipf over 4': Math.max(0, baseZipf - 4),
    length: lower.length,
    'length over 8': Math.max(0, lower.length - 8),
    syllables,
    'syllables over 3': Math.max(0, syllables - 3),
    familiar: Number(lexicon.familiar(lower)),
    'familiar early': Number(lexicon.familiarEarly(lower)),
    senses,
    'no sense': Number(senses === 0),
    noun: shares.noun,
    verb: shares.verb,
    capital: Number(capital),
    'all capitals': Number(/^\P{Ll}{2,}$/u.test(place.word)),
    digits: Number(/\d/.test(lower)),
    hyphen: Number(lower.includes('-')),
    'learned beginning': Number(begins.test(lower)),
    'learned letters': Number(greek.test(lower)),
    'gloss zipf': mean(
      gloss.map((word) => lexicon.zipf(word)),
      3.5,
    ),
    'rarest gloss word': gloss.length === 0 ? 0 : Math.min(...gloss.map((word) => lexicon.zipf(word))),
    'no gloss': Number(gloss.length === 0),
    'synonym zipf': Math.max(0, ...synonyms.map((word) => lexicon.zipf(word))),
    synonyms: Math.log1p(synonyms.length),
    'sentence length': Math.log1p(context.count),
    'sentence zipf': context.meanZipf,
    'sentence rare': context.rare,
    'rare in a rare sentence': Math.max(0, 4 - zipf) * context.rare,
    'rare capital': Number(capital) * Math.max(0, 4 - zipf),
    'rare and long': Math.max(0, 4 - zipf) * Math.max(0, lower.length - 5),
    'rare with few senses': Math.max(0, 4 - zipf) * Math.max(0, 2 - senses),
  };
  for (const [name, ending] of Object.entries(endings)) features[name] = Number(ending.test(lower));
  for (const [name, words] of Object.entries(kinds)) {
    features[name] = Number(words.some((word) => broader.has(word)));
  }
  return features;
}
