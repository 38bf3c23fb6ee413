/** Remembers answers of a pure look-up; forgets all once `most` are held, so that memory stays bounded. */
export function remember<A>(look: (word: string) => A, most = 20_000): (word: string) => A {
  const held = new Map<string, A>();
  return (word) => {
    const known = held.get(word);
    if (known !== undefined) return known;
    const answer = look(word);
    if (held.size >= most) held.clear();
    held.set(word, answer);
    return answer;
  };
}
