import type { Row } from './row.js';

const number = (value: number | null): string => (value === null ? 'not computable' : value.toFixed(3));

/** The rows as a table for a terminal; columns are as wide as their widest cell. */
export function tableOf(rows: readonly Row[]): string {
  const heads = ['judge', 'figure', 'value', '95 %', 'baselines', 'two people', 'n'];
  const cells = rows.map((row) => [
    row.judge,
    row.figure,
    number(row.value),
    row.interval ? `${row.interval[0].toFixed(3)}-${row.interval[1].toFixed(3)}` : '',
    row.baselines.map(({ name, value }) => `${name} ${number(value)}`).join(', '),
    row.ceiling === null ? '' : number(row.ceiling),
    String(row.n),
  ]);
  const widths = heads.map((head, k) => Math.max(head.length, ...cells.map((line) => line[k]!.length)));
  const line = (words: readonly string[]): string =>
    words
      .map((word, k) => word.padEnd(widths[k]!))
      .join('  ')
      .trimEnd();
  return [line(heads), line(widths.map((width) => '-'.repeat(width))), ...cells.map(line)].join('\n') + '\n';
}
