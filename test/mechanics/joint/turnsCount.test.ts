import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { atMost, type Count } from "../../../src/mechanics/joint/turnsCount.ts";
import { mean, normal, quantile, standardDeviation } from "../../../src/mechanics/quantity/distribution.ts";
import { type Quantity, taken } from "../../../src/mechanics/quantity/quantity.ts";
import { turn } from "../../../src/mechanics/quantity/unit.ts";

const roomFor = (value: number, u: number): Quantity => taken("n", normal(value, u), turn, "room");

describe("no more turns than there is room for", () => {
  // Against the lesser of both, taken over 400 by 400 strata.
  test.each([
    [4, 0.15, 4, 0.3],
    [3.8, 0.15, 4, 0.3],
    [4.5, 0.3, 4, 0.1],
    [2, 0.5, 4, 0.2],
    [8, 0.15, 5.8, 0.1],
  ])("%s ± %s in %s ± %s", (n, s, room, u) => {
    const strata = (of: ReturnType<typeof normal>) =>
      Array.from({ length: 400 }, (_, i) => quantile(of, (i + 0.5) / 400));
    const rooms = strata(normal(room, u));
    const least = strata(normal(n, s)).flatMap((a) => rooms.map((b) => Math.min(a, b)));
    const middle = least.reduce((sum, it) => sum + it, 0) / least.length;
    const spread = Math.sqrt(least.reduce((sum, it) => sum + (it - middle) ** 2, 0) / least.length);
    const found = atMost(normal(n, s), roomFor(room, u));
    expect(mean(found)).toBeCloseTo(middle, 3);
    expect(standardDeviation(found)).toBeGreaterThanOrEqual(spread - 1e-3);
    expect(standardDeviation(found)).toBeLessThanOrEqual(Math.max(s, u));
  });

  test("another turn never makes them less, three spreads below the mean", () => {
    const spread = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    const less = (n: number, s: number, u: number): number => {
      const found = atMost(normal(n, s), roomFor(4, u));
      return mean(found) - 3 * standardDeviation(found);
    };
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        spread,
        spread,
        (n, more, s, u) => {
          expect(less(n + more, s, u)).toBeGreaterThanOrEqual(less(n, s, u) - 1e-9);
        },
      ),
    );
  });

  test("a range given by hand is cut, and a count far below the room is left as it is", () => {
    const given = { type: "triangular", low: 2, likely: 3, high: 5 } as Count;
    expect(atMost(given, roomFor(4, 0.1))).toEqual({ type: "triangular", low: 2, likely: 3, high: 4 });
    expect(atMost(given, roomFor(1.5, 0.1))).toEqual({ type: "exact", value: 1.5 });
    const count = normal(3, 0.15);
    expect(atMost(count, roomFor(9, 0.1))).toBe(count);
  });
});
