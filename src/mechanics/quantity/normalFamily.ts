import type { Cut } from "./cutNormal.ts";
import { cutMean, cutMeanOfExp, cutQuantile, cutRelativeVarianceOfExp, cutVariance, share } from "./cutNormal.ts";

/** Normal about `mean` with standard deviation `sd`. */
export type Normal = { readonly type: "normal"; readonly mean: number; readonly sd: number };

/** Lognormal: its logarithm is normal about ln `median` with standard deviation `sigma`. */
export type Lognormal = { readonly type: "lognormal"; readonly median: number; readonly sigma: number };

/** A normal or lognormal value, redrawn until it lies from `low` to `high`; null leaves that end open. */
export type CutFamily = {
  readonly type: "cut";
  readonly of: Normal | Lognormal;
  readonly low: number | null;
  readonly high: number | null;
};

/** The standard normal value that stands for x. */
export function deviate(of: Normal | Lognormal, x: number): number {
  if (of.type === "normal") return (x - of.mean) / of.sd;
  const { median, sigma } = of;
  if (!(x > 0)) return Number.NEGATIVE_INFINITY;
  // Near the median the quotient would round away what the logarithm is made of.
  return (x > median / 2 && x < median * 2 ? Math.log1p((x - median) / median) : Math.log(x / median)) / sigma;
}

/** The value that the standard normal value z stands for. */
export function valueAt(of: Normal | Lognormal, z: number): number {
  return of.type === "normal" ? of.mean + of.sd * z : of.median * Math.exp(of.sigma * z);
}

/** The family's distribution of `factor` times a value, for a factor above 0. */
export function scaledFamily(of: Normal | Lognormal, factor: number): Normal | Lognormal {
  return of.type === "normal"
    ? { ...of, mean: of.mean * factor, sd: of.sd * factor }
    : { ...of, median: of.median * factor };
}

/** The share of the uncut distribution that the cut keeps. */
export function kept(cut: CutFamily): number {
  return share(standard(cut));
}

/** The probability that a value of the cut is at most x. */
export function cutFamilyBelow(cut: CutFamily, x: number): number {
  const { from, to } = standard(cut);
  return share({ from, to: Math.min(deviate(cut.of, x), to) }) / share({ from, to });
}

/** The probability that a value of the cut is above x. */
export function cutFamilyAbove(cut: CutFamily, x: number): number {
  const { from, to } = standard(cut);
  return share({ from: Math.max(deviate(cut.of, x), from), to }) / share({ from, to });
}

/** The value that p of the cut's values lie below. */
export function cutFamilyQuantile(cut: CutFamily, p: number): number {
  const x = valueAt(cut.of, cutQuantile(standard(cut), p));
  return Math.min(Math.max(x, cut.low ?? x), cut.high ?? x);
}

/** The mean of the cut's values. */
export function cutFamilyMean(cut: CutFamily): number {
  const { of } = cut;
  return of.type === "normal" ? valueAt(of, cutMean(standard(cut))) : of.median * cutMeanOfExp(standard(cut), of.sigma);
}

/** The standard deviation of the cut's values. */
export function cutFamilyDeviation(cut: CutFamily): number {
  const { of } = cut;
  if (of.type === "normal") return of.sd * Math.sqrt(cutVariance(standard(cut)));
  return cutFamilyMean(cut) * Math.sqrt(cutRelativeVarianceOfExp(standard(cut), of.sigma));
}

/** The same cut in standard normal values. */
function standard({ of, low, high }: CutFamily): Cut {
  return {
    from: low === null ? Number.NEGATIVE_INFINITY : deviate(of, low),
    to: high === null ? Number.POSITIVE_INFINITY : deviate(of, high),
  };
}
