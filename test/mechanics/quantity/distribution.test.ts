import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Distribution } from "../../../src/mechanics/quantity/distribution.ts";
import {
  cdf,
  cut,
  draw,
  exactly,
  lognormal,
  lognormalByMean,
  mean,
  normal,
  quantile,
  scaled,
  standardDeviation,
  support,
  survival,
  triangular,
  uniform,
} from "../../../src/mechanics/quantity/distribution.ts";
import { agrees } from "../../published.ts";

describe("published", () => {
  // JCGM 100:2008 (GUM), 4.3.7, example 1, and 4.3.9: half-width 0.40, rectangular and triangular (from memory).
  test("a half-width a has the standard deviation a/sqrt(3), and a/sqrt(6) under a triangle", () => {
    agrees(standardDeviation(uniform(16.12, 16.92)), "0.23");
    expect(standardDeviation(uniform(-3, 3)) ** 2).toBeCloseTo(9 / 3, 14);
    expect(standardDeviation(triangular(-3, 0, 3)) ** 2).toBeCloseTo(9 / 6, 14);
  });

  // The power series of normalTails.py: the tail beyond 30 standard deviations.
  test("the tails of the normal family hold to 1e-12 of themselves", () => {
    const tail = 4.906713927148187e-198;
    expect(Math.abs(survival(normal(100, 2), 160) / tail - 1)).toBeLessThan(1e-12);
    expect(Math.abs(cdf(normal(100, 2), 40) / tail - 1)).toBeLessThan(1e-12);
    expect(Math.abs(survival(lognormal(1, 0.5), Math.exp(15)) / tail - 1)).toBeLessThan(1e-12);
    expect(Math.abs(quantile(normal(0, 2), 1e-300) / (-2 * 37.0470962993612) - 1)).toBeLessThan(1e-12);
    expect(Math.abs(quantile(lognormal(3, 0.1), 1e-100) / (3 * Math.exp(-2.1273453560965323)) - 1)).toBeLessThan(1e-12);
  });

  // Printed by cutTails.py as well.
  test("a narrow lognormal keeps its far tail, though x / median is near 1", () => {
    expect(Math.abs(survival(lognormal(3, 2 ** -10), 3.0625) / 2.9480514525922907e-99 - 1)).toBeLessThan(1e-12);
  });
});

const places = fc.double({ min: -1000, max: 1000, noNaN: true });
const widths = fc.double({ min: 0.1, max: 100, noNaN: true });
const fractions = fc.double({ min: 0, max: 1, noNaN: true });
const sigmas = fc.double({ min: 0.01, max: 0.5, noNaN: true });
const families = fc.oneof(
  fc.tuple(places, widths).map(([place, sd]) => normal(place, sd)),
  fc.tuple(widths, sigmas).map(([median, sigma]) => lognormal(median, sigma)),
);
const cuts = fc
  .tuple(
    families,
    fc.double({ min: -6, max: 6, noNaN: true }),
    fc.double({ min: 0.01, max: 5, noNaN: true }),
    fc.nat(2),
  )
  .map(([of, from, width, open]) => {
    const x = (z: number) => (of.type === "normal" ? of.mean + of.sd * z : of.median * Math.exp(of.sigma * z));
    return cut(of, open === 1 ? null : x(from), open === 2 ? null : x(from + width));
  });
const spreads: fc.Arbitrary<Distribution> = fc.oneof(
  families,
  fc.tuple(places, widths).map(([low, width]) => uniform(low, low + width)),
  fc
    .tuple(places, widths, fractions)
    .map(([low, width, share]) => triangular(low, Math.min(low + share * width, low + width), low + width)),
  cuts,
);
const probabilities = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });

