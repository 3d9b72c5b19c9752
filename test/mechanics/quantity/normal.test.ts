import stdlibQuantile from "@stdlib/stats-base-dists-normal-quantile";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  normalCdf,
  normalDensity,
  normalFromCentre,
  normalQuantile,
  normalQuantileOfSurvival,
  normalSurvival,
} from "../../../src/mechanics/quantity/normal.ts";
import { agrees } from "../../published.ts";

// z, survival, density: printed by normalTails.py beside this file (the power series in 420 decimal digits).
const TAILS: readonly (readonly [number, string, string])[] = [
  [0.0625, "4.7508233097075277880e-1", "3.9816385668688658504e-1"],
  [0.5, "3.0853753872598689636e-1", "3.5206532676429947777e-1"],
  [0.6744, "2.5002852137294061469e-1", "3.1779580877790457912e-1"],
  [0.675, "2.4983788247177699727e-1", "3.1766718471514820839e-1"],
  [1, "1.5865525393145705141e-1", "2.4197072451914334980e-1"],
  [1.75, "4.0059156863817090419e-2", "8.6277318826511514432e-2"],
  [3, "1.3498980316300945267e-3", "4.4318484119380071756e-3"],
  [5, "2.8665157187919391167e-7", "1.4867195147342977079e-6"],
  [5.65, "8.0223918506634975991e-9", "4.6668867975942535577e-8"],
  [5.66, "7.5686497519977137143e-9", "4.4102977789373091962e-8"],
  [8, "6.2209605742717841235e-16", "5.0522710835368922880e-15"],
  [13.25, "2.2560163396857890795e-40", "3.0060595260997454028e-39"],
  [20, "2.7536241186062336951e-89", "5.5209483621597631896e-88"],
  [30, "4.9067139271481870595e-198", "1.4736461348785475190e-196"],
  [37, "5.7255712225245768227e-300", "2.1200065515246056269e-298"],
];

// q as a double, z above which q of all values lie: printed by normalTails.py as well.
const QUANTILES: readonly (readonly [number, string])[] = [
  [1e-300, "3.7047096299361199237e+1"],
  [1e-200, "3.0205594179579643063e+1"],
  [1e-100, "2.1273453560965324294e+1"],
  [1e-50, "1.4933337534788488981e+1"],
  [1e-20, "9.2623400897984075796e+0"],
  [1.3e-11, "6.6676114565107408347e+0"],
  [1.5e-11, "6.6465708874771128614e+0"],
  [1e-9, "5.9978070150076868614e+0"],
  [1e-5, "4.2648907939228246102e+0"],
  [0.01, "2.3263478740408410931e+0"],
  [0.0749, "1.4402382675279636631e+0"],
  [0.0751, "1.4388253927525399824e+0"],
  [0.3, "5.2440051270804081597e-1"],
  [0.4999, "2.5066283008800749239e-4"],
];

describe("published", () => {
  // M. J. Wichura, Applied Statistics 37 (1988), the check values given with PPND16 (from memory), to 14
  // of their 16 digits: the last ones are below the roundings of a double there.
  test("PPND16 gives the three values printed with AS 241", () => {
    agrees(normalQuantile(0.25), "-0.67448975019608");
    agrees(normalQuantile(0.001), "-3.0902323061678");
    agrees(normalQuantile(1e-20), "-9.2623400897984");
  });

  // Abramowitz, Stegun, "Handbook of Mathematical Functions", table 26.1 (from memory).
  test("the area and the ordinate of the normal curve are those of the handbook", () => {
    agrees(normalCdf(1), "0.841344746068543");
    agrees(normalCdf(2), "0.977249868051821");
    agrees(normalDensity(0), "0.398942280401433");
    agrees(normalDensity(1), "0.241970724519143");
  });

  test.each(TAILS)("at %d both tails and the density hold to 1e-14 of themselves", (z, tail, density) => {
    expect(offBy(normalSurvival(z), tail)).toBeLessThan(1e-14);
    expect(offBy(normalCdf(-z), tail)).toBeLessThan(1e-14);
    expect(offBy(normalDensity(z), density)).toBeLessThan(1e-14);
    expect(offBy(normalDensity(-z), density)).toBeLessThan(1e-14);
    expect(Math.abs(normalCdf(z) - (1 - Number(tail)))).toBeLessThan(2e-16);
    expect(Math.abs(normalFromCentre(z) - (0.5 - Number(tail)))).toBeLessThan(2e-16);
  });

  test.each(QUANTILES)("the quantile of a tail of %d holds to 1e-14 of itself", (q, z) => {
    expect(offBy(normalQuantileOfSurvival(q), z)).toBeLessThan(1e-14);
    expect(offBy(-normalQuantile(q), z)).toBeLessThan(1e-14);
  });

  // @stdlib 0.3.1 is itself off by up to 7e-10 in the tails, hence the coarse tolerance.
  test("the quantile agrees with @stdlib to 2e-9 from 1e-9 to 1 - 1e-9", () => {
    for (const p of [1e-9, 1e-6, 1e-4, 0.01, 0.07, 0.08, 0.2, 0.4, 0.45, 0.6, 0.9, 0.93, 0.999, 1 - 1e-9]) {
      expect(Math.abs(normalQuantile(p) / stdlibQuantile(p, 0, 1) - 1)).toBeLessThan(2e-9);
    }
  });
});

