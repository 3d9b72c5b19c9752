import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Distribution } from "../../../src/mechanics/quantity/distribution.ts";
import {
  cdf,
  cut,
  draw,
  lognormal,
  lognormalByMean,
  mean,
  normal,
  quantile,
  standardDeviation,
  support,
  uniform,
} from "../../../src/mechanics/quantity/distribution.ts";
import { xoshiro128 } from "../../../src/mechanics/quantity/random.ts";

// Mean, standard deviation, quantiles of 0.001, 0.25 and 0.999: printed by cutTails.py beside this file, which
// integrates the cut densities in 60 digits.
const CUTS: readonly (readonly [Distribution, readonly [string, string, string, string, string]])[] = [
  [
    cut(normal(0.63, 0.04), 0.52, 0.74),
    [
      "0.630000000000000004",
      "0.0389807245900901106",
      "0.523828498995203958",
      "0.603207653028961374",
      "0.736171501004796048",
    ],
  ],
  [
    cut(normal(100, 15), 80, null),
    ["102.707065903033938", "12.7879035082359101", "80.0828107100830654", "92.9176891343136743", "146.777898479812388"],
  ],
  [
    cut(normal(0, 1), 5, null),
    [
      "5.18650396712584212",
      "0.180821554625305181",
      "5.00019290110309856",
      "5.05518340535913694",
      "6.19760082293609164",
    ],
  ],
  [
    cut(normal(0, 1), null, -29.5),
    [
      "-29.533820844167983",
      "0.0337823555168283843",
      "-29.7329751848866742",
      "-29.5469020152471758",
      "-29.500033876407855",
    ],
  ],
  [
    cut(normal(0, 1), 10, 10.01),
    [
      "10.0049166391842021",
      "0.00288602432718069316",
      "10.0000095165563556",
      "10.0024077840357239",
      "10.009989483106846",
    ],
  ],
  [
    cut(normal(2, 1), 1.5, 2.75),
    [
      "2.10956120489763608",
      "0.351310911089019281",
      "1.50131987402460717",
      "1.81023416857215919",
      "2.74845729430631373",
    ],
  ],
  [
    cut(lognormal(223.5, 0.12), 140, null),
    ["225.11931650765006", "27.1049234783962741", "154.512097419992356", "206.125740625243871", "323.837231815627764"],
  ],
  [
    cut(lognormal(1, 0.2), null, 0.3),
    [
      "0.290803846305818772",
      "0.00873283575386071512",
      "0.243975987024063125",
      "0.287054504820210668",
      "0.299990283339529112",
    ],
  ],
  [
    cut(lognormal(1, 0.001), null, 1.0005),
    [
      "0.999491147892175196",
      "0.000696689613374474959",
      "0.996806899144787772",
      "0.999057499818234132",
      "1.00049803621264012",
    ],
  ],
  [
    cut(lognormal(1, 1), 20, 22),
    [
      "20.9358824311675201",
      "0.575477732555688415",
      "20.0016561662678902",
      "20.4319968271582543",
      "21.9975661127135679",
    ],
  ],
  [
    cut(lognormal(2, 1.5), 0.5, 100),
    ["6.46664017297856887", "10.5445596879661507", "0.502358529011313358", "1.27546756613936015", "91.79889641276662"],
  ],
];

describe("published", () => {
  // Against CUTS above; 0.001, 0.25 and 0.999 are the doubles of those names.
  test.each(CUTS)("%j has the moments and quantiles of 60-digit integration", (distribution, printed) => {
    const [average, deviation, ...quantiles] = printed.map(Number);
    expect(Math.abs(mean(distribution) / (average ?? 0) - 1)).toBeLessThan(1e-12);
    expect(Math.abs(standardDeviation(distribution) / (deviation ?? 0) - 1)).toBeLessThan(1e-10);
    [0.001, 0.25, 0.999].forEach((p, i) => {
      expect(Math.abs(quantile(distribution, p) / (quantiles[i] ?? 0) - 1)).toBeLessThan(1e-12);
    });
  });
});

const families = fc.oneof(
  fc.tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 100 })).map(([at, sd]) => normal(at, sd)),
  fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 50 })).map(([at, s]) => lognormal(at, s / 100)),
);

