/** Rows of numbers of which most are 0: row r has the `columns` and `values` from `starts[r]` up to `starts[r + 1]`. */
export interface Rows {
  readonly starts: Int32Array;
  readonly columns: Uint16Array;
  readonly values: Float32Array;
  /** Number of columns, 65536 at most. */
  readonly width: number;
}

/** Takes numbers row by row; millions of them, hence typed arrays that grow. */
export interface RowPacker {
  put(column: number, value: number): void;
  endRow(): void;
  rows(): Rows;
}

/** A packer for rows of `width` columns. */
export function rowPacker(width: number): RowPacker {
  const starts = [0];
  let columns = new Uint16Array(1 << 16);
  let values = new Float32Array(1 << 16);
  let used = 0;
  return {
    put(column, value) {
      if (value === 0) return;
      if (used === columns.length) {
        columns = copyTo(new Uint16Array(used * 2), columns);
        values = copyTo(new Float32Array(used * 2), values);
      }
      columns[used] = column;
      values[used] = value;
      used += 1;
    },
    endRow() {
      starts.push(used);
    },
    rows: () => ({
      starts: Int32Array.from(starts),
      columns: columns.slice(0, used),
      values: values.slice(0, used),
      width,
    }),
  };
}

function copyTo<Numbers extends Uint16Array | Float32Array>(to: Numbers, from: Numbers): Numbers {
  to.set(from);
  return to;
}

/** Packs rows given as pairs of column and value. */
export function packRows(rows: readonly (readonly (readonly [number, number])[])[], width: number): Rows {
  const packer = rowPacker(width);
  for (const row of rows) {
    for (const [column, value] of row) packer.put(column, value);
    packer.endRow();
  }
  return packer.rows();
}
