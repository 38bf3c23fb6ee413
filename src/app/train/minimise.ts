/** Value and slope of a smooth function; the slope is written into `slope`. */
export type Smooth = (at: Float64Array, slope: Float64Array) => number;

const remembered = 8;

interface Step {
  readonly move: Float64Array;
  readonly bend: Float64Array;
  readonly scale: number;
}

/** Finds the least of a convex smooth function by L-BFGS (Liu & Nocedal 1989) from `start`; the same input gives the same end. */
export function minimise(
  smooth: Smooth,
  start: Float64Array,
  { rounds = 100, enough = 1e-6 } = {},
): Float64Array {
  let at: Float64Array = Float64Array.from(start);
  let slope: Float64Array = new Float64Array(at.length);
  let value = smooth(at, slope);
  const steps: Step[] = [];
  for (let round = 0; round < rounds; round++) {
    const direction = downhill(slope, steps);
    const fall = dot(direction, slope);
    let length = steps.length === 0 ? 1 / Math.max(1, Math.sqrt(dot(slope, slope))) : 1;
    let next = moved(at, direction, length);
    const nextSlope = new Float64Array(at.length);
    let nextValue = smooth(next, nextSlope);
    while (nextValue > value + 1e-4 * length * fall && length > 1e-10) {
      length /= 2;
      next = moved(at, direction, length);
      nextValue = smooth(next, nextSlope);
    }
    const gain = value - nextValue;
    remember(steps, at, next, slope, nextSlope);
    at = next;
    slope = nextSlope;
    value = nextValue;
    if (gain < enough * Math.max(1, Math.abs(value))) break;
  }
  return at;
}

function remember(
  steps: Step[],
  at: Float64Array,
  next: Float64Array,
  slope: Float64Array,
  nextSlope: Float64Array,
): void {
  const move = next.map((x, i) => x - at[i]!);
  const bend = nextSlope.map((x, i) => x - slope[i]!);
  const product = dot(move, bend);
  if (product <= 1e-12) return;
  steps.push({ move, bend, scale: 1 / product });
  if (steps.length > remembered) steps.shift();
}

/** The two-loop recursion: minus the slope, bent by what the last steps told of the curvature. */
function downhill(slope: Float64Array, steps: readonly Step[]): Float64Array {
  const direction = slope.map((x) => -x);
  const pulls: number[] = [];
  for (const { move, bend, scale } of steps.toReversed()) {
    const pull = scale * dot(move, direction);
    pulls.unshift(pull);
    add(direction, bend, -pull);
  }
  const last = steps.at(-1);
  if (last) {
    const size = 1 / (last.scale * dot(last.bend, last.bend));
    direction.forEach((x, i) => (direction[i] = x * size));
  }
  steps.forEach(({ move, bend, scale }, k) => add(direction, move, pulls[k]! - scale * dot(bend, direction)));
  return direction;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function add(to: Float64Array, what: Float64Array, times: number): void {
  for (let i = 0; i < to.length; i++) to[i]! += what[i]! * times;
}

function moved(at: Float64Array, direction: Float64Array, length: number): Float64Array {
  return at.map((x, i) => x + length * direction[i]!);
}
