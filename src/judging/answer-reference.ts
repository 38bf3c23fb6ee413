/*
 * Tried on answers to questions never seen (AUC): words of the reference .714; letters shared .708; this model without
 * word knowledge .761, with WordNet's relations .768, with order and nearness .772; boosted trees on the same .768. Within one
 * question it is .805: what is missing is how hard a question is, which a judge of one answer can't know.
 */
import { closenessFeatures } from './answer-closeness.js';
import { contradiction, negates, opposed } from './answer-negation.js';
import { raritySum, shareOf, type StemView } from './answer-view.js';
import { cosine, vectorOf } from './meaning-vectors.js';
import type { Features } from './question-features.js';
import type { JudgingTools } from './tools.js';

/** Features of an answer beside a reference answer; the more of what the reference adds to the question is said, the likelier it is right. */
export function referenceFeatures(
  answer: StemView,
  reference: StemView,
  question: StemView,
  tools: JudgingTools,
): Features {
  const asked = question.rarities;
  const { synonyms: related, near, antonyms } = kinOf(answer, reference, tools);
  const said = (stem: string): boolean => answer.rarities.has(stem);
  const meant = (stem: string): boolean => said(stem) || related.has(stem);
  const all = raritySum(reference, () => true);
  const fresh = raritySum(reference, (stem) => !asked.has(stem));
  const saidAll = raritySum(reference, said);
  const saidFresh = raritySum(reference, (stem) => !asked.has(stem) && said(stem));
  const meantFresh = raritySum(reference, (stem) => !asked.has(stem) && meant(stem));
  const own = raritySum(answer, () => true);
  const right = raritySum(answer, (stem) => reference.rarities.has(stem));
  const recall = shareOf(saidAll, all);
  const precision = shareOf(right, own);
  const freshRecall = shareOf(saidFresh, fresh, recall);
  const ownFresh = raritySum(answer, (stem) => !asked.has(stem));
  const rightFresh = raritySum(answer, (stem) => !asked.has(stem) && reference.rarities.has(stem));
  const length = answer.keys.length;
  const pairs = pairsOf(reference.keys);
  const trigrams = gramsOf(reference.analysis.text);
  const grams = gramsOf(answer.analysis.text);
  const shared = [...trigrams].filter((gram) => grams.has(gram)).length;
  return {
    recall,
    precision,
    balance: shareOf(2 * recall * precision, recall + precision),
    'fresh recall': freshRecall,
    'fresh meant': shareOf(meantFresh, fresh, recall),
    'fresh near': shareOf(
      raritySum(reference, (stem) => !asked.has(stem) && (meant(stem) || near.has(stem))),
      fresh,
      recall,
    ),
    antonyms,
    order: orderKept(answer.keys, reference),
    'fresh terms': Math.min(12, [...reference.rarities.keys()].filter((stem) => !asked.has(stem)).length),
    'fresh count said': Math.min(
      6,
      [...reference.rarities.keys()].filter((stem) => !asked.has(stem) && meant(stem)).length,
    ),
    'asks why': /\bwhy\b/i.test(question.analysis.text) ? 1 : 0,
    'asks to explain': /\b(explain|describe|how)\b/i.test(question.analysis.text) ? 1 : 0,
    'asks to choose': /\bor\b|\bwhich\b/i.test(question.analysis.text) ? 1 : 0,
    ...leanings(answer, reference, asked, tools),
    ...closenessFeatures(answer, reference, question, tools),
    'fresh precision': shareOf(rightFresh, ownFresh),
    'fresh said': saidFresh,
    'nothing fresh said': saidFresh === 0 && fresh > 0 ? 1 : 0,
    'pairs said': shareOf([...pairsOf(answer.keys)].filter((pair) => pairs.has(pair)).length, pairs.size),
    'letters shared': shareOf(2 * shared, trigrams.size + grams.size),
    'letters of reference': shareOf(shared, trigrams.size),
    'letters of answer': shareOf(shared, grams.size),
    'asked words': shareOf(
      raritySum(answer, (stem) => asked.has(stem)),
      own,
    ),
    'fresh words': Math.min(10, [...answer.rarities.keys()].filter((stem) => !asked.has(stem)).length),
    length: Math.log(length + 1),
    'very short': length <= 3 ? 1 : 0,
    'reference length': Math.log(reference.keys.length + 1),
    'length against reference': Math.log((length + 1) / (reference.keys.length + 1)),
    'question length': Math.log(question.keys.length + 1),
    'short reference said': reference.keys.length < 10 ? freshRecall : 0,
    'long reference said': reference.keys.length >= 18 ? freshRecall : 0,
    'negated otherwise': negates(answer.analysis) === negates(reference.analysis) ? 0 : 1,
    'negates too': negates(answer.analysis) && negates(reference.analysis) ? 1 : 0,
    contradicted: contradiction(answer.polarity, reference.polarity) === null ? 0 : 1,
    opposed: opposed(answer.analysis, reference.analysis) ? 1 : 0,
    'numbers said': numbersSaid(answer, reference),
    'begins alike': answer.keys[0] === reference.keys[0] ? 1 : 0,
    'does not know': /\b(don'?t know|idk|not sure|no idea)\b/i.test(answer.analysis.text) ? 1 : 0,
    because: /\b(because|since|so)\b/i.test(answer.analysis.text) ? 1 : 0,
  };
}

/** How near the answer's words are in use to the reference's, by word vectors: opposites are near too, so this only helps. */
function leanings(
  answer: StemView,
  reference: StemView,
  asked: ReadonlyMap<string, number>,
  { lexicon }: JudgingTools,
): Features {
  const vectors = ({ analysis, rarities, keys }: StemView) =>
    analysis.tokens.flatMap(({ lower, content }, i) => {
      const vector = content ? vectorOf(lower, lexicon) : null;
      return vector ? [{ stem: keys[i]!, vector, rarity: rarities.get(keys[i]!) ?? 0 }] : [];
    });
  const said = vectors(answer);
  const wanted = vectors(reference);
  const lean = (from: typeof said, to: typeof said): number => {
    let sum = 0;
    let total = 0;
    for (const { stem, vector, rarity } of from) {
      if (asked.has(stem)) continue;
      total += rarity;
      let nearest = 0;
      for (const other of to)
        nearest = Math.max(nearest, other.stem === stem ? 1 : cosine(vector, other.vector));
      sum += rarity * nearest;
    }
    return shareOf(sum, total);
  };
  return {
    'reference leaned to': lean(wanted, said),
    'answer leans': lean(said, wanted),
  };
}

interface Kin {
  /** Stems of the reference that the answer says by a synonym. */
  readonly synonyms: ReadonlySet<string>;
  /** Stems of the reference for which the answer has a broader word, a narrower one or one of its meaning. */
  readonly near: ReadonlySet<string>;
  /** 1 where the answer has an opposite of a word of the reference that it does not have itself. */
  readonly antonyms: number;
}

/** How the answer's other words are related to the reference's. */
function kinOf(answer: StemView, reference: StemView, { lexicon }: JudgingTools): Kin {
  const own = answer.analysis.tokens.filter(({ content, stem }) => content && !reference.rarities.has(stem));
  const synonyms = new Set(own.flatMap(({ lower }) => lexicon.synonyms(lower)));
  const broader = new Set(own.flatMap(({ lower }) => lexicon.hypernyms(lower)));
  const opposite = new Set(own.flatMap(({ lower }) => lexicon.antonyms(lower)));
  const written = new Set(own.flatMap(({ lower }) => lexicon.bases(lower)));
  const found = { synonyms: new Set<string>(), near: new Set<string>(), antonyms: 0 };
  for (const { content, lower, stem } of reference.analysis.tokens) {
    if (!content || answer.rarities.has(stem)) continue;
    const bases = [lower, ...lexicon.bases(lower)];
    if (bases.some((base) => synonyms.has(base))) found.synonyms.add(stem);
    if (bases.some((base) => broader.has(base))) found.near.add(stem);
    if (lexicon.hypernyms(lower).some((word) => written.has(word))) found.near.add(stem);
    if (lexicon.glossWords(lower).some((word) => written.has(word))) found.near.add(stem);
    if (bases.some((base) => opposite.has(base))) found.antonyms = 1;
  }
  return found;
}

/** Share of neighbouring shared words that come in the reference's order, 0..1; a half where fewer than two are shared. */
function orderKept(keys: readonly string[], reference: StemView): number {
  const places = keys.filter((key) => reference.rarities.has(key)).map((key) => reference.keys.indexOf(key));
  if (places.length < 2) return 0.5;
  return places.slice(1).filter((place, i) => place >= places[i]!).length / (places.length - 1);
}

function pairsOf(keys: readonly string[]): ReadonlySet<string> {
  return new Set(keys.slice(1).map((key, i) => `${keys[i]!} ${key}`));
}

function gramsOf(text: string): ReadonlySet<string> {
  const plain = ` ${text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()} `;
  return new Set([...plain].slice(0, -3).map((_, i) => plain.slice(i, i + 4)));
}

/** 1 where the reference's numbers are all said, -1 where others are said instead, 0 where it has none. */
function numbersSaid(answer: StemView, reference: StemView): number {
  const numbers = ({ analysis }: StemView): readonly string[] => analysis.text.match(/\d+(\.\d+)?/g) ?? [];
  const wanted = numbers(reference);
  const given = new Set(numbers(answer));
  if (wanted.length === 0) return 0;
  return wanted.every((number) => given.has(number)) ? 1 : given.size > 0 ? -1 : 0;
}
