import stdlibQuantile from "@stdlib/stats-base-dists-beta-quantile";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { betaAbove, betaBelow, betaQuantile } from "../../../src/mechanics/quantity/betaFunctions.ts";
import { agrees } from "../../published.ts";

// a, b, x, below, above: printed by betaTails.py beside this file (a series of positive terms in 60 decimal digits).
const TAILS: readonly (readonly [number, number, number, string, string])[] = [
  [0.5, 0.5, 0.25, "3.3333333333333333333e-1", "6.6666666666666666667e-1"],
  [0.5, 20.5, 0.1, "9.6116083019430740585e-1", "3.8839169805692594155e-2"],
  [2.5, 1.5, 0.2, "3.3728715448579814651e-2", "9.6627128455142018535e-1"],
  [81.5, 182.5, 0.25, "1.6471236841893839941e-2", "9.8352876315810616006e-1"],
  [82, 182, 0.5, "9.9999999978493166875e-1", "2.1506833125138141768e-10"],
  [9, 2, 0.999, "9.9995523937100695064e-1", "4.4760628993049359614e-5"],
  [9, 2, 0.01, "9.9100000000000018548e-18", "9.9999999999999999009e-1"],
  [3, 7, 1e-100, "8.4000000000000005038e-299", "1.0"],
  [1, 1, 0.3, "2.999999999999999889e-1", "7.000000000000000111e-1"],
  [1000.5, 0.5, 0.99, "7.3277895568316992603e-6", "9.999926722104431683e-1"],
  [1e4, 2e4, 0.33, "1.1020551912741971582e-1", "8.8979448087258028418e-1"],
  [1e5, 1e5, 0.503, "9.963550476352860037e-1", "3.6449523647139962953e-3"],
  [0.01, 0.01, 0.4, "4.9800053388149553687e-1", "5.0199946611850446313e-1"],
  [30, 0.5, 0.05, "9.7932167394677644351e-41", "1.0"],
];

// p as a double, a, b, x that p lies below: printed by betaTails.py as well.
const QUANTILES: readonly (readonly [number, number, number, string])[] = [
  [0.025, 81.5, 182.5, "2.5452193499102347297e-1"],
  [0.975, 0.5, 20.5, "1.166389829048753931e-1"],
  [1e-9, 0.5, 20.5, "3.8782139995743022849e-20"],
  [1e-100, 0.5, 20.5, "3.8782139995743019549e-202"],
  [0.025, 10, 1, "6.9150289218123917993e-1"],
  [0.025, 2.5, 1.5, "1.7673609713125732148e-1"],
  [0.975, 2.5, 1.5, "9.6125238221483481572e-1"],
  [0.3, 1e4, 2e4, "3.3190340653006329924e-1"],
  [0.5, 3, 3, "5.0e-1"],
  [0.999999, 0.5, 1e3, "1.1895731510026317624e-2"],
  [1e-3, 0.01, 0.01, "1.2472643212277884682e-270"],
  [0.7, 1e3, 2, "9.9890380026901035557e-1"],
];

describe("published", () => {
  // R 4.2.2, qbeta, as printed for Jeffreys' intervals of 81 of 263 and 0 of 20.
  test("the quantiles are those of R's qbeta", () => {
    agrees(betaQuantile(0.025, 81.5, 182.5), ".2545219350");
    agrees(betaQuantile(0.975, 81.5, 182.5), ".3656474992");
    agrees(betaQuantile(0.975, 0.5, 20.5), ".1166389829");
  });

  test.each(TAILS)("with shapes %d and %d both tails at %d hold to 1e-12 of themselves", (a, b, x, below, above) => {
    expect(offBy(betaBelow(a, b, x), below)).toBeLessThan(1e-12);
    expect(offBy(betaAbove(a, b, x), above)).toBeLessThan(1e-12);
  });

  test.each(QUANTILES)("the quantile of %d with shapes %d and %d holds to 1e-12 of itself", (p, a, b, x) => {
    expect(offBy(betaQuantile(p, a, b), x)).toBeLessThan(1e-12);
  });

  test("the quantile agrees with @stdlib to 1e-12 for every count of up to 40 cases", () => {
    for (let n = 1; n <= 40; n++)
      for (let x = 0; x <= n; x++)
        for (const p of [0.025, 0.05, 0.5, 0.975]) {
          const [a, b] = [x + 0.5, n - x + 0.5];
          expect(Math.abs(betaQuantile(p, a, b) / stdlibQuantile(p, a, b) - 1), `${p} ${a} ${b}`).toBeLessThan(1e-12);
        }
  });
});

