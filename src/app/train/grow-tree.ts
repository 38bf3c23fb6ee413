import { treeEnd } from '../../text/trees.js';
import type { BinTable } from './bin-table.js';

/** When growing stops. */
export interface GrowOptions {
  readonly depth: number;
  readonly ridge: number;
  readonly least: number;
}

interface Split {
  readonly column: number;
  readonly bin: number;
  readonly gain: number;
}

/**
 * Grows one tree on the cases `rows`, asking only for the features `columns`; `slope` and `bend` are of each case's loss.
 * In the row of numbers that is given back (see judging/trees.ts) cuts are still numbers of bins. `rows` is reordered.
 */
export function growTree(
  { bins, names, cuts }: BinTable,
  rows: Int32Array,
  columns: Int32Array,
  slope: Float64Array,
  bend: Float64Array,
  { depth, ridge, least }: GrowOptions,
): number[] {
  const width = names.length;
  /** Where a column's bins begin in a histogram of pairs of slope and bend. */
  const begins = new Int32Array(columns.length + 1);
  columns.forEach((k, c) => (begins[c + 1] = begins[c]! + 2 * (cuts[k]!.length + 1)));
  const size = begins[columns.length]!;
  const tree: number[] = [];
  const right = new Int32Array(rows.length);

  const count = (from: number, to: number): Float64Array => {
    const sums = new Float64Array(size);
    for (let r = from; r < to; r++) {
      const row = rows[r]!;
      const base = row * width;
      const g = slope[row]!;
      const h = bend[row]!;
      for (let c = 0; c < columns.length; c++) {
        const at = begins[c]! + 2 * bins[base + columns[c]!]!;
        sums[at]! += g;
        sums[at + 1]! += h;
      }
    }
    return sums;
  };

  const bestSplit = (sums: Float64Array, g: number, h: number): Split | null => {
    let best: Split | null = null;
    const before = (g * g) / (h + ridge);
    for (let c = 0; c < columns.length; c++) {
      let [left, leftBend] = [0, 0];
      const last = begins[c + 1]! - 2;
      for (let at = begins[c]!; at < last; at += 2) {
        left += sums[at]!;
        leftBend += sums[at + 1]!;
        if (leftBend < least) continue;
        if (h - leftBend < least) break;
        const gain = (left * left) / (leftBend + ridge) + (g - left) ** 2 / (h - leftBend + ridge) - before;
        if (gain > (best?.gain ?? 1e-6)) best = { column: columns[c]!, bin: (at - begins[c]!) / 2, gain };
      }
    }
    return best;
  };

  /** Moves the cases up to the bin before the others, order kept; where the others begin. */
  const part = (from: number, to: number, { column, bin }: Split): number => {
    let [middle, others] = [from, 0];
    for (let r = from; r < to; r++) {
      const row = rows[r]!;
      if (bins[row * width + column]! <= bin) rows[middle++] = row;
      else right[others++] = row;
    }
    rows.set(right.subarray(0, others), middle);
    return middle;
  };

  const grow = (from: number, to: number, left: number, sums: Float64Array | null): void => {
    let [g, h] = [0, 0];
    for (let r = from; r < to; r++) {
      g += slope[rows[r]!]!;
      h += bend[rows[r]!]!;
    }
    const split = sums ? bestSplit(sums, g, h) : null;
    if (!split || !sums) {
      tree.push(treeEnd, -g / (h + ridge));
      return;
    }
    const at = tree.length;
    tree.push(split.column, split.bin, 0);
    const middle = part(from, to, split);
    if (left === 1) {
      grow(from, middle, 0, null);
      tree[at + 2] = tree.length;
      grow(middle, to, 0, null);
      return;
    }
    const smallFirst = middle - from <= to - middle;
    const small = smallFirst ? count(from, middle) : count(middle, to);
    for (let k = 0; k < size; k++) sums[k]! -= small[k]!;
    grow(from, middle, left - 1, smallFirst ? small : sums);
    tree[at + 2] = tree.length;
    grow(middle, to, left - 1, smallFirst ? sums : small);
  };

  grow(0, rows.length, depth, depth > 0 ? count(0, rows.length) : null);
  return tree;
}
