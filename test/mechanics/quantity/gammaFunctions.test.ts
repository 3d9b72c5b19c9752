import gammaQuantileOf from "@stdlib/stats-base-dists-gamma-quantile";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gammaAbove,
  gammaBelow,
  gammaQuantile,
  gammaQuantileOfSurvival,
  logFactorial,
} from "../../../src/mechanics/quantity/gammaFunctions.ts";

const within = (actual: number, expected: number): number => Math.abs(actual / expected - 1);

describe("published", () => {
  // @stdlib/stats-base-dists-gamma-quantile. Its digits fail from shapes of 1000 (5e-4 at 1000), so it is asked up to 500.
  test("the quantiles of the gamma distribution agree with an independent library to 1e-12", () => {
    for (const shape of [0.5, 1, 2, 3, 7, 8, 20, 21, 50, 100, 500])
      for (const p of [0.001, 0.005, 0.025, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.975, 0.995, 0.999])
        expect(within(gammaQuantile(p, shape), gammaQuantileOf(p, shape, 1)), `${p} of ${shape}`).toBeLessThan(1e-12);
  });

  // Printed by gammaShares.py beside this file: shape, share, quantile by the share below and by the share above.
  test.each([
    [0.5, 1e-10, 7.85398163397448e-21, 20.9107281823806],
    [0.5, 0.025, 0.000491034558587628, 2.51194309365744],
    [0.5, 0.3, 0.0742359309162727, 0.537097085428793],
    [2, 1e-10, 1.41422022908297e-5, 26.3339816055309],
    [2, 0.025, 0.242209278543965, 5.5716433909389],
    [2, 0.3, 1.09734921070349, 2.4392164832802],
    [7, 1e-10, 0.128023887106718, 38.5172882151356],
    [7, 0.025, 2.81436305151987, 13.0594740225187],
    [7, 0.3, 5.41073886083346, 8.1110493066928],
    [8, 1e-10, 0.216840784482938, 40.6126430442692],
    [8, 0.025, 3.4538321767485, 14.4226753617024],
    [8, 0.3, 6.31217438202984, 9.20894719611392],
    [20, 1e-10, 3.03246731530756, 62.6524140793664],
    [20, 0.025, 12.2165195854039, 29.6708535715856],
    [20, 0.3, 17.4359696634755, 22.082433326215],
    [21, 1e-10, 3.37876185792996, 64.3351562913605],
    [21, 0.025, 12.9993309840762, 30.8883779026746],
    [21, 0.3, 18.3774812688298, 23.1408375750109],
    [100, 1e-10, 48.883092053796, 177.300504705632],
    [100, 0.025, 81.3639912509231, 120.528947753155],
    [100, 0.3, 94.5242993588807, 104.992707678865],
    [1000, 1e-10, 811.798762717561, 1214.49955632381],
    [1000, 0.025, 938.973018407695, 1062.92115122489],
    [1000, 0.3, 983.178446757899, 1016.33825137867],
    [100000, 1e-10, 98001.5041654483, 102024.806812037],
    [100000, 0.025, 99381.1526637447, 100620.741640774],
    [100000, 0.3, 99833.9286392851, 100165.588024989],
  ])("shape %d: the share %d below and above, to 1e-12", (shape, share, low, high) => {
    expect(within(gammaQuantile(share, shape), low)).toBeLessThan(1e-12);
    expect(within(gammaQuantileOfSurvival(share, shape), high)).toBeLessThan(1e-12);
  });

  // Chi-square with 10 degrees of freedom: 18.307 and 3.940 at 5 %, as every table of it prints; chi-square is 2 gamma.
  test("a chi-square of 10 degrees has its 5 % points at 3.940 and 18.307", () => {
    expect(2 * gammaQuantile(0.05, 5)).toBeCloseTo(3.94, 3);
    expect(2 * gammaQuantileOfSurvival(0.05, 5)).toBeCloseTo(18.307, 3);
  });

  test("the factorials of whole numbers", () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n++) {
      factorial *= n;
      expect(Math.abs(logFactorial(n) - Math.log(factorial)), `${n}`).toBeLessThan(
        2e-14 * Math.max(1, Math.log(factorial)),
      );
    }
    expect(logFactorial(0)).toBeCloseTo(0, 13);
    expect(logFactorial(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI) / 2), 13);
  });
});

describe("laws", () => {
  const shapes = fc.double({ min: 0.3, max: 5000, noNaN: true });
  const shares = fc.double({ min: 1e-12, max: 0.5, noNaN: true });

  test("a quantile gives its share back, from below and from above", () =>
    fc.assert(
      fc.property(shapes, shares, (shape, share) => {
        expect(within(gammaBelow(shape, gammaQuantile(share, shape)), share)).toBeLessThan(1e-10);
        const above = gammaQuantileOfSurvival(share, shape);
        // Below shape 1 a share just under one half is what is left of 1.
        expect(Math.abs(gammaAbove(shape, above) - share)).toBeLessThan(1e-10 * share + 1e-15);
      }),
    ));

  test("the shares on both sides of any x are 1 together, and the one below rises", () =>
    fc.assert(
      fc.property(shapes, fc.double({ min: 0.01, max: 3, noNaN: true }), (shape, ratio) => {
        const x = ratio * shape;
        expect(gammaBelow(shape, x) + gammaAbove(shape, x)).toBeCloseTo(1, 12);
        expect(gammaBelow(shape, 1.1 * x)).toBeGreaterThanOrEqual(gammaBelow(shape, x));
      }),
    ));

  test("a shape of 1 is the exponential distribution", () =>
    fc.assert(
      fc.property(shares, (share) => {
        expect(within(gammaQuantileOfSurvival(share, 1), -Math.log(share))).toBeLessThan(1e-13);
        expect(within(gammaQuantile(share, 1), -Math.log1p(-share))).toBeLessThan(1e-13);
      }),
    ));

  test("no share at all and the whole are the ends; anything else throws", () => {
    expect([gammaQuantile(0, 3), gammaQuantile(1, 3)]).toEqual([0, Number.POSITIVE_INFINITY]);
    expect([gammaQuantileOfSurvival(1, 3), gammaQuantileOfSurvival(0, 3)]).toEqual([0, Number.POSITIVE_INFINITY]);
    expect(() => gammaQuantile(1.1, 3)).toThrow(RangeError);
    expect(() => gammaQuantile(0.5, 0)).toThrow(RangeError);
    expect(() => gammaBelow(2, -1)).toThrow(RangeError);
    expect(() => logFactorial(-1)).toThrow(RangeError);
  });
});
