import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cdf,
  type Distribution,
  exactly,
  lognormal,
  normal,
  uniform,
} from "../../../src/mechanics/quantity/distribution.ts";
import {
  cumulated,
  logDensity,
  nothing,
  probabilityBelow,
  quantileOf,
} from "../../../src/mechanics/quantity/logDensity.ts";
import { minimum } from "../../../src/mechanics/quantity/minimum.ts";

const below = (a: Distribution, b: Distribution, x: number): number => {
  const density = minimum(logDensity(a), logDensity(b));
  return probabilityBelow(density, cumulated(density), x);
};

/** The lesser of two independent numbers exceeds x if both do. */
const exact = (a: Distribution, b: Distribution, x: number): number => cdf(a, x) + cdf(b, x) - cdf(a, x) * cdf(b, x);

describe("the lesser of two independent quantities", () => {
  test.each([
    ["alike", lognormal(20, 0.2), lognormal(20, 0.2)],
    ["one a little stronger", lognormal(20, 0.2), lognormal(25, 0.1)],
    ["one much stronger", lognormal(20, 0.2), lognormal(60, 0.25)],
    ["a narrow one in the middle of a wide one", lognormal(20, 0.4), uniform(19, 21)],
    ["one that may be 0", normal(20, 9), lognormal(18, 0.2)],
    ["both that may be 0", normal(20, 9), normal(12, 6)],
  ])("is below x as the closed form says: %s", (_, a, b) => {
    for (const x of [6, 8, 10, 12, 15, 18, 20, 22, 25, 30, 40]) {
      const p = exact(a, b, x);
      if (p > 1e-5) expect(Math.abs(below(a, b, x) / p - 1), `at ${x}`).toBeLessThan(0.01);
    }
  });

  test("is either of them, in whatever order they come", () => {
    const spread = fc.double({ min: 0.05, max: 0.4, noNaN: true });
    const median = fc.double({ min: 5, max: 60, noNaN: true });
    fc.assert(
      fc.property(median, spread, median, spread, (m, s, n, t) => {
        const [a, b] = [logDensity(lognormal(m, s)), logDensity(lognormal(n, t))];
        const [ab, ba] = [minimum(a, b), minimum(b, a)];
        const [one, two] = [cumulated(ab), cumulated(ba)];
        for (const p of [1e-4, 0.01, 0.5]) {
          const x = quantileOf(ab, one, p);
          expect(quantileOf(ba, two, p) / x).toBeCloseTo(1, 6);
          expect(x).toBeLessThanOrEqual(
            1.001 * Math.min(quantileOf(a, cumulated(a), p), quantileOf(b, cumulated(b), p)),
          );
        }
      }),
    );
  });

  test("is the weaker one where the other is always stronger", () => {
    const weak = logDensity(uniform(1, 2));
    expect(minimum(weak, logDensity(uniform(3, 4)))).toBe(weak);
    expect(minimum(logDensity(exactly(7)), weak)).toBe(weak);
  });

  test("is 0 where either is", () => {
    for (const other of [
      logDensity(uniform(1, 2)),
      logDensity(lognormal(1e-3, 0.1)),
      logDensity(lognormal(1e3, 0.1)),
      nothing,
    ]) {
      expect(minimum(nothing, other).zero).toBe(1);
      expect(minimum(other, nothing).zero).toBe(1);
    }
  });

  test("holds all of the probability", () => {
    const { mass, zero } = minimum(logDensity(normal(20, 9)), logDensity(lognormal(18, 0.2)));
    expect(mass.reduce((sum, it) => sum + it, zero)).toBeCloseTo(1, 9);
  });
});
