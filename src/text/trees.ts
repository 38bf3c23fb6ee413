/*
 * Boosted decision trees over named features. A tree is one row of numbers, so that hundreds stay small as JSON: at a place
 * stands either a question (number of the feature, cut, place of the part for values above the cut; the part for values up
 * to the cut follows at once) or an end (-1, log odds).
 */

/** A learned sum of trees: features in, log odds of label 1 out. */
export interface Trees {
  readonly bias: number;
  readonly names: readonly string[];
  readonly trees: readonly (readonly number[])[];
}

/** Stands at a place of a tree where nothing more is asked. */
export const treeEnd = -1;

const laidOut = new WeakMap<Trees, readonly Float64Array[]>();

function lay(model: Trees): readonly Float64Array[] {
  const known = laidOut.get(model);
  if (known) return known;
  const laid = model.trees.map((tree) => Float64Array.from(tree));
  laidOut.set(model, laid);
  return laid;
}

/** Log odds of label 1; a feature that is not given counts as 0. */
export function treeOdds(model: Trees, features: Readonly<Record<string, number>>): number {
  const values = Float64Array.from(model.names, (name) => features[name] ?? 0);
  let sum = model.bias;
  for (const tree of lay(model)) {
    let at = 0;
    while (tree[at] !== treeEnd) at = values[tree[at]!]! <= tree[at + 1]! ? at + 3 : tree[at + 2]!;
    sum += tree[at + 1]!;
  }
  return sum;
}
