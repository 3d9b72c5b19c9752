import { betaQuantile } from "../quantity/betaFunctions.ts";
import { formula } from "../quantity/formula.ts";
import { normalQuantile } from "../quantity/normal.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { one } from "../quantity/unit.ts";

/** The two ends of an interval for a share. */
export type ShareInterval = readonly [low: number, high: number];

/**
 * Wilson's score interval for the share behind x of n, at a confidence `level` such as 0.95; 0 to 1 where n is 0.
 * Source: E. B. Wilson, JASA 22 (1927), 209, in the form of R. G. Newcombe, Statistics in Medicine 17 (1998), method 3.
 */
export function wilsonInterval(x: number, n: number, level: number): ShareInterval {
  demandCounts("wilsonInterval", x, n);
  if (n === 0) return [0, 1];
  const z = normalQuantile((1 + level) / 2);
  const limit = (signed: number): number => wilsonLimit.over({ p: x / n, n, z: signed })[0] as number;
  // The limits are exactly 0 and 1 there; rounding would leave a crumb.
  return [x === 0 ? 0 : limit(-z), x === n ? 1 : limit(z)];
}

/** The two ends of Wilson's interval as they are worked, lower first. */
export function wilsonWorked(x: number, n: number, level: number): readonly Quantity[] {
  const z = normalQuantile((1 + level) / 2);
  const share = { p: exact("p", x / n, one, `${x} of ${n}`), n: exact("n", n, one, "cases") };
  return [-z, z].map((signed) => wilsonLimit({ ...share, z: exact("z", signed, one, "deviate of the confidence") }));
}

/**
 * Jeffreys' interval for the share behind x of n: equal tails of Beta(x + 1/2, n - x + 1/2), with the lower end 0 for
 * none of n and the upper end 1 for all of n; 0 to 1 where n is 0.
 * Source: L. D. Brown, T. T. Cai, A. DasGupta, Statistical Science 16 (2001), 101, 3.1.2 and 4.3 (from memory).
 */
export function jeffreysInterval(x: number, n: number, level: number): ShareInterval {
  demandCounts("jeffreysInterval", x, n);
  return jeffreysOfExposed(x, n, level);
}

/** Jeffreys' interval where n is what was exposed to the risk, cases watched for a part of the time counting as that part. */
export function jeffreysOfExposed(x: number, n: number, level: number): ShareInterval {
  const limit = (p: number): number => betaQuantile(p, x + 1 / 2, n - x + 1 / 2);
  return [x === 0 ? 0 : limit((1 - level) / 2), x === n ? 1 : limit((1 + level) / 2)];
}

/**
 * The exact interval of Clopper and Pearson for the share behind x of n, never less sure than `level`; 0 to 1 where n is 0.
 * Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934), 404, by beta quantiles (from memory).
 */
export function clopperPearsonInterval(x: number, n: number, level: number): ShareInterval {
  demandCounts("clopperPearsonInterval", x, n);
  return [
    x === 0 ? 0 : betaQuantile((1 - level) / 2, x, n - x + 1),
    x === n ? 1 : betaQuantile((1 + level) / 2, x + 1, n - x),
  ];
}

/** How many repairs must hold, with none coming back, to show at a `confidence` that at least the share `held` holds. */
export function casesToShow(held: number, confidence: number): number {
  const n = successRun.over({ R: held, C: confidence })[0] as number;
  // A whole number must not be rounded up for its last digit.
  return Math.ceil(n - 1e-9);
}

/** With z below 0 the lower limit, above 0 the upper one. */
const wilsonLimit = formula(
  "p_z = (p + z^2 / (2 * n) + z * sqrt(p * (1 - p) / n + z^2 / (4 * n^2))) / (1 + z^2 / n)",
  { p: one, n: one, z: one, p_z: one },
  "Wilson, JASA 22 (1927), 209; Newcombe, Statistics in Medicine 17 (1998), 857, method 3",
);

const successRun = formula(
  "n = ln(1 - C) / ln(R)",
  { C: one, R: one, n: one },
  "the success run, from R^n = 1 - C of the binomial distribution (common practice, no source)",
);

function demandCounts(place: string, x: number, n: number): void {
  if (!(Number.isInteger(x) && Number.isInteger(n) && x >= 0 && x <= n)) throw new RangeError(`${place}: ${x} of ${n}`);
}
