/** The words of a text in lower case, punctuation left out. */
export function plainWords(text: string): readonly string[] {
  return (
    text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[’‘]/gu, "'")
      .match(/[\p{L}\p{N}]+(?:['-][\p{L}\p{N}]+)*/gu) ?? []
  );
}

/** Whether two texts share a run of so many words. */
export function sharesRun(one: string, other: string, length: number): boolean {
  const runs = (text: string) => {
    const words = plainWords(text);
    return words
      .slice(0, Math.max(0, words.length - length + 1))
      .map((_, at) => words.slice(at, at + length).join(' '));
  };
  const known = new Set(runs(other));
  return runs(one).some((run) => known.has(run));
}

/** Words that hold a sentence together and stay when it is given with gaps. */
const joints = new Set(
  (
    'a an the and or but so because that which who when where while as if than then to of in on at by for from with ' +
    'into out up down over under is are was were be been has have had do does did can could will would may might not ' +
    'no it its they their them he his him she her we our you your this these those there'
  ).split(' '),
);

/** A sentence of which the first half stands and the telling words of the second are gaps; null where it is too short to share (fewer than six words). */
export function withGaps(sentence: string): string | null {
  const parts = sentence.trim().split(/\s+/u);
  if (parts.length < 6) return null;
  const from = Math.ceil(parts.length / 2);
  const gapped = parts.map((part, at) => {
    const word = part.toLowerCase().replace(/[^\p{L}\p{N}'’-]/gu, '');
    return at < from || joints.has(word) ? part : part.replace(/[\p{L}\p{N}'’-]+/u, '____');
  });
  return gapped.join(' ');
}
