/** Five places are enough for what is learned, and make files that compare. */
export function rounded(value: number): number {
  return Math.round(value * 1e5) / 1e5;
}
