import type { Row } from './row.js';

/** A figure may fall short of the committed one by this much. */
const slack = 0.005;

/** Name under which a figure is committed. */
export const figureName = ({ judge, figure }: Row): string => `${judge}: ${figure}`;

/** Figures that have become worse than the committed ones, or are gone; each as a sentence. */
export function belowFloor(
  rows: readonly Row[],
  committed: Readonly<Record<string, number>>,
): readonly string[] {
  const found = new Map(rows.map((row) => [figureName(row), row]));
  return Object.entries(committed).flatMap(([name, floor]) => {
    const row = found.get(name);
    if (!row || row.value === null) return [`${name}: no figure, committed is ${floor}`];
    const worse = row.more ? floor - row.value : row.value - floor;
    return worse > slack ? [`${name}: ${row.value.toFixed(4)}, committed is ${floor}`] : [];
  });
}
