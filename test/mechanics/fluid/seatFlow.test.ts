import fc from "fast-check";
import { expect, test } from "vitest";
import { oneAfterOther, seatFlow } from "../../../src/mechanics/fluid/seatFlow.ts";
import { exact, type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { kg_m3, ml_d, mm, mPas, Pa, um } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const mm_ = (value: number): Quantity => exact("x", value, mm);
const push = {
  Dp: exact("Dp", 832.6 * 9.81 * 0.01, Pa),
  mu: exact("mu", 19.043 * 0.8326, mPas),
  rho: exact("rho", 832.6, kg_m3),
};

function past(gap_um: number | null, score_um: number | null): number {
  const open = (it: number | null): Quantity | null => (it === null ? null : exact("h", it, um));
  const found = seatFlow({ inside: mm_(18), outside: mm_(24), gap: open(gap_um), score: open(score_um) }, push);
  if (!found?.ok) throw new Error("no laminar flow");
  return valueIn(ml_d, found.flow);
}

// A seat 3 mm wide between 18 and 24 mm under 10 mm of oil at 90 °C; laminar slot flow worked apart from this program.
test.each([
  [10, "0.8"],
  [30, "22"],
  [100, "816"],
])("%d µm open all round", (gap, printed) => agrees(past(gap, null), printed));

test("a score and a gap are side by side, and a score goes with the fourth power of its width", () => {
  expect(past(10, 100)).toBeCloseTo(past(10, null) + past(null, 100), 9);
  expect(past(null, 200) / past(null, 100)).toBeCloseTo(16, 9);
});

test("a seat with nothing open lets nothing through", () =>
  expect(seatFlow({ inside: mm_(18), outside: mm_(24), gap: null, score: null }, push)).toBeNull());

test("two passages in a row let through less than either, and half where they are alike", () => {
  const flow = (value: number): Quantity => exact("Q", value, ml_d);
  const figures = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
  fc.assert(
    fc.property(figures, figures, (a, b) => {
      const both = valueIn(ml_d, oneAfterOther(flow(a), flow(b)));
      expect(both).toBeLessThan(Math.min(a, b));
      expect(both).toBeGreaterThan(Math.min(a, b) / 2.000001);
      expect(valueIn(ml_d, oneAfterOther(flow(a), flow(a))) / a).toBeCloseTo(0.5, 9);
    }),
  );
});
