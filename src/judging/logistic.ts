import type { Features } from './question-features.js';

/** A logistic model over named features: `bias` and, of each feature, its weight and its mean in training. */
export interface Logistic {
  readonly bias: number;
  readonly weights: Readonly<Record<string, readonly [weight: number, mean: number]>>;
}

/** What a feature did to a judgement: its push in log odds, above 0 towards label 1. */
export interface Push {
  readonly feature: string;
  readonly push: number;
}

/** A model laid out for one kind of question: weights of the kind are added to the common ones, means into the bias. */
interface Laid {
  readonly bias: number;
  readonly names: readonly string[];
  readonly weights: Float64Array;
  readonly means: Float64Array;
}

const laidOut = new WeakMap<Logistic, Map<string, Laid>>();

function lay(model: Logistic, kind: string): Laid {
  const kinds = laidOut.get(model) ?? new Map<string, Laid>();
  laidOut.set(model, kinds);
  const known = kinds.get(kind);
  if (known) return known;
  const entries = Object.entries(model.weights);
  const found = new Map<string, { weight: number; mean: number }>();
  for (const [name, [weight, mean]] of entries) if (!name.includes(': ')) found.set(name, { weight, mean });
  let { bias } = model;
  for (const [name, [weight, mean]] of entries) {
    if (!name.includes(': ')) continue;
    bias -= weight * mean;
    if (!name.startsWith(`${kind}: `)) continue;
    const plain = name.slice(kind.length + 2);
    const common = found.get(plain) ?? { weight: 0, mean: 0 };
    found.set(plain, { weight: common.weight + weight, mean: common.mean });
    // The common mean is taken off the kind's own part too, which it must not be.
    bias += weight * common.mean;
  }
  const laid = {
    bias,
    names: [...found.keys()],
    weights: Float64Array.from(found.values(), ({ weight }) => weight),
    means: Float64Array.from(found.values(), ({ mean }) => mean),
  };
  kinds.set(kind, laid);
  return laid;
}

/** Log odds of label 1; a feature that is not given counts as 0. Weights named `kind: feature` count for that kind alone. */
export function logOdds(model: Logistic, features: Features, kind = ''): number {
  const { bias, names, weights, means } = lay(model, kind);
  let sum = bias;
  for (let k = 0; k < names.length; k++) sum += weights[k]! * ((features[names[k]!] ?? 0) - means[k]!);
  return sum;
}

/** Chance 0..1 of log odds. */
export function chanceOf(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}

/** What each feature pushed, in the order of the model. */
export function pushes(model: Logistic, features: Features, kind = ''): readonly Push[] {
  const { names, weights, means } = lay(model, kind);
  return names.map((feature, k) => ({ feature, push: weights[k]! * ((features[feature] ?? 0) - means[k]!) }));
}
