import { deviance, stirlingRemainder } from "./gammaQuotients.ts";

/**
 * ln Γ(a + 1) for a ≥ 0, relative error of Γ below 1e-14 up to a = 1e4.
 * Source: Stirling's series, Abramowitz and Stegun (1964), 6.1.41, reached by the recurrence 6.1.15 where a is small.
 * @throws RangeError if a is below 0 or not finite.
 */
export function logFactorial(a: number): number {
  if (!(a >= 0 && a < Number.POSITIVE_INFINITY)) throw new RangeError(`logFactorial: a (${a}) is not from 0`);
  if (a < STIRLING_FROM) return logFactorial(a + 1) - Math.log1p(a);
  return (a + 0.5) * Math.log(a) - a + 0.5 * Math.log(2 * Math.PI) + stirlingRemainder(a);
}

/** The share P(a, x) of a gamma distribution of shape a > 0 and scale 1 that lies below x ≥ 0. */
export const gammaBelow = (a: number, x: number): number => tails(a, x).below;

/** The share Q(a, x) above x, without loss where that is small. */
export const gammaAbove = (a: number, x: number): number => tails(a, x).above;

/**
 * The x that p of a gamma distribution of shape a and scale 1 lie below, relative error below 1e-12.
 * A p near 1 has lost its digits already: ask by the share above.
 * Source: Newton's method on the logarithm of the share against ln x. A gamma value's logarithm has a log-concave density,
 * so both shares are log-concave and the steps run to the root from one side, whatever they start from.
 * @throws RangeError if p is not from 0 to 1 or a is not above 0.
 */
export function gammaQuantile(p: number, a: number): number {
  demandShare("gammaQuantile", p, a);
  if (p === 0 || p === 1) return p === 0 ? 0 : Number.POSITIVE_INFINITY;
  return p <= 0.5 ? solved(a, "logBelow", p) : solved(a, "logAbove", 1 - p);
}

/** The x that q of a gamma distribution of shape a and scale 1 lie above. @throws RangeError as gammaQuantile. */
export function gammaQuantileOfSurvival(q: number, a: number): number {
  demandShare("gammaQuantileOfSurvival", q, a);
  if (q === 0 || q === 1) return q === 1 ? 0 : Number.POSITIVE_INFINITY;
  return q <= 0.5 ? solved(a, "logAbove", q) : solved(a, "logBelow", 1 - q);
}

/** From here six terms of Stirling's series are exact to the last digit. */
const STIRLING_FROM = 16;

/** Both shares about x, their logarithms, and the density of ln x. */
type Tails = {
  readonly below: number;
  readonly above: number;
  readonly logBelow: number;
  readonly logAbove: number;
  readonly logDensity: number;
};

/**
 * The smaller share is worked and the other is what is left of 1.
 * Source: the series and the continued fraction of Abramowitz and Stegun (1964), 6.5.29 and 6.5.31.
 */
function tails(a: number, x: number): Tails {
  if (!(a > 0 && a < Number.POSITIVE_INFINITY)) throw new RangeError(`gamma: the shape (${a}) is not above 0`);
  if (!(x >= 0)) throw new RangeError(`gamma: x (${x}) is below 0`);
  if (x === 0)
    return {
      below: 0,
      above: 1,
      logBelow: Number.NEGATIVE_INFINITY,
      logAbove: 0,
      logDensity: Number.NEGATIVE_INFINITY,
    };
  const logDensity = logWeight(a, x) + Math.log(a);
  if (x < a + 1) {
    const logBelow = logWeight(a, x) + Math.log(series(a, x));
    const below = Math.min(1, Math.exp(logBelow));
    return { below, above: 1 - below, logBelow, logAbove: Math.log1p(-below), logDensity };
  }
  const logAbove = logDensity - Math.log(fraction(a, x));
  const above = Math.min(1, Math.exp(logAbove));
  return { below: 1 - above, above, logBelow: Math.log1p(-above), logAbove, logDensity };
}

/**
 * ln(x^a e^-x / Γ(a + 1)), arranged so that nothing large cancels.
 * Source: C. Loader, "Fast and Accurate Computation of Binomial Probabilities" (2000), (from memory).
 */
function logWeight(a: number, x: number): number {
  if (a < STIRLING_FROM) return a * Math.log(x) - x - logFactorial(a);
  return -deviance(a, x) - stirlingRemainder(a) - 0.5 * Math.log(2 * Math.PI * a);
}

/** 1 + x/(a+1) + x²/((a+1)(a+2)) + … */
function series(a: number, x: number): number {
  let sum = 1;
  let term = 1;
  for (let n = 1; term > (sum * Number.EPSILON) / 8; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Lentz's rule on x + 1 - a - 1(1-a)/(x + 3 - a - …), by which x^a e^-x is divided for Γ(a, x). */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = b;
  let d = 0;
  let value = b;
  for (let n = 1; n < 1e6; n++) {
    const numerator = n * (a - n);
    b += 2;
    c = b + numerator / c;
    d = 1 / (b + numerator * d);
    const change = c * d;
    value *= change;
    if (Math.abs(change - 1) < Number.EPSILON) break;
  }
  return value;
}

function solved(a: number, side: "logBelow" | "logAbove", share: number): number {
  const target = Math.log(share);
  let t = side === "logBelow" ? firstGuess(a, target) : Math.log(a + 1);
  for (let step = 0; step < 200; step++) {
    const x = Math.exp(t);
    const at = tails(a, x);
    const slope = Math.exp(at.logDensity - at[side]);
    const move = (at[side] - target) / slope;
    t += side === "logBelow" ? -move : move;
    if (Math.abs(move) < 1e-15 * Math.max(1, Math.abs(t))) break;
  }
  return Math.exp(t);
}

/** Where x is small P(a, x) = x^a / Γ(a + 1); never above the root, because P is below that. */
const firstGuess = (a: number, logShare: number): number => (logShare + logFactorial(a)) / a;

function demandShare(where: string, share: number, a: number): void {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`${where}: the share (${share}) is not from 0 to 1`);
  if (!(a > 0 && a < Number.POSITIVE_INFINITY)) throw new RangeError(`${where}: the shape (${a}) is not above 0`);
}