describe("laws", () => {
  const deviates = fc.double({ min: -37, max: 37, noNaN: true });
  const exponents = fc.double({ min: -300, max: Math.log10(0.5), noNaN: true });

  test("what lies below and what lies above make one", () => {
    fc.assert(fc.property(deviates, (z) => Math.abs(normalCdf(z) + normalSurvival(z) - 1) < 4e-16));
  });

  test("the survival of the quantile of a survival is that survival, down to 1e-300", () => {
    fc.assert(
      fc.property(exponents, (exponent) => {
        const q = 10 ** exponent;
        const z = normalQuantileOfSurvival(q);
        // A rounding of z changes the tail by z^2 of them, and z is good to a few.
        expect(Math.abs(normalSurvival(z) / q - 1)).toBeLessThan(1e-14 + 1e-15 * z * z);
        expect(normalQuantile(q)).toBe(-z);
      }),
      { numRuns: 500 },
    );
  });

  test("the quantile of the complement is the mirrored quantile", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 30 }), (k) => {
        const p = k / 2 ** 31;
        expect(Math.abs(normalQuantile(1 - p) + normalQuantile(p))).toBeLessThan(1e-14);
      }),
    );
  });

  test("a larger share has a quantile no smaller", () => {
    fc.assert(
      fc.property(exponents, fc.double({ min: 1e-11, max: 1, noNaN: true }), (exponent, step) => {
        const q = 10 ** exponent;
        expect(normalQuantile(q * (1 + step))).toBeGreaterThan(normalQuantile(q));
      }),
    );
  });

  test("the density is the slope of the probability", () => {
    fc.assert(
      fc.property(fc.double({ min: -36, max: 36, noNaN: true }), (z) => {
        const h = 1e-3 / Math.max(1, Math.abs(z));
        const upper = Math.abs(z);
        const slope = (normalSurvival(upper - h) - normalSurvival(upper + h)) / (2 * h);
        expect(slope / normalDensity(z)).toBeCloseTo(1, 6);
      }),
    );
  });

  test("the share next to the centre loses nothing: it is the density times the distance", () => {
    for (const z of [1e-300, 1e-100, 1e-12, -1e-9]) {
      expect(Math.abs(normalFromCentre(z) / (z * normalDensity(0)) - 1)).toBeLessThan(1e-15);
    }
  });

  test("the ends are reached, and what is no probability is refused", () => {
    expect([normalCdf(-Infinity), normalCdf(Infinity), normalSurvival(1e300)]).toEqual([0, 1, 0]);
    expect([normalDensity(-Infinity), normalDensity(1e300)]).toEqual([0, 0]);
    expect([normalQuantile(0), normalQuantile(1), normalQuantile(0.5)]).toEqual([-Infinity, Infinity, 0]);
    expect(normalCdf(Number.NaN)).toBeNaN();
    for (const p of [-1e-300, 1.0000001, Number.NaN]) {
      expect(() => normalQuantile(p)).toThrow(/normalQuantile: p/);
      expect(() => normalQuantileOfSurvival(p)).toThrow(RangeError);
    }
  });
});

function offBy(actual: number, reference: string): number {
  return Math.abs(actual / Number(reference) - 1);
}
