import { normalCdf, normalQuantile, normalSurvival } from "./normal.ts";
import type { CutFamily, Lognormal, Normal } from "./normalFamily.ts";
import {
  cutFamilyAbove,
  cutFamilyBelow,
  cutFamilyDeviation,
  cutFamilyMean,
  cutFamilyQuantile,
  deviate,
  kept,
  scaledFamily,
  valueAt,
} from "./normalFamily.ts";
import type { Random } from "./random.ts";
import { triangleAbove, triangleBelow, triangleDeviation, triangleQuantile } from "./triangle.ts";

/** How a bare number is distributed; equal ends of "uniform" and "triangular" stand for one value. */
export type Distribution =
  | { readonly type: "exact"; readonly value: number }
  | Normal
  | Lognormal
  | { readonly type: "uniform"; readonly low: number; readonly high: number }
  | { readonly type: "triangular"; readonly low: number; readonly likely: number; readonly high: number }
  | CutFamily;

/** The distribution of a number known without doubt. @throws RangeError if it is not finite. */
export function exactly(value: number): Distribution {
  finite("exactly", { value });
  return { type: "exact", value };
}

/** The normal distribution. @throws RangeError if `mean` is not finite or `sd` not above 0. */
export function normal(mean: number, sd: number): Normal {
  finite("normal", { mean });
  above0("normal: sd", sd);
  return { type: "normal", mean, sd };
}

/** The lognormal distribution. @throws RangeError if `median` or `sigma` is not above 0. */
export function lognormal(median: number, sigma: number): Lognormal {
  above0("lognormal: median", median);
  above0("lognormal: sigma", sigma);
  return { type: "lognormal", median, sigma };
}

/**
 * The lognormal distribution of a mean and a coefficient of variation (0.1 for 10 %).
 * Source: Johnson, Kotz, Balakrishnan, "Continuous Univariate Distributions" vol. 1, 2nd ed., ch. 14 (from memory).
 * @throws RangeError if either is not above 0.
 */
export function lognormalByMean(mean: number, cv: number): Lognormal {
  above0("lognormalByMean: mean", mean);
  above0("lognormalByMean: cv", cv);
  return lognormal(mean / Math.hypot(1, cv), Math.sqrt(Math.log1p(cv * cv)));
}

/** The uniform distribution; equal ends give one value. @throws RangeError if `high` is below `low`. */
export function uniform(low: number, high: number): Distribution {
  finite("uniform", { low, high });
  inOrder("uniform: high", low, high);
  return { type: "uniform", low, high };
}

/** The triangular distribution with its peak at `likely`. @throws RangeError if the three are not in order. */
export function triangular(low: number, likely: number, high: number): Distribution {
  finite("triangular", { low, likely, high });
  inOrder("triangular: likely", low, likely);
  inOrder("triangular: high", likely, high);
  return { type: "triangular", low, likely, high };
}

/**
 * A normal or lognormal distribution redrawn until it lies from `low` to `high`; null leaves that end open.
 * @throws RangeError if an end is not finite or less than 1e-200 of the distribution lies between them.
 */
export function cut(of: Normal | Lognormal, low: number | null, high: number | null): Distribution {
  finite("cut", { low: low ?? 0, high: high ?? 0 });
  const distribution = { type: "cut", of, low, high } as const;
  if (!(kept(distribution) >= 1e-200)) {
    throw new RangeError(`cut: low (${low}) and high (${high}) leave nothing of the distribution between them`);
  }
  return distribution;
}

/** The probability of a value at most x. */
export function cdf(distribution: Distribution, x: number): number {
  switch (distribution.type) {
    case "exact":
      return x >= distribution.value ? 1 : 0;
    case "normal":
    case "lognormal":
      return normalCdf(deviate(distribution, x));
    case "uniform":
      return uniformBelow(distribution.low, distribution.high, x);
    case "triangular":
      return triangleBelow(distribution, x);
    case "cut":
      return cutFamilyBelow(distribution, x);
    default:
      return distribution satisfies never;
  }
}

