import { deviance, stirlingRemainder } from "./gammaQuotients.ts";

/**
 * The probability that a beta value with shapes a and b is at most x: the incomplete beta function I_x(a, b), relative
 * error below 1e-12 for shapes up to 1e5.
 * Source: F. W. J. Olver et al., NIST Digital Library of Mathematical Functions, 8.17 (from memory, proved by test).
 */
export function betaBelow(a: number, b: number, x: number): number {
  return tails(a, b, x, 1 - x).below;
}

/** The probability that a beta value is above x, I_(1 - x)(b, a), without loss where that is small. */
export function betaAbove(a: number, b: number, x: number): number {
  return tails(a, b, x, 1 - x).above;
}

/**
 * The x that p of all beta values with shapes a and b lie below, relative error below 1e-12 (absolute 1e-16 near 1).
 * @throws RangeError if p is not from 0 to 1, or a shape not above 0.
 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`betaQuantile: p (${p}) is not from 0 to 1`);
  if (!(a > 0 && b > 0)) throw new RangeError(`betaQuantile: a shape (${a}, ${b}) is not above 0`);
  if (p === 0 || p === 1) return p;
  const half = tails(a, b, 0.5, 0.5);
  return p <= half.below ? quantileBelowHalf(a, b, p, 1 - p) : 1 - quantileBelowHalf(b, a, 1 - p, p);
}

/**
 * The x up to 1/2 with p below it and q above it. Newton's method from ln x to the logarithm of the smaller tail, which
 * is nearly straight there; a step that leaves what is known to enclose the answer is replaced by a halving.
 */
function quantileBelowHalf(a: number, b: number, p: number, q: number): number {
  let [least, most] = [Math.log(Number.MIN_VALUE), -Math.LN2];
  let u = Math.min(Math.log(a / (a + b)), most);
  for (let round = 0; round < 200 && most - least > 1e-16; round++) {
    const x = Math.exp(u);
    const { below, above } = tails(a, b, x, 1 - x);
    const slope = kernel(a, b, x, 1 - x) / (1 - x);
    const beyond = p < q ? Math.log(below / p) : -Math.log(above / q);
    if (beyond > 0) most = u;
    else least = u;
    const wanted = u - (beyond * (p < q ? below : above)) / slope;
    const next = wanted >= least && wanted <= most ? wanted : (least + most) / 2;
    if (Math.abs(next - u) <= 1e-15) return Math.exp(next);
    u = next;
  }
  return Math.exp(u);
}

/** Both tails of a beta distribution at x with y = 1 - x; the smaller one is worked out, the other is the rest. */
function tails(a: number, b: number, x: number, y: number): { readonly below: number; readonly above: number } {
  if (x <= 0) return { below: 0, above: 1 };
  if (y <= 0) return { below: 1, above: 0 };
  const front = kernel(a, b, x, y);
  // The fraction converges fast only on this side of the mean, 8.17(v).
  if (x <= (a + 1) / (a + b + 2)) {
    const below = (front * continuedFraction(a, b, x)) / a;
    return { below, above: 1 - below };
  }
  const above = (front * continuedFraction(b, a, y)) / b;
  return { below: 1 - above, above };
}

/**
 * x^a y^b / B(a, b). The powers and the beta function are each far from 1 where their quotient is not, so it is made of
 * remainders and deviances: C. Loader, "Fast and accurate computation of binomial probabilities" (2000, from memory).
 */
function kernel(a: number, b: number, x: number, y: number): number {
  const n = a + b;
  const rest = stirlingRemainder(n) - stirlingRemainder(a) - stirlingRemainder(b);
  return Math.sqrt((a / n) * (b / (2 * Math.PI))) * Math.exp(rest - deviance(a, n * x) - deviance(b, n * y));
}

/** The continued fraction 8.17.22 by Lentz's method as modified by Thompson and Barnett (1986). */
function continuedFraction(a: number, b: number, x: number): number {
  let [C, D, f] = [1, 0, 1];
  for (let k = 1; k < MOST_STEPS; k++) {
    const m = Math.floor(k / 2);
    const d =
      k % 2 === 0
        ? (m * (b - m) * x) / ((a + k - 1) * (a + k))
        : (-(a + m) * (a + b + m) * x) / ((a + k - 1) * (a + k));
    D = 1 / away(1 + d * D);
    C = away(1 + d / C);
    const change = C * D;
    f *= change;
    if (Math.abs(change - 1) < 3e-16) return 1 / f;
  }
  return 1 / f;
}

const MOST_STEPS = 10_000;

/** Lentz's method may not meet a nought. */
const away = (x: number): number => (Math.abs(x) < 1e-300 ? 1e-300 : x);
