const wordPattern = /[\p{L}\p{N}]+/gu;
const wordsIn = (text: string): string[] => text.match(wordPattern) ?? [];
const oneLine = (text: string): string => text.trim().replace(/\s+/gu, ' ');

/** Every string in a value of plain data, however deep. */
export function* stringsIn(value: unknown): Generator<string> {
  if (typeof value === 'string') yield value;
  else if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) yield* stringsIn(inner);
  }
}

/**
 * Tells whether a string repeats one of many texts. A text of two words or more counts wherever it stands whole, a
 * shorter one ("dam") only where it is all there is, since the passage has that word too. Texts are looked up by their
 * first two words, so that the time taken grows with the string and not with the number of texts.
 */
export function textFinder(texts: Iterable<string>): (string: string) => boolean {
  const short = new Set<string>();
  const long = new Map<string, string[]>();
  for (const text of new Set([...texts].map(oneLine))) {
    if (text === '') continue;
    const [first, second] = wordsIn(text);
    if (first === undefined || second === undefined) short.add(text);
    else long.set(`${first} ${second}`, [...(long.get(`${first} ${second}`) ?? []), text]);
  }
  return (string) => {
    const line = oneLine(string);
    if (short.has(line)) return true;
    if (long.size === 0) return false;
    const words = wordsIn(line);
    return words.some((word, at) =>
      (long.get(`${word} ${words[at + 1] ?? ''}`) ?? []).some((text) => line.includes(text)),
    );
  };
}
