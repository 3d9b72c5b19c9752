import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  casesToShow,
  clopperPearsonInterval,
  jeffreysInterval,
  type ShareInterval,
  wilsonInterval,
} from "../../../src/mechanics/service/proportion.ts";
import { agrees } from "../../published.ts";

const intervals = { wilsonInterval, jeffreysInterval, clopperPearsonInterval };

describe("published", () => {
  // test/published/proportions.csv: R 4.2.2 for cases of Newcombe (1998) and for small numbers.
  const rows = readFileSync(new URL("../../published/proportions.csv", import.meta.url), "utf8")
    .trim()
    .split("\n")
    .slice(2)
    .map((line) => line.split(","));

  test("has ten rows", () => expect(rows.length).toBe(10));
  for (const [x = "", n = "", ...limits] of rows)
    test(`${x} of ${n} has the intervals printed by R`, () => {
      const [count, of] = [Number(x), Number(n)];
      const ours = [
        ...wilsonInterval(count, of, 0.95),
        ...jeffreysInterval(count, of, 0.95),
        ...clopperPearsonInterval(count, of, 0.95),
      ];
      ours.forEach((limit, i) => {
        agrees(limit, limits[i] ?? "");
      });
    });

  // Newcombe, Statistics in Medicine 17 (1998), 857, table I, method 3 (from memory).
  test.each([
    [81, 263, ".2553", ".3662"],
    [15, 148, ".0624", ".1605"],
    [0, 20, "0.0000", ".1611"],
    [1, 29, ".0061", ".1718"],
  ])("%d of %d has Newcombe's score interval", (x, n, low, high) => {
    const [least, most] = wilsonInterval(x, n, 0.95);
    agrees(least, low);
    agrees(most, high);
  });

  // The workshop's own worked example: 2 of 3 came back, so the true rate may be anywhere from 18 to 96 %.
  test("2 of 3 lies anywhere from 18 to 96 %", () => {
    const [low, high] = jeffreysInterval(2, 3, 0.95);
    agrees(100 * low, "18");
    agrees(100 * high, "96");
  });

  // With 5 of 5 the lower limits are .57, .62 and .48 (computed with R 4.2.2).
  test("5 of 5 is no certainty", () => {
    agrees(wilsonInterval(5, 5, 0.95)[0], ".57");
    agrees(jeffreysInterval(5, 5, 0.95)[0], ".62");
    agrees(clopperPearsonInterval(5, 5, 0.95)[0], ".48");
  });

  // Success-run figures of demonstration tests without a failure (common practice, no source).
  test.each([
    [0.9, 0.9, 22],
    [0.9, 0.95, 29],
    [0.95, 0.95, 59],
    [0.8, 0.9, 11],
  ])("to show %d at a confidence of %d takes %d without a failure", (held, confidence, n) => {
    expect(casesToShow(held, confidence)).toBe(n);
  });
});

describe("laws", () => {
  const counts = fc
    .integer({ min: 1, max: 400 })
    .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
  const width = ([low, high]: ShareInterval): number => high - low;

  test.each(Object.entries(intervals))("%s contains the share seen and stays from 0 to 1", (_, interval) => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const [low, high] = interval(x, n, 0.95);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(x / n);
        expect(high).toBeGreaterThanOrEqual(x / n);
        expect(high).toBeLessThanOrEqual(1);
      }),
    );
  });

  test.each(Object.entries(intervals))("%s is shorter for twice as many cases of the same share", (_, interval) => {
    fc.assert(fc.property(counts, ([x, n]) => width(interval(2 * x, 2 * n, 0.95)) < width(interval(x, n, 0.95))));
  });

  test.each(Object.entries(intervals))("%s of the failures mirrors that of the successes", (_, interval) => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const [low, high] = interval(x, n, 0.9);
        const [mirroredLow, mirroredHigh] = interval(n - x, n, 0.9);
        expect(Math.abs(low + mirroredHigh - 1)).toBeLessThan(1e-13);
        expect(Math.abs(high + mirroredLow - 1)).toBeLessThan(1e-13);
      }),
    );
  });

  test("Wilson's limits are where the score test just rejects", () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        for (const p of wilsonInterval(x, n, 0.95)) {
          if (p === 0 || p === 1) continue;
          expect((x / n - p) ** 2 / ((p * (1 - p)) / n)).toBeCloseTo(1.959963984540054 ** 2, 8);
        }
      }),
    );
  });

  // Clopper and Pearson's own definition: at each limit the tail of the binomial distribution is (1 - level)/2.
  test("the exact limits leave 2.5 % of the binomial distribution beyond what was seen", () => {
    for (const [x, n] of [
      [1, 4],
      [3, 10],
      [18, 20],
    ] as const) {
      const [low, high] = clopperPearsonInterval(x, n, 0.95);
      expect(binomial(n, low, x, n)).toBeCloseTo(0.025, 12);
      expect(binomial(n, high, 0, x)).toBeCloseTo(0.025, 12);
    }
  });

  test("the exact interval is the longest of the three", () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const exact = width(clopperPearsonInterval(x, n, 0.95));
        expect(exact).toBeGreaterThan(width(jeffreysInterval(x, n, 0.95)));
      }),
    );
  });

  test("none of none says nothing, and impossible counts are refused", () => {
    for (const interval of Object.values(intervals)) {
      expect(interval(0, 0, 0.95)).toEqual([0, 1]);
      expect(() => interval(4, 3, 0.95)).toThrow(/4 of 3/);
      expect(() => interval(0.5, 3, 0.95)).toThrow(RangeError);
    }
  });

  test("as many cases as are asked for show the share, and one fewer does not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        (R, C) => {
          const n = casesToShow(R, C);
          expect(1 - R ** n).toBeGreaterThan(C - 1e-8);
          expect(1 - R ** (n - 1)).toBeLessThan(C);
        },
      ),
    );
  });
});

function binomial(n: number, p: number, from: number, to: number): number {
  let choose = 1;
  let sum = 0;
  for (let k = 0; k <= n; k++) {
    if (k >= from && k <= to) sum += choose * p ** k * (1 - p) ** (n - k);
    choose *= (n - k) / (k + 1);
  }
  return sum;
}
