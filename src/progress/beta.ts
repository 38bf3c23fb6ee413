/**
 * The Beta distribution for counts. After m of n tries met, with nothing known before, a pupil's rate is spread as
 * Beta(1 + m, 1 + n - m). For whole a and b its share below x is a binomial tail:
 *
 *     P(p < x) = sum over j = a .. n of C(n, j) x^j (1 - x)^(n - j),  n = a + b - 1
 */

const logFactorials: number[] = [0];

function logFactorial(n: number): number {
  for (let next = logFactorials.length; next <= n; next += 1) {
    logFactorials.push((logFactorials[next - 1] ?? 0) + Math.log(next));
  }
  return logFactorials[n] ?? 0;
}

/** The logarithm of the Beta function of two whole numbers from 1 up. */
function logBeta(a: number, b: number): number {
  return logFactorial(a - 1) + logFactorial(b - 1) - logFactorial(a + b - 1);
}

/** P(p < x) under Beta(a, b), a and b whole numbers from 1 up, x a rate 0..1. */
export function chanceBelow(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const n = a + b - 1;
  let sum = 0;
  for (let j = a; j <= n; j += 1) {
    const ways = logFactorial(n) - logFactorial(j) - logFactorial(n - j);
    sum += Math.exp(ways + j * Math.log(x) + (n - j) * Math.log1p(-x));
  }
  return Math.min(1, sum);
}

/** The rate below which a share 0..1 of Beta(a, b) lies, to 1e-12. */
export function quantile(share: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (chanceBelow(middle, a, b) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The equal-tailed 95 % interval of a rate after `met` of `tries`, nothing known before. */
export function intervalOf(met: number, tries: number): { readonly low: number; readonly high: number } {
  const a = 1 + met;
  const b = 1 + tries - met;
  return { low: quantile(0.025, a, b), high: quantile(0.975, a, b) };
}

interface Count {
  readonly met: number;
  readonly tries: number;
}

/** P(later rate > earlier rate) for two independent counts, nothing known before; a sum over the later count's Beta. */
export function chanceHigher(later: Count, earlier: Count): number {
  const a = 1 + earlier.met;
  const b = 1 + earlier.tries - earlier.met;
  const c = 1 + later.met;
  const d = 1 + later.tries - later.met;
  let sum = 0;
  for (let i = 0; i < c; i += 1) {
    sum += Math.exp(logBeta(a + i, b + d) - Math.log(d + i) - logBeta(1 + i, d) - logBeta(a, b));
  }
  return Math.min(1, sum);
}
