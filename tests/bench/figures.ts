/** The middle of some figures; of an even number the upper of the two. */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

/** The value below which a share of some figures lies; NaN of none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** One figure that is printed: a name, what was measured, and its unit. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** What is aimed at, where there is an aim. */
  readonly target?: string;
}

/** Figures as lines of text, in columns. */
export function table(figures: readonly Figure[]): string {
  const width = Math.max(...figures.map(({ name }) => name.length));
  return figures
    .map(({ name, value, unit, target }) => {
      const number = value.toFixed(value < 10 ? 3 : 0).padStart(8);
      return `${name.padEnd(width)} ${number} ${unit}${target === undefined ? '' : `   (aim: ${target})`}\n`;
    })
    .join('');
}

/** Tells how far the work is; results alone go to standard output. */
export function progress(words: string): void {
  process.stderr.write(`${words}\n`);
}