/** The probability of a value above x, without loss where that is small. */
export function survival(distribution: Distribution, x: number): number {
  switch (distribution.type) {
    case "exact":
      return x >= distribution.value ? 0 : 1;
    case "normal":
    case "lognormal":
      return normalSurvival(deviate(distribution, x));
    case "uniform":
      return x >= distribution.high ? 0 : uniformBelow(-distribution.high, -distribution.low, -x);
    case "triangular":
      return triangleAbove(distribution, x);
    case "cut":
      return cutFamilyAbove(distribution, x);
    default:
      return distribution satisfies never;
  }
}

/** The value that p of all values lie below; the ends of the support for 0 and 1. @throws RangeError for other p. */
export function quantile(distribution: Distribution, p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile: p (${p}) is not from 0 to 1`);
  const [least, greatest] = support(distribution);
  if (p === 0) return least;
  if (p === 1) return greatest;
  switch (distribution.type) {
    case "normal":
    case "lognormal":
      return valueAt(distribution, normalQuantile(p));
    case "exact":
    case "uniform":
      return Math.min(least + p * (greatest - least), greatest);
    case "triangular":
      return triangleQuantile(distribution, p);
    case "cut":
      return cutFamilyQuantile(distribution, p);
    default:
      return distribution satisfies never;
  }
}

/** The mean of all values. */
export function mean(distribution: Distribution): number {
  switch (distribution.type) {
    case "exact":
      return distribution.value;
    case "normal":
      return distribution.mean;
    case "lognormal":
      return distribution.median * Math.exp(distribution.sigma ** 2 / 2);
    case "uniform":
      return distribution.low + (distribution.high - distribution.low) / 2;
    case "triangular":
      return (distribution.low + distribution.likely + distribution.high) / 3;
    case "cut":
      return cutFamilyMean(distribution);
    default:
      return distribution satisfies never;
  }
}

/** The standard deviation of all values. */
export function standardDeviation(distribution: Distribution): number {
  switch (distribution.type) {
    case "exact":
      return 0;
    case "normal":
      return distribution.sd;
    case "lognormal":
      return mean(distribution) * Math.sqrt(Math.expm1(distribution.sigma ** 2));
    case "uniform":
      return (distribution.high - distribution.low) / Math.sqrt(12);
    case "triangular":
      return triangleDeviation(distribution);
    case "cut":
      return cutFamilyDeviation(distribution);
    default:
      return distribution satisfies never;
  }
}

/** The distribution of `factor` times a value of this one. @throws RangeError if `factor` is not above 0. */
export function scaled(distribution: Distribution, factor: number): Distribution {
  above0("scaled: factor", factor);
  switch (distribution.type) {
    case "exact":
      return exactly(distribution.value * factor);
    case "normal":
    case "lognormal":
      return scaledFamily(distribution, factor);
    case "uniform":
      return uniform(distribution.low * factor, distribution.high * factor);
    case "triangular":
      return triangular(distribution.low * factor, distribution.likely * factor, distribution.high * factor);
    case "cut": {
      const end = (x: number | null) => (x === null ? null : x * factor);
      return cut(scaledFamily(distribution.of, factor), end(distribution.low), end(distribution.high));
    }
    default:
      return distribution satisfies never;
  }
}

/** The least and the greatest possible value, infinite where the distribution is open. */
export function support(distribution: Distribution): readonly [number, number] {
  switch (distribution.type) {
    case "exact":
      return [distribution.value, distribution.value];
    case "normal":
      return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    case "lognormal":
      return [0, Number.POSITIVE_INFINITY];
    case "uniform":
    case "triangular":
      return [distribution.low, distribution.high];
    case "cut": {
      const [least, greatest] = support(distribution.of);
      return [Math.max(distribution.low ?? least, least), distribution.high ?? greatest];
    }
    default:
      return distribution satisfies never;
  }
}

/** One value drawn at random; every distribution takes exactly one uniform number, so streams stay in step. */
export function draw(distribution: Distribution, random: Random): number {
  return quantile(distribution, random());
}

function uniformBelow(low: number, high: number, x: number): number {
  if (x >= high) return 1;
  return x <= low ? 0 : (x - low) / (high - low);
}

function finite(maker: string, parameters: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(parameters)) {
    if (!Number.isFinite(value)) throw new RangeError(`${maker}: ${name} (${value}) is not a finite number`);
  }
}

function above0(name: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) throw new RangeError(`${name} (${value}) is not above 0`);
}

function inOrder(name: string, before: number, value: number): void {
  if (value < before) throw new RangeError(`${name} (${value}) is below ${before}`);
}