describe("laws", () => {
  test("the probability below a quantile is the one asked for", () => {
    fc.assert(
      fc.property(spreads, probabilities, (distribution, p) => {
        expect(Math.abs(cdf(distribution, quantile(distribution, p)) - p)).toBeLessThan(1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  test("what lies below and what lies above make one", () => {
    fc.assert(
      fc.property(spreads, places, probabilities, (distribution, anywhere, p) => {
        for (const x of [anywhere, quantile(distribution, p), ...support(distribution)]) {
          expect(Math.abs(cdf(distribution, x) + survival(distribution, x) - 1)).toBeLessThan(1e-12);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test("a larger value has no smaller probability below it, a larger probability no smaller quantile", () => {
    fc.assert(
      fc.property(spreads, probabilities, probabilities, (distribution, p, q) => {
        const [x, y] = [quantile(distribution, Math.min(p, q)), quantile(distribution, Math.max(p, q))];
        expect(y - x).toBeGreaterThanOrEqual(-1e-12 * Math.max(1, Math.abs(x)));
        if (y > x) expect(cdf(distribution, y)).toBeGreaterThanOrEqual(cdf(distribution, x) - 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  test("nothing lies outside the support, and its ends are the quantiles of 0 and 1", () => {
    fc.assert(
      fc.property(spreads, probabilities, (distribution, p) => {
        const [low, high] = support(distribution);
        for (const share of [p, 1e-18, 1e-100, 1 - 2 ** -53]) {
          const x = quantile(distribution, share);
          expect(x >= low && x <= high).toBe(true);
        }
        expect([quantile(distribution, 0), quantile(distribution, 1)]).toEqual([low, high]);
        expect([cdf(distribution, low), survival(distribution, high)]).toEqual([0, 0]);
      }),
    );
  });

  test("mean and standard deviation are the integrals of the probability above", () => {
    fc.assert(
      fc.property(spreads, (distribution) => {
        const [low, high] = [quantile(distribution, 1e-15), quantile(distribution, 1 - 1e-15)];
        // E(X - low) is the integral of the survival, E((X - low)^2) of twice (x - low) times it.
        const first = simpson((x) => survival(distribution, x), low, high);
        const second = simpson((x) => 2 * (x - low) * survival(distribution, x), low, high);
        const deviation = Math.sqrt(second - first * first);
        expect(Math.abs(mean(distribution) - low - first) / deviation).toBeLessThan(1e-6);
        expect(Math.abs(standardDeviation(distribution) / deviation - 1)).toBeLessThan(1e-5);
      }),
    );
  });

  test("scaling moves every value, the mean and the standard deviation by the factor", () => {
    fc.assert(
      fc.property(
        spreads,
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        probabilities,
        (distribution, factor, p) => {
          const larger = scaled(distribution, factor);
          const near = (actual: number, expected: number, unit: number) =>
            expect(Math.abs(actual - expected) / unit).toBeLessThan(1e-9);
          const unit = factor * standardDeviation(distribution);
          near(quantile(larger, p), factor * quantile(distribution, p), unit);
          near(mean(larger), factor * mean(distribution), unit);
          near(standardDeviation(larger), unit, unit);
          near(cdf(larger, factor * mean(distribution)), cdf(distribution, mean(distribution)), 1);
          expect(larger.type).toBe(distribution.type);
        },
      ),
    );
  });

  test("a lognormal by mean and coefficient of variation has them", () => {
    fc.assert(
      fc.property(widths, fc.double({ min: 1e-3, max: 3, noNaN: true }), (average, cv) => {
        const distribution = lognormalByMean(average, cv);
        expect(mean(distribution) / average).toBeCloseTo(1, 12);
        expect(standardDeviation(distribution) / average / cv).toBeCloseTo(1, 12);
      }),
    );
  });

  test("every draw takes one number of the stream, whatever the distribution", () => {
    fc.assert(
      fc.property(fc.oneof(spreads, places.map(exactly)), fractions, (distribution, u) => {
        let taken = 0;
        const x = draw(distribution, () => {
          taken++;
          return u;
        });
        expect(taken).toBe(1);
        expect(x).toBe(quantile(distribution, u));
      }),
    );
  });

  test("a number known without doubt is a step", () => {
    for (const same of [exactly(4), uniform(4, 4), triangular(4, 4, 4)]) {
      expect([3.999, 4, 4.001].map((x) => cdf(same, x))).toEqual([0, 1, 1]);
      expect([3.999, 4, 4.001].map((x) => survival(same, x))).toEqual([1, 0, 0]);
      expect([0, 0.3, 1].map((p) => quantile(same, p))).toEqual([4, 4, 4]);
      expect([mean(same), standardDeviation(same), ...support(same)]).toEqual([4, 0, 4, 4]);
      expect(mean(scaled(same, 2.5))).toBe(10);
    }
  });

  test.each<readonly [string, () => unknown]>([
    ["exactly: value", () => exactly(Number.NaN)],
    ["normal: mean", () => normal(Number.POSITIVE_INFINITY, 1)],
    ["normal: sd", () => normal(0, 0)],
    ["normal: sd", () => normal(0, Number.NaN)],
    ["lognormal: median", () => lognormal(0, 1)],
    ["lognormal: sigma", () => lognormal(1, -0.1)],
    ["lognormalByMean: mean", () => lognormalByMean(-1, 0.1)],
    ["lognormalByMean: cv", () => lognormalByMean(1, 0)],
    ["uniform: high", () => uniform(2, 1)],
    ["uniform: low", () => uniform(Number.NEGATIVE_INFINITY, 1)],
    ["triangular: likely", () => triangular(1, 0.5, 2)],
    ["triangular: high", () => triangular(1, 2.5, 2)],
    ["cut: low", () => cut(normal(0, 1), 1, 1)],
    ["cut: low", () => cut(normal(0, 1), 38.5, null)],
    ["cut: low", () => cut(normal(0, 1), 50, 60)],
    ["cut: low", () => cut(lognormal(1, 1), null, 0)],
    ["cut: high", () => cut(lognormal(1, 1), null, Number.NaN)],
    ["scaled: factor", () => scaled(uniform(0, 1), 0)],
    ["quantile: p", () => quantile(exactly(1), 1.5)],
  ])("%s is named where it makes no distribution", (named, make) => {
    expect(make).toThrow(RangeError);
    expect(make).toThrow(named);
  });
});

function simpson(f: (x: number) => number, low: number, high: number): number {
  const panels = 4000;
  const h = (high - low) / panels;
  let sum = f(low) + f(high);
  for (let i = 1; i < panels; i++) sum += (i % 2 === 1 ? 4 : 2) * f(low + i * h);
  return (sum * h) / 3;
}
