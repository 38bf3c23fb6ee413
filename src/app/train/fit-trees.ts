/*
 * Gradient boosting with a second-order step (Friedman 2001; Chen & Guestrin 2016): each tree is grown on the slope and
 * bend of the log loss at what the trees before it say, on a part of the cases and of the features drawn from a seed.
 */
import { treeEnd, type Trees } from '../../text/trees.js';
import { seededRandom } from '../evaluate/seeded-random.js';
import type { BinTable } from './bin-table.js';
import { growTree } from './grow-tree.js';

/** How trees are grown. */
export interface TreesOptions {
  readonly trees: number;
  readonly depth: number;
  /** Share of each tree's step that is taken. */
  readonly rate: number;
  /** Share of cases and of features that each tree sees. */
  readonly rows: number;
  readonly columns: number;
  /** Penalty on squared log odds at an end. */
  readonly ridge: number;
  /** Least bend (about a quarter of the cases) on either side of a cut. */
  readonly least: number;
  readonly seed: number;
  /** How often a case counts; 0 leaves it out. */
  readonly use?: (i: number) => number;
}

/** Fits trees to binned cases and labels 0 or 1; the same input gives the same trees. */
export function fitTrees(table: BinTable, labels: readonly number[], options: TreesOptions): Trees {
  const { names, bins, cases } = table;
  const { use = () => 1, rate } = options;
  const width = names.length;
  const counts = Float64Array.from({ length: cases }, (_, i) => use(i));
  const used = Int32Array.from(labels.keys()).filter((i) => counts[i]! > 0);
  const bias = startOdds(labels, counts);
  const odds = new Float64Array(cases).fill(bias);
  const slope = new Float64Array(cases);
  const bend = new Float64Array(cases);
  const random = seededRandom(options.seed);
  const trees: number[][] = [];
  for (let round = 0; round < options.trees; round++) {
    for (const i of used) {
      const chance = 1 / (1 + Math.exp(-odds[i]!));
      slope[i] = counts[i]! * (chance - labels[i]!);
      bend[i] = counts[i]! * chance * (1 - chance);
    }
    const rows = used.filter(() => random() < options.rows);
    const columns = Int32Array.from({ length: width }, (_, k) => k).filter(() => random() < options.columns);
    const tree = growTree(table, rows, columns, slope, bend, options);
    for (let at = 0; at < tree.length; at += tree[at] === treeEnd ? 2 : 3)
      if (tree[at] === treeEnd) tree[at + 1] = Number((rate * tree[at + 1]!).toPrecision(3));
    for (const i of used) odds[i]! += fallTo(tree, bins, i * width);
    trees.push(withCuts(tree, table));
  }
  return { bias, names, trees };
}

function startOdds(labels: readonly number[], counts: Float64Array): number {
  let ones = 0.5;
  let all = 1;
  labels.forEach((label, i) => {
    ones += counts[i]! * label;
    all += counts[i]!;
  });
  return Number(Math.log(ones / (all - ones)).toPrecision(4));
}

function fallTo(tree: readonly number[], bins: Uint8Array, from: number): number {
  let at = 0;
  while (tree[at] !== treeEnd) at = bins[from + tree[at]!]! <= tree[at + 1]! ? at + 3 : tree[at + 2]!;
  return tree[at + 1]!;
}

/** The same tree, asking for values where it asked for bins. */
function withCuts(tree: readonly number[], { cuts }: BinTable): number[] {
  const asked = [...tree];
  for (let at = 0; at < tree.length; at += tree[at] === treeEnd ? 2 : 3)
    if (tree[at] !== treeEnd) asked[at + 1] = cuts[tree[at]!]![tree[at + 1]!]!;
  return asked;
}
