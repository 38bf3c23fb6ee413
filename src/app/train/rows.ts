/** Rows of numbers of which most are 0: row r has the `columns` and `values` from `starts[r]` up to `starts[r + 1]`. */
export interface Rows {
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
  /** Number of columns. */
  readonly width: number;
}

/** Packs rows given as pairs of column and value. */
export function packRows(rows: readonly (readonly (readonly [number, number])[])[], width: number): Rows {
  const starts = new Int32Array(rows.length + 1);
  rows.forEach((row, r) => (starts[r + 1] = starts[r]! + row.length));
  const columns = new Int32Array(starts.at(-1)!);
  const values = new Float64Array(columns.length);
  rows.forEach((row, r) => {
    row.forEach(([column, value], k) => {
      columns[starts[r]! + k] = column;
      values[starts[r]! + k] = value;
    });
  });
  return { starts, columns, values, width };
}