describe("laws", () => {
  const shapes = fc.double({ min: -2, max: 3.5, noNaN: true }).map((power) => 10 ** power);
  const shares = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true });

  test("what lies below x and what lies above make one", () => {
    fc.assert(
      fc.property(shapes, shapes, shares, (a, b, x) => Math.abs(betaBelow(a, b, x) + betaAbove(a, b, x) - 1) < 1e-15),
    );
  });

  test("with the shapes exchanged the distribution is mirrored", () => {
    fc.assert(
      fc.property(shapes, shapes, fc.integer({ min: 1, max: 1023 }), (a, b, k) => {
        const x = k / 1024;
        const [below, mirrored] = [betaBelow(a, b, x), betaAbove(b, a, 1 - x)];
        expect(Math.abs(below - mirrored)).toBeLessThanOrEqual(1e-12 * mirrored + 1e-300);
      }),
    );
  });

  test("the probability below the quantile of p is p", () => {
    fc.assert(
      fc.property(shapes, shapes, shares, (a, b, p) => {
        const x = betaQuantile(p, a, b);
        // Above 1/2 a rounding of x moves the share by the density there, which has no bound near 1.
        fc.pre(x > 1e-290 && x < 0.5);
        expect(Math.abs(betaBelow(a, b, x) - p)).toBeLessThan(1e-12 * p + 4e-16 * (a + b) + 1e-15);
      }),
      { numRuns: 500 },
    );
  });

  // DLMF 8.17.2 with b = 1 and with a = 1, where the integral is elementary.
  test("with a shape of 1 it is a power", () => {
    fc.assert(
      fc.property(shapes, shares, (a, x) => {
        fc.pre(x ** a > 1e-290 && (1 - x) ** a > 1e-290);
        expect(Math.abs(betaBelow(a, 1, x) / x ** a - 1)).toBeLessThan(1e-11);
        expect(Math.abs(betaAbove(1, a, x) / (1 - x) ** a - 1)).toBeLessThan(1e-11);
      }),
    );
  });

  // DLMF 8.17.20: I_x(a, b) = I_x(a + 1, b) + x^a (1 - x)^b / (a B(a, b)); with whole shapes the last term is binomial.
  test("the tail of whole shapes is a sum of binomial probabilities", () => {
    for (const [a, b, x] of [
      [3, 8, 0.2],
      [9, 2, 0.7],
      [20, 11, 0.55],
    ] as const) {
      const n = a + b - 1;
      let choose = 1;
      let sum = 0;
      for (let k = 0; k <= n; k++) {
        if (k >= a) sum += choose * x ** k * (1 - x) ** (n - k);
        choose *= (n - k) / (k + 1);
      }
      expect(Math.abs(betaBelow(a, b, x) / sum - 1)).toBeLessThan(1e-13);
    }
  });

  test("the ends are reached, and what is no probability or no shape is refused", () => {
    expect([betaBelow(2, 3, 0), betaBelow(2, 3, 1), betaAbove(2, 3, 0), betaAbove(2, 3, 1)]).toEqual([0, 1, 1, 0]);
    expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3)]).toEqual([0, 1]);
    for (const p of [-1e-300, 1.0000001, Number.NaN]) expect(() => betaQuantile(p, 1, 1)).toThrow(/betaQuantile: p/);
    expect(() => betaQuantile(0.5, 0, 1)).toThrow(/shape/);
  });
});

function offBy(actual: number, reference: string): number {
  return Math.abs(actual / Number(reference) - 1);
}
