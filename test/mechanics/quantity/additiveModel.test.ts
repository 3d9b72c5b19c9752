import { describe, expect, test } from "vitest";
import { draw, normal, uniform } from "../../../src/mechanics/quantity/distribution.ts";
import { formula } from "../../../src/mechanics/quantity/formula.ts";
import { standardUncertainty, taken } from "../../../src/mechanics/quantity/quantity.ts";
import { xoshiro128 } from "../../../src/mechanics/quantity/random.ts";
import { one } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const sum = formula(
  "Y = X_1 + X_2 + X_3 + X_4",
  { X_1: one, X_2: one, X_3: one, X_4: one, Y: one },
  "JCGM 101:2008, 9.2",
);

const count = 1_000_000;

/**
 * The ends printed to 0.01 and what a million draws can tell of them: five standard errors of a 2.5 % quantile are 0.027,
 * by the density 0.029 of N(0, 2²) there.
 */
const drawnToo = 0.027 + 0.005;

// JCGM 101:2008, 9.2.2 and 9.2.3: printed u(y) = 2.0 and intervals ±3.92 (normal inputs) and ±3.88 (rectangular ones).
describe.each([
  ["four standard normal inputs", normal(0, 1), 3.92, 20260101],
  ["four rectangular inputs of unit standard deviation", uniform(-Math.sqrt(3), Math.sqrt(3)), 3.88, 20260102],
])("JCGM 101:2008, 9.2: %s", (_, input, printed, seed) => {
  const random = xoshiro128(seed);
  const drawn = (): Float64Array => Float64Array.from({ length: count }, () => draw(input, random));
  const y = sum.over({ X_1: drawn(), X_2: drawn(), X_3: drawn(), X_4: drawn() }).sort();

  test("y is 0 and u(y) is 2.00", () => {
    const mean = y.reduce((all, it) => all + it, 0) / count;
    expect(Math.abs(mean)).toBeLessThan((5 * 2) / Math.sqrt(count));
    agrees(Math.sqrt(y.reduce((all, it) => all + (it - mean) ** 2, 0) / (count - 1)), "2.00");
  });

  test(`19 of 20 lie within ±${printed}`, () => {
    expect(Math.abs((y[0.025 * count] as number) + printed)).toBeLessThan(drawnToo);
    expect(Math.abs((y[0.975 * count] as number) - printed)).toBeLessThan(drawnToo);
    // The two models differ by 0.04: the half width, from both ends, tells them apart.
    const half = ((y[0.975 * count] as number) - (y[0.025 * count] as number)) / 2;
    expect(Math.abs(half - printed)).toBeLessThan(0.02);
  });

  test("the law of propagation gives the same u(y)", () => {
    const X = (symbol: string) => taken(symbol, input, one, symbol);
    const Y = sum({ X_1: X("X_1"), X_2: X("X_2"), X_3: X("X_3"), X_4: X("X_4") });
    agrees(standardUncertainty(Y), "2.0");
  });
});
