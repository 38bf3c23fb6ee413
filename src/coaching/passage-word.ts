/** Words too plain to be named as what a try is about. */
const plain = new Set(
  (
    'about above after again against almost along also although always among another around away back because been ' +
    'before began behind being below between both came come could does doing done down during each even ever every ' +
    'find first from gave give goes going gone good great have having here hers herself himself into itself just keep ' +
    'kept know last later less like little long look made make many might more most much must near never next nothing ' +
    'often once only other ours over part people quite said same says seem should since some something soon still ' +
    'such take than that their theirs them then there these they thing things think this those though through time ' +
    'told took under until upon used very want well went were what when where which while whole whom whose will with ' +
    'without would year years your yours'
  ).split(' '),
);

interface Token {
  readonly word: string;
  readonly key: string;
}

function tokens(text: string): Token[] {
  return Array.from(text.normalize('NFC').matchAll(/\p{L}[\p{L}’'-]*/gu), ([word]) => ({
    word: word.replace(/[’'](s|re|ll|ve|d)?$/u, ''),
    key: word
      .toLowerCase()
      .replace(/[’'](s|re|ll|ve|d)?$/u, '')
      .replace(/[’]/gu, "'"),
  }));
}

/** Folds the commonest endings, so that "beavers" and "beaver" count as one. */
function fold(key: string): string {
  return key.length > 4 ? key.replace(/(?:ies|y)$/u, 'i').replace(/(?:es|s|ed|ing)$/u, '') : key;
}

function tellable({ key }: Token): boolean {
  return key.length >= 4 && key.length <= 12 && !plain.has(key) && /^\p{L}+$/u.test(key);
}

/** The form to show: as in the text, but without a capital that only opens a sentence. */
function shown(key: string, of: readonly Token[]): string {
  const forms = of.filter((token) => token.key === key).map((token) => token.word);
  return forms.find((form) => form === key) ?? forms[0] ?? key;
}

/** The longest telling word of the segment (4 to 12 letters) that also stands in the pupil's text spelt the same; null where there is none. */
export function sharedWord(text: string, segment: string): string | null {
  const inSegment = tokens(segment);
  const written = new Set(tokens(text).map((token) => token.key));
  const both = inSegment.filter((token) => tellable(token) && written.has(token.key));
  const longest = both.reduce<Token | null>(
    (best, token) => (best === null || token.key.length > best.key.length ? token : best),
    null,
  );
  return longest === null ? null : shown(longest.key, inSegment);
}

/** Telling words of the segment by how often they stand there, most often first; endings folded, ties in order of the text. */
export function frequentWords(segment: string): readonly { readonly word: string; readonly times: number }[] {
  const all = tokens(segment);
  const counts = new Map<string, { key: string; times: number }>();
  for (const token of all) {
    if (!tellable(token)) continue;
    const folded = fold(token.key);
    const seen = counts.get(folded);
    if (seen) seen.times += 1;
    else counts.set(folded, { key: token.key, times: 1 });
  }
  return [...counts.values()]
    .sort((a, b) => b.times - a.times)
    .map(({ key, times }) => ({ word: shown(key, all), times }));
}

/** A telling word that the segment has at least three times and the pupil's text not at all; null where there is none. */
export function oftenMissing(text: string, segment: string): string | null {
  const written = new Set(tokens(text).map((token) => fold(token.key)));
  const missing = frequentWords(segment).find(
    ({ word, times }) => times >= 3 && !written.has(fold(word.toLowerCase())),
  );
  return missing?.word ?? null;
}