describe("laws", () => {
  test("a cut with both ends open, or far outside, is the whole distribution", () => {
    fc.assert(
      fc.property(families, fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (of, p) => {
        for (const whole of [cut(of, null, null), cut(of, -1e6, 1e12)]) {
          const sd = standardDeviation(of);
          expect(Math.abs(quantile(whole, p) - quantile(of, p)) / sd).toBeLessThan(1e-9);
          expect(Math.abs(mean(whole) - mean(of)) / sd).toBeLessThan(1e-11);
          expect(standardDeviation(whole) / sd).toBeCloseTo(1, 11);
        }
      }),
    );
  });

  test("a lognormal value is above 0 even where its cut is open or lower", () => {
    expect(support(cut(lognormal(1, 1), -5, 2))).toEqual([0, 2]);
    expect(support(cut(lognormal(1, 1), null, 2))).toEqual([0, 2]);
    expect(support(cut(lognormal(1, 1), 2, null))).toEqual([2, Infinity]);
    expect(cdf(cut(lognormal(1, 1), -5, 2), -1)).toBe(0);
  });

  test("rounding carries no quantile over an end, not even where exp(ln 100) is above 100", () => {
    expect(quantile(cut(lognormal(190, 0.22), null, 100), 1 - 2 ** -53)).toBe(100);
  });

  test("a mirrored cut has the mirrored mean and quantiles and the same standard deviation, however far out", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 29, noNaN: true }),
        fc.double({ min: 0.01, max: 40, noNaN: true }),
        (z, w) => {
          const [right, left] = [cut(normal(0, 1), z, z + w), cut(normal(0, 1), -z - w, -z)];
          const sd = standardDeviation(right);
          expect(standardDeviation(left) / sd).toBeCloseTo(1, 11);
          expect(Math.abs(mean(left) + mean(right)) / sd).toBeLessThan(1e-11);
          expect(Math.abs(quantile(left, 0.25) + quantile(right, 0.75)) / sd).toBeLessThan(1e-11);
          // A tail that falls faster than an exponential spreads less than its mean excess.
          if (z > 0) expect(sd).toBeLessThan(mean(right) - z + 1e-12);
        },
      ),
    );
  });

  test.each([
    [cut(normal(0, 1), -1e-12, 1e-12), -1e-12, 1e-12, 1e-9],
    [cut(normal(0, 1), 3, 3 + 2 ** -20), 3, 3 + 2 ** -20, 1e-5],
    [cut(lognormal(1, 1), 1.001, 1.001001), 1.001, 1.001001, 1e-5],
    [cut(lognormal(1, 0.1), 2, 2 + 2 ** -20), 2, 2 + 2 ** -20, 1e-3],
  ])("a very narrow cut, %j, is uniform", (narrow, low, high, tolerance) => {
    const even = uniform(low, high);
    const near = (actual: number, expected: number) =>
      expect(Math.abs(actual - expected) / (high - low)).toBeLessThan(tolerance);
    near(mean(narrow), mean(even));
    near(standardDeviation(narrow), standardDeviation(even));
    for (const p of [0.001, 0.3, 0.5, 0.8]) near(quantile(narrow, p), quantile(even, p));
    for (const p of [0.2, 0.7]) expect(Math.abs(cdf(narrow, quantile(even, p)) - p)).toBeLessThan(tolerance);
  });

  test.each([
    cut(normal(0.63, 0.05), 0.5, 0.65),
    cut(lognormalByMean(190, 0.22), 150, null),
    cut(lognormal(1, 0.5), null, 0.8),
  ])("draws of %j are the draws of the uncut distribution that lie inside", (distribution) => {
    if (distribution.type !== "cut") throw new Error("not a cut");
    const random = xoshiro128(31);
    const [low, high] = support(distribution);
    const redrawn: number[] = [];
    while (redrawn.length < 20_000) {
      const x = draw(distribution.of, random);
      if (x >= low && x <= high) redrawn.push(x);
    }
    const drawn = Array.from({ length: 20_000 }, () => draw(distribution, random));
    // Kolmogorov: the largest gap times the root of the number exceeds 2.2 once in 8000 such samples.
    for (const sample of [redrawn, drawn]) expect(kolmogorov(sample, distribution)).toBeLessThan(2.2);
  });
});

function kolmogorov(sample: readonly number[], distribution: Distribution): number {
  const gaps = sample
    .toSorted((a, b) => a - b)
    .map((x, i) => {
      const below = cdf(distribution, x) * sample.length;
      return Math.max(below - i, i + 1 - below);
    });
  return Math.max(...gaps) / Math.sqrt(sample.length);
}
