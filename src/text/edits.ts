import { distance } from 'fastest-levenshtein';

/** Letters to put in, take out or change to make one word of the other (Levenshtein); two neighbours swapped count as one. */
export function edits(a: string, b: string): number {
  const plain = distance(a, b);
  if (plain !== 2 || a.length !== b.length) return plain;
  let at = 0;
  while (a[at] === b[at]) at++;
  const swapped = a.slice(0, at) + (a[at + 1] ?? '') + (a[at] ?? '') + a.slice(at + 2);
  return swapped === b ? 1 : plain;
}
